import { describe, expect, it } from "vitest";
import { addedDegree, alteredDegree, omittedDegree } from "../../src/theory/chord-mark-degrees.ts";

describe("degrees of marks", () => {
  it("alter fifth, ninth, eleventh and thirteenth one way or both, as the trade does", () => {
    const known = ["b5", "#5", "b9", "#9", "#11", "b13"];
    for (const label of known)
      expect(alteredDegree(label.charAt(0), Number(label.slice(1)))).toBe(label);
    for (const label of ["b11", "#13", "b7", "b3", "bb9"])
      expect(alteredDegree(label.replace(/\d/g, ""), Number(label.replace(/\D/g, "")))).toBe(
        undefined,
      );
  });

  it("add 2 as 9, 4 as 11, 6 as 13 over a seventh", () => {
    expect(addedDegree("", 2, 0)).toBe("9");
    expect(addedDegree("", 4, 7)).toBe("11");
    expect(addedDegree("", 6, 0)).toBe("6");
    expect(addedDegree("", 6, 7)).toBe("13");
    expect(addedDegree("b", 6, 7)).toBe("b13");
    expect(addedDegree("", 7, 0)).toBe(undefined);
  });

  it("omit anything but the root", () => {
    expect(omittedDegree(3)).toBe("3");
    expect(omittedDegree(1)).toBe(undefined);
    expect(omittedDegree(8)).toBe(undefined);
  });
});
