import { describe, expect, it } from "vitest";
import { answerTo, run } from "./run-main.ts";

describe("the command line", () => {
  it("lists its commands when asked for help, and without any words", async () => {
    for (const words of [[], ["--help"], ["help"]]) {
      const { code, output } = await run(words);
      expect(code).toBe(0);
      expect(output).toMatch(/^ {2}chord /m);
    }
  });

  it("explains every command without running it", async () => {
    const { output } = await run([]);
    const names = [...output.matchAll(/^ {2}(\w+) /gm)].map((match) => match[1] ?? "");
    expect(names).toEqual(expect.arrayContaining(["chord", "measure"]));
    for (const name of names) {
      const { code, output: help } = await run([name, "--help"]);
      expect(code).toBe(0);
      expect(help).toContain("--json");
    }
  });

  it.each([
    [["fly"], 'There is no command "fly"'],
    [["chord"], "chord needs SYMBOL"],
    [["chord", "F13", "--loudly"], 'does not know "--loudly"'],
    [["chord", "H7"], "H"],
    [["measure", "--chord", "F13", "--notes", "tpt9=D5"], 'no player "tpt9"'],
  ])("answers %j with one sentence on stderr and ends with 2", async (words, sentence) => {
    const { code, output, errors } = await run(words);
    expect(code).toBe(2);
    expect(output).toBe("");
    expect(errors).toContain(sentence);
    expect(errors.trimEnd()).not.toContain("\n");
  });
});

describe("a batch", () => {
  it("answers each line with a line, in order, and goes on after a bad one", async () => {
    const lines = ['{"symbol": "F13"}', '{"symbol": "H7"}', "", "nonsense", '{"symbol": "Cm7"}'];
    const { code, output, errors } = await run(["chord", "--batch"], lines.join("\n"));
    expect(code).toBe(0);
    expect(errors).toBe("");
    const answers = output
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(answers).toHaveLength(4);
    expect(answers[0]).toMatchObject({ symbol: "F13" });
    expect(answers[1]).toMatchObject({ error: { message: expect.any(String) as string } });
    expect(answers[2]).toMatchObject({ error: { code: "request-unreadable" } });
    expect(answers[3]).toMatchObject({ symbol: "Cm7" });
  });

  it("gives the same answer as the flags do", async () => {
    const flags = ["measure", "--chord", "F13", "--notes", "tpt1=D5,alto1=A4", "--dynamic", "p"];
    const line = { chord: "F13", notes: { tpt1: "D5", alto1: "A4" }, dynamic: "p" };
    const { output } = await run(["measure", "--batch"], JSON.stringify(line));
    expect(JSON.parse(output)).toEqual(await answerTo(...flags));
  });

  it("lets flags hold for every line that says nothing else", async () => {
    const { output } = await run(
      ["measure", "--batch", "--chord", "F13", "--dynamic", "p"],
      '{"notes": "tpt1=D5"}\n{"notes": "tpt1=D5", "dynamic": "ff"}\n',
    );
    const dynamics = output
      .trimEnd()
      .split("\n")
      .map((line) => (JSON.parse(line) as { dynamic: string }).dynamic);
    expect(dynamics).toEqual(["p", "ff"]);
  });
});
