import { appendFileSync } from "node:fs";
import { runTool } from "./child.mjs";
import { installPackages } from "./install.mjs";

/** What is checked beside the tests, in this order: each proves one thing. */
const steps = [
  ["types", "typescript/bin/tsc", ["-p", "tsconfig.json"]],
  [
    "types of the core, without a browser",
    "typescript/bin/tsc",
    ["-p", "tests/rules/tsconfig.core.json"],
  ],
  [
    "import direction",
    "dependency-cruiser/bin/dependency-cruise.mjs",
    ["--config", "tests/rules/dependency-cruiser.mjs", "src"],
  ],
  [
    "lint",
    "eslint/bin/eslint.js",
    ["--config", "tests/rules/eslint.config.mjs", "--max-warnings", "0", "src", "tests"],
  ],
  ["unused code", "knip/bin/knip.js", ["--config", "tests/rules/knip.json"]],
  ["format", "prettier/bin/prettier.cjs", ["--check", "--log-level", "warn", "."]],
  ["documents", "../tests/rules/documents.mjs", []],
  ["build", "vite/bin/vite.js", ["build", "--logLevel", "warn"]],
];

/**
 * `npm run check`: every check beside the tests, and the count of those that passed.
 * @param {string} root - the project's folder
 * @param {readonly string[]} only - names of the steps wanted; none means all
 * @returns {Promise<number>} 0 when all passed, 2 when a name is not one of them
 */
export async function check(root, only) {
  const unknown = only.find((name) => !steps.some(([step]) => step === name));
  if (unknown !== undefined) {
    const names = steps.map(([name]) => `"${name}"`).join(", ");
    process.stderr.write(`There is no check "${unknown}"; there are ${names}.\n`);
    return 2;
  }
  await installPackages(root);
  const wanted = steps.filter(([name]) => only.length === 0 || only.includes(name));
  let passed = 0;
  for (const [name, script, args] of wanted) {
    const start = performance.now();
    const { code, output } = await runTool(root, script, args, { quiet: true });
    const seconds = ((performance.now() - start) / 1000).toFixed(1);
    process.stdout.write(`${code === 0 ? "ok    " : "FAILED"}  ${name} (${seconds} s)\n`);
    if (code === 0) passed += 1;
    else process.stdout.write(`${output.trimEnd()}\n`);
  }
  const failed = wanted.length - passed;
  process.stdout.write(`${passed} passed, ${failed} failed\n`);
  const file = process.env.HORNWEAVE_COUNTS;
  if (file) appendFileSync(file, `${passed} ${failed} 0\n`);
  return failed === 0 ? 0 : 1;
}
