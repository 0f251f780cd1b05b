import { describe, expect, it } from "vitest";
import { chordTokens } from "../../src/theory/chord-token.ts";

const pieces = (text: string) =>
  chordTokens(text, 1, text.length).map((token) => {
    switch (token.kind) {
      case "word":
        return token.word;
      case "number":
        return `${token.value}`;
      case "altered":
        return `${token.signs}${token.value ?? "?"}`;
      case "sign":
        return token.sign;
      case "unknown":
        return `unknown at ${token.at}`;
    }
  });

describe("chordTokens", () => {
  it("tells capital M from small m, and m followed by add from ma", () => {
    expect(pieces("CM7")).toEqual(["major", "7"]);
    expect(pieces("Cm7")).toEqual(["minor", "7"]);
    expect(pieces("CMI7")).toEqual(["minor", "7"]);
    expect(pieces("CMA7")).toEqual(["major", "7"]);
    expect(pieces("Cmadd9")).toEqual(["minor", "add", "9"]);
    expect(pieces("Cmma7")).toEqual(["minor", "major", "7"]);
    expect(pieces("Cmaug")).toEqual(["minor", "augmented"]);
  });

  it("reads o as diminished, but not in omit or no", () => {
    expect(pieces("Co7")).toEqual(["diminished", "7"]);
    expect(pieces("Comit3")).toEqual(["omit", "3"]);
    expect(pieces("C7no3rd")).toEqual(["7", "omit", "3"]);
  });

  it("keeps signs, brackets of both kinds, and full stops behind words", () => {
    expect(pieces("C7[b9;#11]")).toEqual(["7", "(", "b9", ",", "#11", ")"]);
    expect(pieces("Calt.")).toEqual(["alt"]);
    expect(pieces("C 7 b 9")).toEqual(["7", "b9"]);
  });

  it("marks an accidental without its number, and text that fits nothing", () => {
    expect(pieces("C13b")).toEqual(["13", "b?"]);
    expect(pieces("C bass")).toEqual(["unknown at 2"]);
    expect(pieces("C7xyz9")).toEqual(["7", "unknown at 2"]);
  });

  it("gives the place of every piece and stops before the bass", () => {
    expect(chordTokens("C7 b9/E", 1, 5)).toEqual([
      { kind: "number", value: 7, at: 1, end: 2 },
      { kind: "altered", signs: "b", value: 9, at: 3, end: 5 },
    ]);
  });
});
