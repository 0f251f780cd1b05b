import { describe, expect, it } from "vitest";
import { takeWord } from "../../src/theory/chord-word-steps.ts";
import { emptyWork } from "../../src/theory/chord-work.ts";
import { chord, degrees, refused } from "./support/chords.ts";

describe("words in chord symbols", () => {
  it("maj, M and MA mean the seventh only where a number says so; a triangle always does", () => {
    for (const symbol of ["Cmaj", "CM", "CMA", "Cmajor"]) expect(degrees(symbol)).toBe("1 3 5");
    for (const symbol of ["CΔ", "C^", "C∆7", "Cj7", "CM7", "CMAJ7", "C(maj7)"])
      expect(degrees(symbol)).toBe("1 3 5 7");
    expect(chord("CΔ").choices.join(" ")).toMatch(/triangle/);
  });

  it("maj behind minor, diminished or augmented is the major seventh", () => {
    for (const symbol of ["CmMaj7", "Cm(maj7)", "C-Δ7", "C-Δ", "CminMA7", "CmM7"])
      expect(degrees(symbol)).toBe("1 b3 5 7");
    expect(degrees("C°maj7")).toBe("1 b3 b5 7");
    expect(degrees("C+maj7")).toBe("1 3 #5 7");
    expect(refused("CmM")).toMatchObject({ suggestions: ["CmM7", "CmM9"] });
  });

  it("maj7 goes on top of °7 and of nothing else that has a seventh", () => {
    expect(degrees("C°7(maj7)")).toBe("1 b3 b5 bb7 7");
    expect(degrees("Cdim7(add ma7,9)")).toBe("1 9 b3 b5 bb7 7");
    expect(refused("C7(maj7)")).toMatchObject({ code: "chord-contradiction" });
    expect(refused("C7M").suggestions).toEqual(["Cmaj7", "C7"]);
    expect(refused("Cm7(addmaj7)").code).toBe("chord-contradiction");
    expect(refused("C°7(maj9)").code).toBe("chord-contradiction");
  });

  it("one chord is of one kind", () => {
    expect(refused("Cmdim").code).toBe("chord-contradiction");
    expect(refused("C7m")).toMatchObject({ position: 2, suggestions: ["C7"] });
  });

  it("sus takes the third's place, so nothing minor is suspended", () => {
    expect(degrees("Csus")).toBe("1 4 5");
    expect(degrees("Csus2")).toBe("1 2 5");
    expect(degrees("C7b9sus")).toBe("1 b9 4 5 b7");
    expect(degrees("Csus9")).toBe("1 9 4 5 b7");
    expect(degrees("F#7sus(add3)")).toBe("1 3 4 5 b7");
    expect(refused("Cm7sus4").suggestions).toEqual(["C7sus4", "Cm7"]);
    expect(refused("C7sus4sus2").code).toBe("chord-contradiction");
  });

  it("alt follows a plain dominant and stands alone", () => {
    for (const symbol of ["C7alt", "Calt", "Caltered", "C7(alt)", "Calt."])
      expect(degrees(symbol)).toBe("1 b9 #9 3 #11 b13 b7");
    expect(refused("Cm7alt").code).toBe("chord-contradiction");
    expect(refused("C9alt").code).toBe("chord-contradiction");
    expect(refused("C7altb9").suggestions).toEqual(["C7alt", "C7(b9)"]);
  });

  it("take one piece, or two with the number that belongs to them", () => {
    const sus = { kind: "word", word: "suspended", at: 1, end: 4 } as const;
    const four = { kind: "number", value: 4, at: 4, end: 5 } as const;
    const nine = { kind: "number", value: 9, at: 4, end: 5 } as const;
    expect(takeWord(emptyWork("Csus4"), sus, four)).toBe(2);
    expect(takeWord(emptyWork("Csus9"), sus, nine)).toBe(1);
  });
});
