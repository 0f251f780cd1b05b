import { browserBound, core, libraryOwner, mayImport } from "./folder-table.mjs";

const rule = (name, comment, from, to) => ({ name, comment, severity: "error", from, to });
const anyOf = (names) => `(${names.join("|")})`;

/** One rule a folder: no import, type-only ones included, but downward. */
const downward = Object.entries(mayImport).map(([folder, below]) =>
  rule(
    `${folder}-imports`,
    `src/${folder} may import ${below.length === 0 ? "nothing of ours" : below.join(", ")}`,
    { path: `^src/${folder}/` },
    { path: "^src/[^/]+/", pathNot: `^src/${anyOf([folder, ...below])}/` },
  ),
);

const owners = Object.entries(libraryOwner).map(([library, folder]) =>
  rule(
    `${library}-owner`,
    `${library} lives in src/${folder} only`,
    { path: "^src/", pathNot: `^src/${folder}/` },
    { path: `node_modules/${library}/` },
  ),
);

const others = [
  rule(
    "known-folder",
    "a folder of src stands in tests/rules/folder-table.mjs before it holds code",
    { path: "^src/", pathNot: `^src/${anyOf(Object.keys(mayImport))}/` },
    {},
  ),
  rule(
    "front-door",
    "other folders are imported through their index.ts only",
    { path: "^src/([^/]+)/" },
    { path: "^src/[^/]+/", pathNot: "^src/([^/]+)/index[.]ts$|^src/$1/" },
  ),
  rule(
    "own-door",
    "inside a folder files are imported directly, not by the folder's own index.ts",
    { path: "^src/([^/]+)/" },
    { path: "^src/$1/index[.]ts$" },
  ),
  rule(
    "pure-core",
    "the core reaches no library that needs a browser, not even through others",
    { path: `^src/${anyOf(core)}/` },
    { path: `node_modules/${anyOf(browserBound)}/`, reachable: true },
  ),
  rule(
    "node-in-cli",
    "only the command line knows Node",
    { path: "^src/", pathNot: "^src/cli/" },
    { dependencyTypes: ["core"] },
  ),
  rule(
    "tests-only",
    "what serves as a judge in the tests is not part of the product",
    { path: "^src/" },
    { dependencyTypes: ["npm-dev"], dependencyTypesNot: ["type-only"] },
  ),
  rule("no-ring", "files do not import each other in a ring", {}, { circular: true }),
  rule(
    "no-orphan",
    "every file is used and uses something; the service worker stands alone",
    { path: "^src/", orphan: true, pathNot: "[.]d[.]ts$|/index[.]ts$|/service-worker[.]ts$" },
    {},
  ),
  rule("src-not-tests", "src knows nothing of the tests", { path: "^src/" }, { path: "^tests/" }),
  rule("unresolved", "every import is found", {}, { couldNotResolve: true }),
];

export default {
  forbidden: [...downward, ...owners, ...others],
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "types", "default"],
      extensions: [".ts", ".tsx", ".mjs", ".js"],
    },
  },
};
