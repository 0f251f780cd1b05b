import { describe, expect, it } from "vitest";
import { sumOfHarmonics } from "../../src/audio/inverse-transform.ts";

describe("the sum of harmonics", () => {
  it("equals the sines summed one by one", () => {
    const amplitudes = Float64Array.of(0, 1, 0.5, 0, 0.25, 0.1);
    const phases = Float64Array.of(0, 0.3, -1, 0, 2, 0.7);
    const period = sumOfHarmonics(1024, amplitudes, phases);
    for (let i = 0; i < 1024; i += 7) {
      let sum = 0;
      for (let k = 1; k < amplitudes.length; k++)
        sum += amplitudes[k]! * Math.sin((2 * Math.PI * k * i) / 1024 + phases[k]!);
      expect(period[i]).toBeCloseTo(sum, 12);
    }
  });

  it("refuses a length that is no power of two, and more harmonics than fit", () => {
    const five = new Float64Array(5);
    expect(() => sumOfHarmonics(1000, five, five)).toThrow("power of two, got 1000");
    expect(() => sumOfHarmonics(8, five, five)).toThrow("at most 3 harmonics fit, got 4");
  });
});
