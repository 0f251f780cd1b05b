import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { run } from "./run-main.ts";

// What the documents tell people to type is typed.

const call = "npm run --silent hornweave -- ";
const commands = ["README.md", "DEVELOPERS.md"].flatMap((name) =>
  readFileSync(resolve(import.meta.dirname, "../..", name), "utf8")
    .split(/[\n`]/)
    .filter((line) => line.startsWith(call))
    .map((line) => line.slice(call.length)),
);

/** Splits as a shell does, for words and "quoted words". */
const wordsOf = (line: string) =>
  [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2] ?? "");

const folder = mkdtempSync(join(tmpdir(), "documents-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Files go to a folder that is thrown away; the melody that the README shows lies there. */
const elsewhere = (words: readonly string[]) =>
  words.map((word, at) => {
    if (word === "melody.abc") return join(folder, word);
    const files = word.split(",").map((file) => join(folder, file));
    return words[at - 1] === "--out" ? files.join(",") : word;
  });

const readme = readFileSync(resolve(import.meta.dirname, "../..", "README.md"), "utf8");
writeFileSync(join(folder, "melody.abc"), /```abc\n([^`]*)```/.exec(readme)?.[1] ?? "");

describe("commands in the documents", () => {
  it("are there", () => expect(commands.length).toBeGreaterThan(3));

  it.each(commands)("work: %s", async (line) => {
    const { code, output, errors } = await run(elsewhere(wordsOf(line)));
    expect(errors).toBe("");
    expect(code).toBe(0);
    expect(output.length).toBeGreaterThan(20);
  });
});
