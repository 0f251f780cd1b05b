import { runTool } from "./child.mjs";
import { freshness } from "./freshness.mjs";
import { installPackages } from "./install.mjs";

const product = "dist/index.html";
const sources = ["src", "samples-audio", "vite.config.ts", "package-lock.json", ".ci/offline.mjs"];

/** Also when a test run asks for the page: the page that people get, not one for tests. */
const env = { NODE_ENV: "production", VITEST: undefined };

/**
 * Builds the page into dist/ unless it is there already and nothing changed since.
 * @param {string} root - the project's folder
 */
export async function buildPage(root) {
  const page = freshness(root, "page", product, sources);
  if (page.isFresh) return;
  process.stderr.write("Building the page ...\n");
  const { code, output } = await runTool(root, "vite/bin/vite.js", ["build"], { quiet: true, env });
  if (code !== 0) throw new Error(`${output}\nThe page could not be built; the reason is above.`);
  page.remember();
}

/** `npm run build`: always builds, and shows the sizes. */
export async function buildCommand(root) {
  await installPackages(root);
  const page = freshness(root, "page", product, sources);
  const { code } = await runTool(root, "vite/bin/vite.js", ["build"], { env });
  if (code === 0) page.remember();
  return code;
}
