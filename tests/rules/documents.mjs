import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { core, mayImport } from "./folder-table.mjs";

const documents = ["README.md", "DEVELOPERS.md", "samples-audio/SOURCES.md"];

/**
 * Everything that is untrue or missing in the documents, the tables and the test tree.
 * @param {string} root - the project's folder
 * @returns {readonly string[]} one line a fault, empty when all is well
 */
export function documentProblems(root) {
  const present = documents.filter((name) => existsSync(join(root, name)));
  const missing = ["README.md", "DEVELOPERS.md"].filter((name) => !present.includes(name));
  return [
    ...missing.map((name) => `${name} is missing`),
    ...present.flatMap((name) => {
      const text = readFileSync(join(root, name), "utf8");
      return [
        ...linkProblems(root, name, text),
        ...scriptProblems(root, name, text),
        ...pathProblems(root, name, text),
      ];
    }),
    ...codeProblems(root, present),
    ...(present.includes("DEVELOPERS.md") ? mapProblems(root) : []),
    ...tableProblems(root),
    ...twinProblems(root),
  ];
}

const withoutCode = (text) => text.replace(/^```[\s\S]*?^```/gm, "").replace(/`[^`\n]*`/g, "");

/** The address a heading gets: lower case, spaces to hyphens, other signs dropped. */
const anchorOf = (heading) =>
  heading
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, "")
    .replace(/\s/g, "-");

function anchorsOf(text) {
  const headings = text.replace(/^```[\s\S]*?^```/gm, "").matchAll(/^#+ (.+)$/gm);
  return [...headings].map((match) => anchorOf(match[1]));
}

/** Links and pictures lead to files and headings that are there. The network is not asked. */
function linkProblems(root, name, text) {
  const targets = [...withoutCode(text).matchAll(/\]\(([^)\s]+)\)/g)].map((match) => match[1]);
  return targets.flatMap((target) => {
    if (/^[a-z]+:/.test(target)) return [];
    const [path, anchor] = target.split("#");
    const file = path === "" ? join(root, name) : resolve(root, dirname(name), path);
    if (!existsSync(file)) return [`${name}: the link ${target} leads nowhere`];
    if (anchor !== undefined && !anchorsOf(readFileSync(file, "utf8")).includes(anchor))
      return [`${name}: the link ${target} names a heading that is not there`];
    return [];
  });
}

/** Every npm script that a document names exists. */
function scriptProblems(root, name, text) {
  const { scripts = {} } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const named = [...text.matchAll(/\bnpm (?:run (?:--silent )?([\w:-]+)|(start|test)\b)/g)];
  return named
    .map((match) => match[1] ?? match[2])
    .filter((script) => !Object.hasOwn(scripts, script))
    .map((script) => `${name}: there is no npm script "${script}"`);
}

/** Every path of ours that a document sets in code signs exists; places to fill in are left alone. */
function pathProblems(root, name, text) {
  const quoted = [...text.matchAll(/`((?:src|tests|samples-audio|\.ci)\/[\w./-]*)`/g)];
  return quoted
    .map((match) => match[1])
    .filter((path) => !existsSync(join(root, path)))
    .map((path) => `${name}: there is no ${path}`);
}

/** Blocks marked ts compile, as if they stood at the top of the project. */
function codeProblems(root, names) {
  const blocks = names.flatMap((name) =>
    [...readFileSync(join(root, name), "utf8").matchAll(/^```ts\n([\s\S]*?)^```/gm)].map(
      (match, index) => ({ name: `${name}-${index + 1}`.replace(/[^\w-]/g, "-"), code: match[1] }),
    ),
  );
  if (blocks.length === 0) return [];
  const folder = join(root, "node_modules", ".cache", "hornweave", "documents");
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const up = `${relative(folder, root).replaceAll("\\", "/")}/`;
  for (const { name, code } of blocks)
    writeFileSync(join(folder, `${name}.ts`), code.replace(/(from ")\.\//g, `$1${up}`));
  const options = { noUnusedLocals: false, noUnusedParameters: false };
  writeFileSync(
    join(folder, "tsconfig.json"),
    JSON.stringify({ extends: `${up}tsconfig.json`, compilerOptions: options, include: ["*.ts"] }),
  );
  const compiler = fileURLToPath(new URL("../../node_modules/typescript/bin/tsc", import.meta.url));
  const run = spawnSync(process.execPath, [compiler, "-p", folder], { encoding: "utf8" });
  // Faults of the sources are told by the type check; here only those of the documents.
  const ours = run.stdout
    .split("\n")
    .filter((line) => blocks.some(({ name }) => line.includes(name)));
  return run.status === 0 ? [] : ours;
}

/** The folder map in DEVELOPERS.md says what the import check enforces. */
function mapProblems(root) {
  const text = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
  return Object.entries(mayImport).flatMap(([folder, below]) => {
    const row = text.split("\n").find((line) => line.split("|")[1]?.trim() === `\`${folder}\``);
    if (row === undefined) return [`DEVELOPERS.md: the folder map has no row for ${folder}`];
    const cell = row.split("|").at(-2).trim();
    const wanted = below.length === 0 ? "nothing" : below.join(", ");
    return cell === wanted ? [] : [`DEVELOPERS.md: ${folder} may import ${wanted}, not "${cell}"`];
  });
}

function sourceFiles(root, folder) {
  const top = join(root, folder);
  if (!existsSync(top)) return [];
  return readdirSync(top, { recursive: true })
    .map((path) => `${folder}/${String(path).replaceAll("\\", "/")}`)
    .filter((path) => /\.tsx?$/.test(path) && !path.endsWith(".d.ts"))
    .sort();
}

/** How a table may say where its rows come from; judgement and memory are to be owned up to. */
const origin = /\bsources?\b|common practice|judgement|from memory|\bafter published\b/i;

/** Every table says where its rows come from. */
function tableProblems(root) {
  return sourceFiles(root, "src")
    .filter((path) => path.endsWith("-table.ts"))
    .filter((path) => !origin.test(readFileSync(join(root, path), "utf8")))
    .map((path) => `${path}: a table needs a line that names its source`);
}

/**
 * Every file of the core that does something has its twin among the tests, or at least a test that
 * names what it exports (published values lie together in tests/standards) or says in its head that
 * it covers the file ("Covers src/…", for parts that are judged as a whole).
 */
function twinProblems(root) {
  const tests = sourceFiles(root, "tests").map((path) => readFileSync(join(root, path), "utf8"));
  const text = tests.join("\n");
  const named = new Set(text.match(/[A-Za-z_$][\w$]*/g));
  return core
    .flatMap((folder) => sourceFiles(root, `src/${folder}`))
    .filter((path) => !/(-table|-types|\/index)\.ts$/.test(path))
    .map((path) => ({ path, exported: exportedValues(readFileSync(join(root, path), "utf8")) }))
    .filter(({ exported }) => exported.length > 0 && !exported.some((name) => named.has(name)))
    .filter(({ path }) => !existsSync(join(root, twinOf(path))) && !text.includes(path))
    .map(({ path }) => `${path}: its tests belong in ${twinOf(path)}`);
}

const exportedValues = (text) =>
  [...text.matchAll(/^export (?:abstract )?(?:async )?(?:function\*?|const|class) (\w+)/gm)].map(
    (match) => match[1],
  );

const twinOf = (path) => path.replace(/^src\//, "tests/").replace(/\.ts$/, ".test.ts");

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const root = resolve(dirname(fileURLToPath(import.meta.url)), "../..");
  const problems = documentProblems(root);
  if (problems.length > 0) process.stdout.write(`${problems.join("\n")}\n`);
  process.exitCode = problems.length === 0 ? 0 : 1;
}
