import { mkdirSync, renameSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { freshness } from "./freshness.mjs";
import { installPackages } from "./install.mjs";

/** What Node programs may import: everything that needs no page. */
const nodeFolders =
  "base theory acoustics band voicing phrase metrics explore audio notation files cli"
    .split(" ")
    .map((folder) => `src/${folder}`);

/** Programs written in TypeScript that Node runs: bundled once, then started from the bundle. */
const programs = {
  cli: { entry: "src/cli/main.ts", sources: nodeFolders },
  bench: {
    entry: "tests/bench/run.ts",
    sources: ["src", "tests/bench", "tests/voicing/support"],
    atTop: true,
  },
  samples: { entry: "src/cli/samples.ts", sources: nodeFolders, atTop: true },
};

/**
 * Bundles one of our programs when its sources changed, and runs its `main` in this process.
 * @param {string} root - the project's folder
 * @param {keyof typeof programs} name - which program
 * @param {readonly string[]} args - its arguments
 * @returns {Promise<number>} its exit code
 */
export async function runBundled(root, name, args) {
  const { entry, sources, atTop = false } = programs[name];
  const product = `node_modules/.cache/hornweave/${name}.mjs`;
  const bundle = freshness(root, name, product, [...sources, "package-lock.json"]);
  if (!bundle.isFresh) {
    await installPackages(root);
    await bundleProgram(root, entry, product);
    bundle.remember();
  }
  // What these write lies in the project; the command line writes where its user stands.
  if (atTop) process.chdir(root);
  const { main } = await import(pathToFileURL(join(root, product)).href);
  return main(args);
}

/** One file, put in place by renaming, so that two at once cannot trip over each other. */
async function bundleProgram(root, entry, product) {
  const { build } = await import("vite");
  const folder = `${product}.${process.pid}`;
  await build({
    root,
    configFile: false,
    logLevel: "error",
    ssr: { noExternal: true },
    build: {
      ssr: entry,
      outDir: folder,
      target: "node20",
      minify: false,
      rolldownOptions: { output: { entryFileNames: "main.mjs", codeSplitting: false } },
    },
  });
  mkdirSync(join(root, dirname(product)), { recursive: true });
  renameSync(join(root, folder, "main.mjs"), join(root, product));
  rmSync(join(root, folder), { recursive: true, force: true });
}
