import { describe, expect, it } from "vitest";
import { takeAltered, takeNumber } from "../../src/theory/chord-number-steps.ts";
import { emptyWork } from "../../src/theory/chord-work.ts";
import { chord, degrees, refused } from "./support/chords.ts";

describe("numbers in chord symbols", () => {
  it("refuse what no chord is called, and say what was probably meant", () => {
    expect(refused("C4")).toMatchObject({ code: "chord-number", position: 1 });
    expect(refused("C4").suggestions).toEqual(["Csus4", "C(add11)", "C7"]);
    expect(refused("C79").suggestions).toEqual(["C9", "C7(b9)", "C7"]);
    expect(refused("C713").suggestions).toEqual(["C13", "C7(13)", "C7"]);
    expect(refused("Cm5").suggestions).toEqual(["Cm(b5)", "Cm", "Cm7"]);
    expect(refused("Cdim6").suggestions).toEqual(["Cdim7", "Cdim"]);
    expect(refused("C8").code).toBe("chord-number");
  });

  it("ask for brackets round a second number, and are not clear alone in brackets", () => {
    expect(refused("C7 9")).toMatchObject({ code: "chord-unclear", position: 3 });
    expect(refused("C7 9").suggestions).toContain("C7(9)");
    expect(refused("C(9)").suggestions).toEqual(["C9", "C(add9)", "C"]);
  });

  it("are added behind add, slash or inside brackets", () => {
    expect(degrees("C7(13)")).toBe("1 3 5 13 b7");
    expect(degrees("Cmaj7(9,#11)")).toBe("1 9 3 #11 5 7");
    expect(degrees("Cadd11")).toBe("1 3 11 5");
    expect(degrees("C(add9,#11)")).toBe("1 9 3 #11 5");
    expect(degrees("C7add6")).toBe("1 3 5 13 b7");
    expect(degrees("C2")).toBe("1 9 3 5");
    expect(refused("C(add7)").suggestions).toEqual(["C7", "Cmaj7", "C"]);
  });

  it("leave notes out behind no and omit", () => {
    expect(degrees("C7omit3")).toBe("1 5 b7");
    expect(degrees("C7(no3,no5)")).toBe("1 b7");
    expect(degrees("C9(omit 3,5)")).toBe("1 9 b7");
    expect(degrees("C13(no5,b9)")).toBe("1 b9 3 13 b7");
    expect(refused("C7no1")).toMatchObject({ code: "chord-omit", suggestions: ["C7"] });
    expect(refused("C7no8").code).toBe("chord-omit");
    expect(refused("C7(nob9)").code).toBe("chord-degree");
  });

  it("name the usual degree for one that is never printed", () => {
    expect(refused("C7(#4)").suggestions).toEqual(["C7(#11)", "C7"]);
    expect(refused("C(b7)").suggestions).toEqual(["C7", "C"]);
    expect(refused("C7b10").suggestions).toEqual(["C7#9", "C7"]);
    expect(refused("Cm(#7)").suggestions?.[0]).toBe("Cm(maj7)");
  });

  it("an accidental needs its number", () => {
    expect(refused("C7b").suggestions).toEqual(["C7b9", "C7b13", "C7"]);
    expect(refused("C7#")).toMatchObject({
      message: "A sharp needs a number after it.",
      suggestions: ["C7#9", "C7#11", "C7"],
    });
    expect(refused("C9#").suggestions).toEqual(["C7#9", "C9"]);
    expect(refused("Cadd").suggestions).toEqual(["Cadd9", "Cadd11"]);
    expect(refused("C7no").suggestions).toEqual(["C7no3", "C7no5"]);
    expect(chord("Cdom9").symbol).toBe("C9");
    expect(refused("Cdom").suggestions).toEqual(["Cdom7", "Cdom9"]);
  });

  it("take one piece each", () => {
    expect(takeNumber(emptyWork("C7"), { kind: "number", value: 7, at: 1, end: 2 })).toBe(1);
    const flatNine = { kind: "altered", signs: "b", value: 9, at: 2, end: 4 } as const;
    expect(takeAltered(emptyWork("C7b9"), flatNine)).toBe(1);
  });
});
