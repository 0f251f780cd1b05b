import { describe, expect, it } from "vitest";
import type { Command } from "../../src/cli/option-types.ts";
import { readFields, readFlags } from "../../src/cli/read-options.ts";

const command: Command = {
  name: "sing",
  summary: "Sings",
  options: [
    { name: "song", kind: "text", isPlain: true, isRequired: true, words: "what to sing" },
    { name: "voice", kind: "text", choices: ["high", "low"], words: "who sings" },
    { name: "times", kind: "whole", words: "how often" },
    { name: "seconds", kind: "number", words: "how long" },
    { name: "parts", kind: "list", words: "which parts" },
    { name: "loud", kind: "switch", words: "loudly" },
  ],
  run: () => ({ ok: true, data: null, text: () => "" }),
};

const codeOf = (result: ReturnType<typeof readFlags>) => (result.ok ? "read" : result.problem.code);

describe("flags", () => {
  it("are read in any order, with their value behind them or behind an equals sign", () => {
    const words = ["--times", "3", "home", "--voice=low", "--parts", "a, b", "--loud"];
    expect(readFlags(command, words)).toEqual({
      ok: true,
      value: { times: 3, song: "home", voice: "low", parts: ["a", "b"], loud: true },
    });
  });

  it("keep everything behind the first equals sign", () => {
    const read = readFlags(command, ["home", "--parts=tpt1=D5,alto1=B4"]);
    expect(read).toMatchObject({ value: { parts: ["tpt1=D5", "alto1=B4"] } });
  });

  it.each([
    [["--volume", "3"], "option-unknown"],
    [["home", "away"], "option-unknown"],
    [["home", "--times", "1", "--times", "2"], "option-twice"],
    [["home", "--times"], "option-value"],
    [["home", "--voice", "--loud"], "option-value"],
    [["home", "--times", "many"], "option-value"],
    [["home", "--times", "-1"], "option-value"],
    [["home", "--times", "1.5"], "option-value"],
    [["home", "--seconds", "1.5s"], "option-value"],
    [["home", "--voice", "middle"], "option-value"],
    [["home", "--loud=yes"], "option-value"],
    [["--loud"], "option-missing"],
  ])("are refused with a code when they are %j", (words, code) => {
    expect(codeOf(readFlags(command, words))).toBe(code);
  });

  it("name what was wrong and what would be right", () => {
    const read = readFlags(command, ["home", "--voice", "middle"]);
    expect(read.ok || read.problem.message).toBe('--voice is one of high, low, not "middle".');
  });

  it("ask for nothing else beside help", () => {
    expect(codeOf(readFlags(command, ["--help"]))).toBe("read");
  });
});

describe("fields of a batch request", () => {
  it("are read as the flags are, numbers and lists as such or as text", () => {
    const wanted = { song: "home", times: 3, parts: ["a", "b"] };
    const asText = readFields(command, { song: "home", times: "3", parts: "a,b" });
    const asData = readFields(command, { song: "home", times: 3, parts: ["a", "b"], voice: null });
    expect(asText).toEqual({ ok: true, value: wanted });
    expect(asData).toEqual({ ok: true, value: wanted });
  });

  it("may name the parts of a list", () => {
    const read = readFields(command, { song: "home", parts: { tpt1: "D5", alto1: 71 } });
    expect(read).toMatchObject({ value: { parts: ["tpt1=D5", "alto1=71"] } });
  });

  it("win over the flags of the command line", () => {
    const read = readFields(command, { times: 4 }, { song: "home", times: 2, voice: "low" });
    expect(read).toEqual({ ok: true, value: { song: "home", times: 4, voice: "low" } });
  });

  it.each([
    ["home", "request-unreadable"],
    [["home"], "request-unreadable"],
    [{ song: "home", volume: 1 }, "option-unknown"],
    [{ song: { a: 1 } }, "option-value"],
    [{ song: "home", loud: "yes" }, "option-value"],
    [{ times: 1 }, "option-missing"],
  ])("are refused with a code when they are %j", (fields, code) => {
    expect(codeOf(readFields(command, fields))).toBe(code);
  });
});
