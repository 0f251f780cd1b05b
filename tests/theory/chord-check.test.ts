import { describe, expect, it } from "vitest";
import { checkedDraft } from "../../src/theory/chord-check.ts";
import { draftOf, emptyWork } from "../../src/theory/chord-work.ts";
import { chord, refused } from "./support/chords.ts";

describe("checkedDraft", () => {
  it("brings equal chords into one form", () => {
    const alike = [
      ["Cm(b5)", "Cdim"],
      ["C(#5)", "C+"],
      ["Cm7b5", "Cø7"],
      ["Cm9b5", "Cø9"],
      ["Cø7(b5)", "Cø7"],
      ["Caug7", "C7#5"],
      ["C+7#5", "C7#5"],
      ["C7add9", "C9"],
      ["C6add9", "C69"],
      ["C(no3)", "C5"],
      ["C13no11", "C13"],
      ["Cm7b5(add9)", "Cm9b5"],
    ] as const;
    for (const [one, other] of alike) expect(chord(one).symbol).toBe(chord(other).symbol);
  });

  it("refuses a natural and an altered form of one degree", () => {
    expect(refused("C9b9")).toMatchObject({
      code: "chord-contradiction",
      message: "This chord prints both ♭9 and a natural 9.",
      position: 2,
      suggestions: ["C7(b9)", "C9"],
    });
    expect(refused("C13b13").suggestions).toEqual(["C7(b13)", "C13"]);
    expect(refused("C11#11").suggestions).toEqual(["C7(#11)", "C11"]);
    expect(refused("C69(b9)").suggestions).toEqual(["C69"]);
    expect(chord("C13b9").symbol).toBe("C13(b9)");
    expect(chord("C11(b9)").symbol).toBe("C11(b9)");
  });

  it("refuses an altered tension over a bare triad, which could mean two chords", () => {
    expect(refused("C(b9)")).toMatchObject({
      code: "chord-unclear",
      suggestions: ["C7(b9)", "C(addb9)"],
    });
    expect(refused("Cmaj#11").suggestions).toEqual(["Cmaj7(#11)", "C(add#11)"]);
    expect(refused("Csusb9").suggestions).toEqual(["C7sus4(b9)", "Csus4(addb9)"]);
  });

  it("refuses the same mark twice", () => {
    expect(refused("C7b9b9")).toMatchObject({ code: "chord-twice", suggestions: ["C7(b9)"] });
    expect(refused("Cmb5b5").code).toBe("chord-twice");
  });

  it("refuses to leave out what is not there and to add a third that is", () => {
    expect(refused("C7no9")).toMatchObject({ code: "chord-omit", suggestions: ["C7"] });
    expect(refused("C7sus4no3").code).toBe("chord-omit");
    expect(refused("C7(add3)")).toMatchObject({ suggestions: ["C7"] });
    expect(refused("C5(b5)")).toMatchObject({ suggestions: ["C(b5)", "C5"] });
    expect(refused("C7(b6)").suggestions).toEqual(["C7(b13)"]);
  });

  it("names its suggestions with the root it is given", () => {
    const work = emptyWork("Bb7");
    work.marks.push({ kind: "alter", degree: "b9", at: 2 });
    expect(checkedDraft(draftOf(work), "Bb")).toMatchObject({
      ok: false,
      refusal: { candidates: ["Bb7(b9)", "Bb(addb9)"] },
    });
  });
});
