import { describe, expect, it } from "vitest";
import { degreeSpoken, degreeText, pitchSpoken } from "../../src/notation/spoken.ts";

describe("pitches read aloud", () => {
  it("say flat and sharp, which screen readers skip as signs", () => {
    expect(pitchSpoken({ letter: "B", alteration: -1, octave: 3 })).toBe("B flat 3");
    expect(pitchSpoken({ letter: "F", alteration: 1, octave: 4 })).toBe("F sharp 4");
    expect(pitchSpoken({ letter: "D", alteration: 0, octave: 5 })).toBe("D5");
    expect(pitchSpoken({ letter: "B", alteration: -2, octave: 3 })).toBe("B double flat 3");
  });
});

describe("degrees read aloud", () => {
  it.each([
    ["1", "root"],
    ["b3", "minor third"],
    ["3", "third"],
    ["b7", "flat seventh"],
    ["7", "major seventh"],
    ["bb7", "diminished seventh"],
    ["b9", "flat ninth"],
    ["#9", "sharp ninth"],
    ["#11", "sharp eleventh"],
    ["13", "thirteenth"],
    ["6", "sixth"],
    ["4", "fourth"],
  ])("%s is the %s", (degree, words) => {
    expect(degreeSpoken(degree)).toBe(words);
  });

  it("leave an unknown label as it stands", () => {
    expect(degreeSpoken("")).toBe("");
    expect(degreeSpoken("N")).toBe("N");
  });
});

describe("degrees in print", () => {
  it("take the signs that text fonts have", () => {
    expect(["b7", "#11", "bb7", "13"].map(degreeText)).toEqual(["♭7", "♯11", "♭♭7", "13"]);
  });
});
