import { resolve } from "node:path";
import { ESLint } from "eslint";
import { describe, expect, it } from "vitest";

// Each of our own lint rules is shown to fail, and to leave sound code alone.

const root = resolve(import.meta.dirname, "../..");
const eslint = new ESLint({
  cwd: root,
  overrideConfigFile: resolve(root, "tests/rules/eslint.config.mjs"),
});

async function messages(filePath: string, code: string): Promise<readonly string[]> {
  const [result] = await eslint.lintText(code, { filePath: resolve(root, filePath) });
  return (result?.messages ?? []).map(({ ruleId, message }) => `${ruleId}: ${message}`);
}

const documented = `import type { Count } from "./quantities.ts";

/**
 * Doubles a number of players.
 * @param players - how many
 * @returns twice as many
 * @source definition of this project
 */
export function double(players: Count): Count {
  return players * 2;
}
`;
const longFunction = `function long(): number {\n${"  Math.abs(1);\n".repeat(60)}  return 1;\n}\nlong();\n`;
const coreFile = "src/base/seeded.ts";

describe("the lint rules", () => {
  it("leave a documented function with units alone", async () => {
    expect(await messages(coreFile, documented)).toEqual([]);
  });

  it.each([
    ["a core export without a docstring", coreFile, "export const a = 1;", "jsdoc/require-jsdoc"],
    ["an exported type without a docstring", coreFile, "export type A = 1;", "jsdoc/require-jsdoc"],
    [
      "a parameter without a description",
      coreFile,
      documented.replace(" * @param players - how many\n", ""),
      "jsdoc/require-param",
    ],
    [
      "a result without a description",
      coreFile,
      documented.replace(" * @returns twice as many\n", ""),
      "jsdoc/require-returns",
    ],
    [
      "a bare number among the parameters of a core export",
      coreFile,
      documented.replace("players: Count", "players: number"),
      "no-restricted-syntax: Give this parameter",
    ],
    [
      "a bare number as the result of a core export",
      coreFile,
      documented.replace("): Count", "): number"),
      "no-restricted-syntax: Give this result",
    ],
    ["chance in the core", coreFile, "Math.random();", "Chance comes in"],
    ["the clock in the core", coreFile, "Date.now();", "Time comes in"],
    ["the calendar in the core", coreFile, "new Date();", "Time comes in"],
    ["the console in the core", coreFile, 'console.log("x");', "no-console"],
    [
      "a core function that edits what it was given",
      coreFile,
      "function f(a: number[]): void {\n  a[0] = 1;\n}\nf([]);",
      "no-param-reassign",
    ],
    ["a default export", "src/ui/seeded.ts", "export default 1;", "export it by name"],
    ["any", "src/ui/seeded.ts", "export const a: any = 1;", "no-explicit-any"],
    [
      "a type imported as a value",
      "src/ui/seeded.ts",
      'import { Count } from "../base/index.ts";\nexport const a: Count = 1;',
      "consistent-type-imports",
    ],
    ["a function that is too long", "src/ui/seeded.ts", longFunction, "max-lines-per-function"],
    ["a file that is too long", "src/ui/seeded.ts", "Math.abs(1);\n".repeat(401), "max-lines:"],
    ["a test that runs alone", "tests/base/seeded.test.ts", "it.only();", "Every test runs"],
    ["a test that never runs", "tests/base/seeded.test.ts", "it.skip();", "Every test runs"],
    [
      "a hook called in a condition",
      "src/ui/seeded.tsx",
      'import { useState } from "react";\nexport function Box({ a }: { a: boolean }) {\n' +
        "  if (a) useState(1);\n  return null;\n}",
      "react-hooks/rules-of-hooks",
    ],
    ["work left open", "src/ui/seeded.ts", ["// TO", "DO: more"].join(""), "no-warning-comments"],
  ])("catch %s", async (_name, file, code, words) => {
    expect((await messages(file, code)).join("\n")).toContain(words);
  });
});
