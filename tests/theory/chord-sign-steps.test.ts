import { describe, expect, it } from "vitest";
import { takeSign } from "../../src/theory/chord-sign-steps.ts";
import { emptyWork } from "../../src/theory/chord-work.ts";
import { chord, degrees, refused } from "./support/chords.ts";

describe("signs in chord symbols", () => {
  it("a dash behind the root is minor, before a 5 a flat", () => {
    expect(degrees("C-")).toBe("1 b3 5");
    expect(degrees("C-7")).toBe("1 b3 5 b7");
    expect(degrees("C-5")).toBe("1 3 b5");
    expect(chord("C-5").choices.join(" ")).toMatch(/lowers the fifth/);
  });

  it("a dash behind the seventh is a flat: 7-9 is what players mean by 7(♭9)", () => {
    expect(chord("C7-9").symbol).toBe("C7(b9)");
    expect(chord("C7-9").choices.join(" ")).toMatch(/not a minor ninth/);
    expect(chord("C7-5").symbol).toBe("C7(b5)");
    expect(chord("C-7-5").symbol).toBe("Cm7(b5)");
    expect(chord("C-9").symbol).toBe("Cm9");
  });

  it("a plus behind the root raises the fifth, behind the seventh the number after it", () => {
    expect(chord("C+").symbol).toBe("C+");
    expect(chord("C+5").symbol).toBe("C+");
    expect(chord("C+7").symbol).toBe("C7(#5)");
    expect(chord("C7+").symbol).toBe("C7(#5)");
    expect(chord("C7+5").symbol).toBe("C7(#5)");
    expect(chord("C7+9").symbol).toBe("C7(#9)");
    expect(chord("C7+11").symbol).toBe("C7(#11)");
    expect(chord("C+9").symbol).toBe("C9(#5)");
    expect(chord("C+9").choices.join(" ")).toMatch(/♯5/);
  });

  it("a plus or dash that could mean two things is refused", () => {
    expect(refused("C+11")).toMatchObject({ code: "chord-unclear", position: 1 });
    expect(refused("C+11").suggestions).toEqual(["C7#11", "C11(#5)", "C11"]);
    expect(refused("Cm+7").suggestions).toContain("Cm(maj7)");
    expect(refused("C7-11")).toMatchObject({ code: "chord-unclear", suggestions: ["C7"] });
    expect(refused("C7-").code).toBe("chord-unclear");
  });

  it("brackets open, close and hold something", () => {
    expect(refused("C7(b9")).toMatchObject({
      code: "chord-bracket-open",
      position: 2,
      suggestions: ["C7(b9)", "C7"],
    });
    expect(refused("C7b9)")).toMatchObject({ code: "chord-sign", suggestions: ["C7b9"] });
    expect(refused("C7()")).toMatchObject({ code: "chord-sign", suggestions: ["C7"] });
    expect(refused("C7((b9))").code).toBe("chord-sign");
    expect(chord("C7(b9)(b13)").symbol).toBe("C7(b9,b13)");
  });

  it("commas and slashes part what stands on both sides", () => {
    expect(chord("C7(b9/b13)").symbol).toBe("C7(b9,b13)");
    expect(chord("C7/b9").symbol).toBe("C7(b9)");
    expect(refused("C7,")).toMatchObject({ code: "chord-dangling", suggestions: ["C7"] });
    expect(refused("C7(b9,").suggestions).toEqual(["C7(b9)"]);
    expect(refused("C,7").code).toBe("chord-sign");
  });

  it("a number behind a slash is added to a sixth or seventh, and unclear on a triad", () => {
    expect(chord("C6/9").symbol).toBe("C69");
    expect(chord("C7/9").symbol).toBe("C9");
    expect(chord("C7/9/13").symbol).toBe("C9(add13)");
    expect(refused("C/9")).toMatchObject({
      code: "chord-unclear",
      suggestions: ["C9", "C(add9)"],
    });
  });

  it("a slash needs one bass note", () => {
    expect(refused("C/")).toMatchObject({ code: "chord-bass", position: 2, suggestions: ["C"] });
    expect(refused("C/H").code).toBe("chord-bass");
    expect(refused("A/G7")).toMatchObject({ code: "chord-bass", suggestions: ["A/G", "A"] });
    expect(refused("C/E/G").code).toBe("chord-bass");
  });

  it("take one piece, or two with the number behind them", () => {
    const dash = { kind: "sign", sign: "-", at: 2, end: 3 } as const;
    const five = { kind: "number", value: 5, at: 3, end: 4 } as const;
    const work = { ...emptyWork("C7-5"), extension: 7 as const };
    expect(takeSign(work, dash, five)).toBe(2);
    expect(takeSign(emptyWork("C-"), { ...dash, at: 1, end: 2 }, undefined)).toBe(1);
  });
});
