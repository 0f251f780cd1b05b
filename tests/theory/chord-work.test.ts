import { describe, expect, it } from "vitest";
import {
  draftOf,
  emptyWork,
  hasNoTail,
  isFresh,
  missingNumber,
  pushMark,
  stemBefore,
} from "../../src/theory/chord-work.ts";

describe("the work of one reading", () => {
  it("is fresh until anything is taken", () => {
    const work = emptyWork("C7(b9)");
    expect(isFresh(work)).toBe(true);
    expect(hasNoTail(work)).toBe(true);
    pushMark(work, "alter", "b9", 3);
    expect(isFresh(work)).toBe(false);
    expect(hasNoTail(work)).toBe(false);
    expect(draftOf(work).marks).toEqual([{ kind: "alter", degree: "b9", at: 3 }]);
  });

  it("makes a bare ø a seventh chord and says so", () => {
    const work = emptyWork("Cø");
    work.quality = "half-diminished";
    expect(draftOf(work)).toMatchObject({ extension: 7, choices: ["half-diminished-word"] });
  });

  it("cuts off brackets and commas that would hang", () => {
    expect(stemBefore("C7(b9, xyz)", 7)).toBe("C7(b9");
    expect(stemBefore("C7(xyz)", 3)).toBe("C7");
  });

  it("names the word that lacks its number", () => {
    expect(missingNumber({ word: "add", at: 1 }, "Cadd")).toMatchObject({
      code: "chord-number-missing",
      at: 1,
      candidates: ["Cadd9", "Cadd11"],
    });
  });
});
