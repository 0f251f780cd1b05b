import { describe, expect, it } from "vitest";
import { firstInquiry, readInquiry } from "../../src/explore/index.ts";
import { alteration, letterSteps, pitchOfSteps } from "../../src/ui/strip/staff-places.ts";

const { strip } = readInquiry(firstInquiry());

describe("lines and spaces", () => {
  it("are counted in letters from C0", () => {
    expect(letterSteps("C4")).toBe(28);
    expect(letterSteps("Eb4")).toBe(30);
    expect(letterSteps("F5")).toBe(38);
    expect(alteration("Bbb")).toBe(-2);
    expect(alteration("F#")).toBe(1);
  });

  it("take the letter as the chord spells it: E under F13 is E flat", () => {
    expect(pitchOfSteps(letterSteps("E4"), strip)).toBe(63);
    expect(pitchOfSteps(letterSteps("D5"), strip)).toBe(74);
    expect(pitchOfSteps(letterSteps("C4"), [])).toBe(60);
  });
});
