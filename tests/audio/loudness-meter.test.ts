import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Hertz } from "../../src/base/index.ts";
import { LoudnessMeter, integratedLoudness } from "../../src/audio/loudness-meter.ts";
import { sine } from "./support/fourier.ts";

// Published signals: tests/standards/ebu-3341.test.ts.
const rate = 48000 as Hertz;
const tone = sine(rate, 2, 440, 0.1);

describe("the loudness meter", () => {
  it("reads nothing before 400 ms, and nothing of silence", () => {
    expect(integratedLoudness([tone.subarray(0, 19000)], rate)).toBe(-Infinity);
    expect(integratedLoudness([new Float32Array(48000)], rate)).toBe(-Infinity);
  });

  it("does not care how the signal is cut into blocks", () => {
    const whole = integratedLoudness([tone], rate);
    const cuts = fc.array(fc.integer({ min: 1, max: 9000 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(cuts, (lengths) => {
        const meter = new LoudnessMeter(rate, 1);
        for (let from = 0, n = 0; from < tone.length; n++) {
          const length = lengths[n % lengths.length]!;
          meter.push([tone.subarray(from, from + length)]);
          from += length;
        }
        expect(meter.integrated()).toBeCloseTo(whole, 9);
      }),
      { seed: 7, numRuns: 20 },
    );
  });

  it("rises by as many LU as the level rises in dB", () => {
    const louder = tone.map((x) => x * 10 ** (7 / 20));
    expect(integratedLoudness([louder], rate) - integratedLoudness([tone], rate)).toBeCloseTo(7, 4);
  });
});
