import { execFileSync, spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

// Each rule of the import check is shown to fail: one small tree holds one fault of each kind.

const root = resolve(import.meta.dirname, "../..");
const cruiser = join(root, "node_modules/dependency-cruiser/bin/dependency-cruise.mjs");
const folders: string[] = [];

afterAll(() => folders.forEach((folder) => rmSync(folder, { recursive: true, force: true })));

interface Violation {
  readonly from: string;
  readonly rule: { readonly name: string };
}

/** Writes the files into a folder of their own and returns what the check says of them. */
function violations(files: Readonly<Record<string, string>>): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), "import-rules-"));
  folders.push(folder);
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  const config = join(root, "tests/rules/dependency-cruiser.mjs");
  const run = spawnSync(
    process.execPath,
    [cruiser, "--config", config, "--output-type", "json", "src"],
    { cwd: folder, encoding: "utf8", maxBuffer: 1e8 },
  );
  const report = JSON.parse(run.stdout) as { summary: { violations: readonly Violation[] } };
  return report.summary.violations.map(({ from, rule }) => `${rule.name}: ${from}`);
}

const library = (name: string) => ({
  [`node_modules/${name}/package.json`]: JSON.stringify({
    name,
    main: "index.js",
    version: "1.0.0",
  }),
  [`node_modules/${name}/index.js`]: "exports.x = 1;",
});

const sound = {
  "src/base/index.ts": 'export * from "./unit.ts";',
  "src/base/unit.ts": "export const one = 1;\nexport type One = 1;",
  "src/theory/index.ts": 'export * from "./tone.ts";',
  "src/theory/tone.ts": 'import { one } from "../base/index.ts";\nexport const two = one + one;',
};

describe("the import check", () => {
  it("finds nothing to say about imports that run downward through the doors", () => {
    expect(violations(sound)).toEqual([]);
  });

  const faults: readonly (readonly [string, string, string, Readonly<Record<string, string>>])[] = [
    [
      "an import upward",
      "base-imports",
      "src/base/up.ts",
      { "src/base/up.ts": 'import { two } from "../theory/index.ts";\nexport const up = two;' },
    ],
    [
      "an import upward of a type only",
      "base-imports",
      "src/base/up-type.ts",
      {
        "src/base/up-type.ts": 'import type { T } from "../theory/index.ts";\nexport type Up = T;',
      },
    ],
    [
      "an import of a sibling that is not below",
      "acoustics-imports",
      "src/acoustics/ear.ts",
      {
        "src/acoustics/ear.ts":
          'import { two } from "../theory/index.ts";\nexport const ear = two;',
      },
    ],
    [
      "an import past the front door",
      "front-door",
      "src/band/horn.ts",
      { "src/band/horn.ts": 'import { one } from "../base/unit.ts";\nexport const horn = one;' },
    ],
    [
      "a file that goes through its own folder's door",
      "own-door",
      "src/base/inside.ts",
      { "src/base/inside.ts": 'import { one } from "./index.ts";\nexport const inside = one;' },
    ],
    [
      "two files that import each other",
      "no-ring",
      "src/base/a.ts",
      {
        "src/base/a.ts": 'import { b } from "./b.ts";\nexport const a = (): number => b();',
        "src/base/b.ts": 'import { a } from "./a.ts";\nexport const b = (): number => a();',
      },
    ],
    [
      "two files that import each other's types",
      "no-ring",
      "src/base/c.ts",
      {
        "src/base/c.ts": 'import type { B } from "./d.ts";\nexport interface A { b?: B }',
        "src/base/d.ts": 'import type { A } from "./c.ts";\nexport interface B { a?: A }',
      },
    ],
    [
      "a library outside its owner",
      "zustand-owner",
      "src/band/theory-library.ts",
      {
        ...library("zustand"),
        "src/band/theory-library.ts": 'import { x } from "zustand";\nexport const horn = x;',
      },
    ],
    [
      "a judge of the tests inside the product",
      "tests-only",
      "src/theory/judge.ts",
      {
        ...library("chord-symbol"),
        "package.json": JSON.stringify({ devDependencies: { "chord-symbol": "1.0.0" } }),
        "src/theory/judge.ts": 'import { x } from "chord-symbol";\nexport const judge = x;',
      },
    ],
    [
      "a core that reaches a browser library through another folder",
      "pure-core",
      "src/theory/draw.ts",
      {
        ...library("react"),
        "src/theory/draw.ts": 'import { x } from "../ui/index.ts";\nexport const draw = x;',
        "src/ui/index.ts": 'export { x } from "react";',
      },
    ],
    [
      "a core that knows Node",
      "node-in-cli",
      "src/theory/disk.ts",
      {
        "src/theory/disk.ts":
          'import { readFileSync } from "node:fs";\nexport const d = readFileSync;',
      },
    ],
    [
      "a file that nothing uses",
      "no-orphan",
      "src/base/lonely.ts",
      { "src/base/lonely.ts": "export const lonely = 1;" },
    ],
    [
      "a folder that is not in the table",
      "known-folder",
      "src/misc/drawer.ts",
      {
        "src/misc/drawer.ts": 'import { one } from "../base/index.ts";\nexport const drawer = one;',
      },
    ],
    [
      "src that imports a test",
      "src-not-tests",
      "src/base/t.ts",
      {
        "src/base/t.ts": 'import { t } from "../../tests/t.ts";\nexport const u = t;',
        "tests/t.ts": "export const t = 1;",
      },
    ],
    [
      "an import that leads nowhere",
      "unresolved",
      "src/base/lost.ts",
      { "src/base/lost.ts": 'import { x } from "./nowhere.ts";\nexport const lost = x;' },
    ],
  ];

  // All faults at once, in files of their own: the check runs once, each fault is asked for by name.
  let found: readonly string[] = [];
  beforeAll(() => {
    found = violations(Object.assign({}, sound, ...faults.map(([, , , files]) => files)));
  });

  it.each(faults)("catches %s", (_name, rule, file) => {
    expect(found).toContain(`${rule}: ${file}`);
  });
});

describe("the check of the core without a browser", () => {
  it("refuses a core file that uses the page", () => {
    const folder = mkdtempSync(join(tmpdir(), "core-types-"));
    folders.push(folder);
    mkdirSync(join(folder, "src/base"), { recursive: true });
    writeFileSync(join(folder, "src/base/page.ts"), "export const title = document.title;\n");
    const options = { extends: join(root, "tests/rules/tsconfig.core.json"), include: ["src"] };
    writeFileSync(join(folder, "tsconfig.json"), JSON.stringify(options));
    const compile = () =>
      execFileSync(
        process.execPath,
        [join(root, "node_modules/typescript/bin/tsc"), "-p", folder],
        {
          encoding: "utf8",
        },
      );
    expect(compile).toThrow();
    writeFileSync(join(folder, "src/base/page.ts"), "export const title = 1;\n");
    expect(compile).not.toThrow();
  });
});
