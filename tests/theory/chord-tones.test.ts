import { describe, expect, it } from "vitest";
import { chordTones, isDominant } from "../../src/theory/chord-tones.ts";
import { draftOf, emptyWork } from "../../src/theory/chord-work.ts";
import { chord, degrees, degreesOfKind } from "./support/chords.ts";

describe("tones of a chord", () => {
  it("are stated by the symbol, or implied by a higher number", () => {
    expect(degreesOfKind("C13", "stated")).toBe("1 3 5 13 b7");
    expect(degreesOfKind("C13", "implied")).toBe("9");
    expect(degreesOfKind("Cm13", "implied")).toBe("9 11");
    expect(degreesOfKind("C7alt", "implied")).toBe("b9 #9 #11 b13");
    expect(degreesOfKind("C13b9", "implied")).toBe("");
  });

  it("leave out what players leave out", () => {
    expect(degrees("C13")).toBe("1 9 3 5 13 b7");
    expect(degrees("C11")).toBe("1 9 11 5 b7");
    expect(degrees("C7b13")).toBe("1 3 b13 b7");
    expect(degreesOfKind("C7b13", "available")).toMatch(/\b5\b/);
  });

  // G. Lindsay, Jazz Arranging Techniques, 2005, ch. 10; altered ninths on dominants only.
  it("offer the tensions of the family", () => {
    expect(degreesOfKind("C7", "available")).toBe("b9 9 #9 #11 b13 13");
    expect(degreesOfKind("C7", "avoid")).toBe("11");
    expect(degreesOfKind("Cmaj7", "available")).toBe("9 #11 13");
    expect(degreesOfKind("Cm7", "available")).toBe("9 11");
    expect(degreesOfKind("Cm7", "avoid")).toBe("13");
    expect(degreesOfKind("Cm7b5", "available")).toBe("9 11 b13");
    expect(degreesOfKind("Cdim7", "available")).toBe("9 11 b13 7");
  });

  it("withdraw the natural tension where an altered one is printed, and the other way round", () => {
    expect(degreesOfKind("C7b9", "available")).toBe("#9 #11 b13 13");
    expect(degreesOfKind("C9", "available")).toBe("#11 b13 13");
    expect(degreesOfKind("C7#5", "available")).toBe("b9 9 #9 #11");
    expect(degreesOfKind("C13", "available")).toBe("#11");
    expect(degreesOfKind("C7#11", "avoid")).toBe("");
    expect(degreesOfKind("C13no9", "available")).toBe("#11");
  });

  it("are marked as altered on dominants only", () => {
    const altered = (symbol: string) =>
      chord(symbol)
        .tones.filter((tone) => tone.isAltered)
        .map((tone) => tone.degree)
        .join(" ");
    expect(altered("C7")).toBe("b9 #9 #11 b13");
    expect(altered("C7sus4(b9)")).toContain("b9");
    expect(altered("Cmaj7#11")).toBe("");
    expect(altered("Cm7b5")).toBe("");
    expect(altered("C7#5")).not.toContain("5");
  });

  it("have printed extras in printed order", () => {
    const extras = (symbol: string) => chord(symbol).printedExtras.join(" ");
    expect(extras("C13(#11)")).toBe("9 6");
    expect(extras("C7(b13,b9)")).toBe("8 1");
    expect(extras("C7#5#9")).toBe("8 3");
    expect(extras("Cm7b5")).toBe("");
    expect(extras("C69")).toBe("2");
    expect(extras("C7")).toBe("");
    expect(extras("C7(#5,b13)")).toBe("8");
  });

  it("have the role their degree asks for", () => {
    const roles = (symbol: string) =>
      chord(symbol)
        .tones.filter((tone) => tone.kind === "stated")
        .map((tone) => tone.role)
        .join(" ");
    expect(roles("C9")).toBe("root ninth third fifth seventh");
    expect(roles("C6")).toBe("root third fifth sixth");
    expect(roles("C7sus4")).toBe("root suspended-fourth fifth seventh");
    expect(roles("Csus2")).toBe("root suspended-second fifth");
    expect(roles("C7(b13)")).toBe("root third thirteenth seventh");
  });

  it("belong to a family", () => {
    const families = {
      C: "major",
      Cm: "minor",
      Cdim: "diminished",
      "C+": "augmented",
      Csus4: "suspended-fourth",
      Csus2: "suspended-second",
      C5: "power",
      C69: "sixth",
      Cm6: "minor-sixth",
      Cmaj13: "major-seventh",
      "Cm(maj9)": "minor-major-seventh",
      "C7(b9,b13)": "dominant",
      "C+7": "dominant",
      C7alt: "altered-dominant",
      C13sus: "dominant-suspended",
      C11: "dominant-suspended",
      Cm11: "minor-seventh",
      Cø9: "half-diminished",
      "C°7": "diminished-seventh",
      "N.C.": "no-chord",
    };
    for (const [symbol, family] of Object.entries(families))
      expect(chord(symbol).family, symbol).toBe(family);
    expect(isDominant("dominant-suspended")).toBe(true);
    expect(isDominant("minor-seventh")).toBe(false);
  });

  it("come from a draft and a root", () => {
    const { family, tones } = chordTones(draftOf(emptyWork("Ab")), { letter: "A", alteration: -1 });
    expect(family).toBe("major");
    expect(tones.filter((tone) => tone.kind === "stated").map((tone) => tone.name)).toEqual([
      "Ab",
      "C",
      "Eb",
    ]);
  });
});
