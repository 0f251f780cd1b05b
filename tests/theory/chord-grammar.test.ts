import { describe, expect, it } from "vitest";
import { draftChord } from "../../src/theory/chord-grammar.ts";
import { chordTokens } from "../../src/theory/chord-token.ts";
import { refused } from "./support/chords.ts";

const draft = (text: string) => draftChord(chordTokens(text, 1, text.length), text, text.length);

describe("draftChord", () => {
  it("takes a symbol apart in printed order", () => {
    expect(draft("C13(b9,add11)no5")).toEqual({
      ok: true,
      value: {
        quality: "major",
        isMajorSeventh: false,
        extension: 13,
        suspension: 0,
        isAlt: false,
        marks: [
          { kind: "alter", degree: "b9", at: 4 },
          { kind: "add", degree: "11", at: 10 },
          { kind: "omit", degree: "5", at: 15 },
        ],
        choices: [],
      },
    });
  });

  it("finds a bare root to be a major triad", () => {
    expect(draft("C")).toMatchObject({ ok: true, value: { quality: "major", extension: 0 } });
  });

  it("stops at the first piece that does not fit", () => {
    expect(draft("C7b9xyz")).toMatchObject({
      ok: false,
      refusal: { code: "chord-unknown", at: 4, candidates: ["C7b9"] },
    });
  });

  it("asks for a number where a word needs one, at that word", () => {
    expect(refused("Cadd(9)")).toMatchObject({ code: "chord-number-missing", position: 1 });
    expect(refused("C7omitb9").code).toBe("chord-degree");
  });
});
