import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { documentProblems } from "./documents.mjs";
import { mayImport } from "./folder-table.mjs";

const root = resolve(import.meta.dirname, "../..");
const folders: string[] = [];
afterAll(() => folders.forEach((folder) => rmSync(folder, { recursive: true, force: true })));

const folderMap = Object.entries(mayImport).map(
  ([folder, below]) => `| \`${folder}\` | words | ${below.join(", ") || "nothing"} |`,
);

/** A small project in which all is well, with changes on top. */
function problems(changes: Readonly<Record<string, string>>): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), "documents-"));
  folders.push(folder);
  const files = {
    "package.json": JSON.stringify({ scripts: { start: "x", check: "x" } }),
    "tsconfig.json": JSON.stringify({ extends: join(root, "tsconfig.json") }),
    "README.md": "# Tool\n\nSee [the map](DEVELOPERS.md#the-map), then `npm start`.\n",
    "DEVELOPERS.md": ["## The map", "", ...folderMap, "", "`npm run check`"].join("\n"),
    "src/base/sum.ts": "export const sum = (a: number, b: number): number => a + b;\n",
    "tests/base/sum.test.ts": "",
    ...changes,
  };
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  mkdirSync(join(folder, "node_modules"));
  for (const name of ["@types", "vite", "typescript"])
    symlinkSync(join(root, "node_modules", name), join(folder, "node_modules", name));
  return documentProblems(folder);
}

const block = (code: string) => `# Tool\n\n\`\`\`ts\n${code}\n\`\`\`\n`;

describe("the document check", () => {
  it("finds nothing to say about documents that are true", () => {
    const code = 'import { sum } from "./src/base/sum.ts";\nconst three: number = sum(1, 2);';
    expect(problems({ "README.md": block(code) })).toEqual([]);
  });

  it.each([
    ["a link that leads nowhere", { "README.md": "[x](nowhere.md)" }, "nowhere.md leads nowhere"],
    ["a heading that is gone", { "README.md": "[x](DEVELOPERS.md#gone)" }, "heading that is not"],
    ["a script that is gone", { "README.md": "`npm run gone`" }, 'no npm script "gone"'],
    ["a path that is gone", { "README.md": "`src/base/gone.ts`" }, "there is no src/base/gone.ts"],
    ["a folder missing from the map", { "DEVELOPERS.md": "none" }, "has no row for base"],
    [
      "a folder map that says something else",
      { "DEVELOPERS.md": folderMap.join("\n").replace("| words | nothing |", "| words | ui |") },
      'base may import nothing, not "ui"',
    ],
    ["a table without a source", { "src/base/sizes-table.ts": "export const s = [];" }, "source"],
    ["a file without tests", { "src/base/lone.ts": "export const a = 1;" }, "base/lone.test.ts"],
    ["code that does not compile", { "README.md": block("const a: string = 1;") }, "TS2322"],
    [
      "code that names an export that is gone",
      { "README.md": block('import { gone } from "./src/base/sum.ts";') },
      "gone",
    ],
  ])("catches %s", (_name, changes, words) => {
    expect(problems(changes as Record<string, string>).join("\n")).toContain(words);
  });

  it("asks no tests of tables, types and doors", () => {
    const files = {
      "src/base/sizes-table.ts": "// Source: common practice\nexport const sizes = [1];",
      "src/base/size-types.ts": "export const marker = 1;",
      "src/base/size.ts": "export type Size = 1;\nexport interface Sized { size: Size }",
      "src/base/index.ts": 'export * from "./sum.ts";',
    };
    expect(problems(files)).toEqual([]);
  });
});
