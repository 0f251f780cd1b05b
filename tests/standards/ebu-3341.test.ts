import { describe, expect, it } from "vitest";
import type { Hertz } from "../../src/base/index.ts";
import { LoudnessMeter, integratedLoudness } from "../../src/audio/loudness-meter.ts";
import { truePeak } from "../../src/audio/true-peak.ts";
import { joined, sine } from "../audio/support/fourier.ts";

// EBU Tech 3341, Loudness Metering: 'EBU Mode' (2016), minimum requirements test signals;
// tolerance ±0.1 LU, true peak +0.2/−0.4 dB.
const rate = 48000 as Hertz;
const amplitude = (db: number): number => 10 ** (db / 20);
const piece = (db: number, seconds: number): Float32Array =>
  sine(rate, seconds, 1000, amplitude(db));
const stereo = (...pieces: readonly Float32Array[]): Float32Array[] => {
  const whole = joined(...pieces);
  return [whole, whole];
};

const INTEGRATED: readonly (readonly [string, () => Float32Array[], number])[] = [
  ["1: −23 dBFS for 20 s", () => stereo(piece(-23, 20)), -23],
  ["2: −33 dBFS for 20 s", () => stereo(piece(-33, 20)), -33],
  ["3: −36, −23, −36", () => stereo(piece(-36, 10), piece(-23, 60), piece(-36, 10)), -23],
  [
    "4: −72, −36, −23, −36, −72",
    () => stereo(piece(-72, 10), piece(-36, 10), piece(-23, 60), piece(-36, 10), piece(-72, 10)),
    -23,
  ],
  ["5: −26, −20, −26", () => stereo(piece(-26, 20), piece(-20, 20.1), piece(-26, 20)), -23],
  ["6: five channels", () => [-28, -28, -24, -30, -30].map((db) => piece(db, 20)), -23],
];

describe("EBU Tech 3341, integrated loudness", () => {
  it.each(INTEGRATED)("case %s", (_name, signal, stated) => {
    expect(Math.abs(integratedLoudness(signal(), rate) - stated)).toBeLessThanOrEqual(0.1);
  });

  it("reads momentary and short-term alike on the steady signals of cases 1 and 2", () => {
    for (const db of [-23, -33]) {
      const meter = new LoudnessMeter(rate, 2);
      meter.push(stereo(piece(db, 20)));
      expect(Math.abs(meter.momentary() - db)).toBeLessThanOrEqual(0.1);
      expect(Math.abs(meter.shortTerm() - db)).toBeLessThanOrEqual(0.1);
    }
  });

  it("case 9: short-term is constant at −23 after 3 s", () => {
    const meter = new LoudnessMeter(rate, 2);
    const turn = [piece(-20, 1.34), piece(-30, 1.66)];
    const [left] = stereo(...turn, ...turn, ...turn, ...turn, ...turn) as [Float32Array];
    for (let from = 0; from < left.length; from += 4800) {
      const part = left.subarray(from, from + 4800);
      meter.push([part, part]);
      if (from + 4800 >= 3 * rate)
        expect(Math.abs(meter.shortTerm() + 23)).toBeLessThanOrEqual(0.1);
    }
  });

  it("case 12: momentary is constant at −23 after 1 s", () => {
    const meter = new LoudnessMeter(rate, 2);
    const turns = Array.from({ length: 25 }, () => [piece(-20, 0.18), piece(-30, 0.22)]).flat();
    const [left] = stereo(...turns) as [Float32Array];
    for (let from = 0; from < left.length; from += 4800) {
      const part = left.subarray(from, from + 4800);
      meter.push([part, part]);
      if (from >= rate) expect(Math.abs(meter.momentary() + 23)).toBeLessThanOrEqual(0.1);
    }
  });
});

describe("EBU Tech 3341, true peak", () => {
  const degrees = Math.PI / 180;
  it.each([
    ["15", 4, 0, 0.5, -6],
    ["16", 4, 45, 0.5, -6],
    ["17", 6, 60, 0.5, -6],
    ["18", 8, 67.5, 0.5, -6],
    ["19", 4, 45, 1.41, 3],
  ])("case %s: fs/%d at %f degrees", (_case, divisor, phase, level, stated) => {
    const tone = sine(rate, 1, rate / divisor, level, phase * degrees);
    // The signal of the test fades in and out, or the edge itself would ring above the sine.
    for (let i = 0; i < 480; i++) {
      tone[i] = tone[i]! * (i / 480);
      tone[tone.length - 1 - i] = tone[tone.length - 1 - i]! * (i / 480);
    }
    const read = truePeak([tone, tone]);
    expect(read).toBeLessThanOrEqual(stated + 0.2);
    expect(read).toBeGreaterThanOrEqual(stated - 0.4);
  });
});

describe("ITU-R BS.1770-5, annex 1", () => {
  it("reads a 997 Hz sine at full scale in one front channel as −3.01 LKFS", () => {
    const tone = sine(rate, 10, 997, 1);
    expect(integratedLoudness([tone, new Float32Array(tone.length)], rate)).toBeCloseTo(-3.01, 2);
  });

  it("reads the same at 44.1 kHz", () => {
    const tone = sine(44100, 10, 997, 1);
    expect(integratedLoudness([tone], 44100 as Hertz)).toBeCloseTo(-3.01, 2);
  });
});
