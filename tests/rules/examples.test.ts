import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { core } from "./folder-table.mjs";

// The examples in the core's docstrings are run: `expression // answer`, one a line. Names come from
// the file itself and from the doors of base, theory and band.

type Names = Readonly<Record<string, unknown>>;
const modules = import.meta.glob<Names>("../../src/*/**/*.ts");

interface Example {
  readonly file: string;
  readonly expression: string;
  readonly answer: string;
}

/** The lines of each @example that hold a call and its answer; prose is left alone. */
function examplesIn(file: string): readonly Example[] {
  const text = readFileSync(resolve(import.meta.dirname, file), "utf8");
  const blocks = [...text.matchAll(/@example([\s\S]*?)(?=\n\s*\* @|\*\/)/g)];
  return blocks.flatMap(([, block = ""]) =>
    [...block.matchAll(/^[\s*]*([A-Za-z][\w.]*(?:<\w+>)?\(.*\).*?);? \/\/ (.+)$/gm)].map(
      (match) => ({
        file: file.replace("../../", ""),
        expression: withoutTypes(match[1] ?? ""),
        answer: (match[2] ?? "").trim(),
      }),
    ),
  );
}

const withoutTypes = (code: string) => code.replace(/ as [A-Z]\w*|<[A-Z]\w*>(?=\()/g, "");

const inCore = (file: string) => core.some((folder) => file.startsWith(`../../src/${folder}/`));
const examples = Object.keys(modules).filter(inCore).flatMap(examplesIn);

async function namesOf(...files: readonly string[]): Promise<Names> {
  const loaded = await Promise.all(files.map((file) => modules[`../../${file}`]?.() ?? {}));
  return Object.assign({}, ...loaded) as Names;
}

function evaluate(code: string, names: Names): unknown {
  // Only our own docstrings are run here.
  return (
    new Function(...Object.keys(names), `return (${code});`) as (...values: unknown[]) => unknown
  )(...Object.values(names));
}

describe("the examples in docstrings", () => {
  it("are there to be run", () => expect(examples.length).toBeGreaterThan(3));

  it.each(examples.map((one) => [`${one.file}: ${one.expression}`, one] as const))(
    "give their answer in %s",
    async (_name, { file, expression, answer }) => {
      const doors = ["base", "theory", "band"].map((folder) => `src/${folder}/index.ts`);
      const names = await namesOf(...doors, file);
      const found = evaluate(expression, names);
      const stated = evaluate(answer, {});
      if (typeof stated === "number" && typeof found === "number") {
        const digits = answer.split(".")[1]?.length ?? 0;
        expect(found.toFixed(digits)).toBe(stated.toFixed(digits));
      } else expect(found).toEqual(stated);
    },
  );
});
