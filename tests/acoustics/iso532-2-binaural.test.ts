import { describe, expect, it } from "vitest";
import { binauralLoudness } from "../../src/acoustics/iso532-2-binaural.ts";
import { specificLoudnessPattern } from "../../src/acoustics/iso532-2-loudness.ts";
import { plainNote } from "./support/sounds.ts";

const ear = specificLoudnessPattern(plainNote(262, 70));
const silence = new Float64Array(ear.length);
const oneEar = ear.reduce((sum, value) => sum + value, 0) * 0.1;

describe("two ears", () => {
  it("that hear the same are worth one and a half", () => {
    expect(binauralLoudness(ear, ear) / oneEar).toBeCloseTo(1.5, 4);
  });

  it("are worth one when the other is silent, either way round", () => {
    expect(binauralLoudness(ear, silence)).toBeCloseTo(oneEar, 9);
    expect(binauralLoudness(silence, ear)).toBeCloseTo(oneEar, 9);
    expect(binauralLoudness(silence, silence)).toBe(0);
  });

  it("must have the same channels", () => {
    expect(() => binauralLoudness(ear, new Float64Array(3))).toThrow(
      /equal channels, got 372 and 3/,
    );
  });
});
