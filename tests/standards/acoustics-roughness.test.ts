import { describe, expect, it } from "vitest";
import {
  HUTCHINSON_KNOPOFF,
  hutchinsonCurve,
  roughness,
  setharesCurve,
  SETHARES_MINIMUM,
  VASSILAKIS,
  type RoughnessMethod,
  type Spectrum,
} from "../../src/acoustics/index.ts";
import { harmonics, hzOf, pressures } from "../acoustics/support/sounds.ts";

const inverse = (harmonic: number): number => 1 / harmonic;
const decay = (harmonic: number): number => 0.88 ** (harmonic - 1);
const chord = (midi: readonly number[], count: number, amplitude: (n: number) => number) =>
  midi.map((pitch) => harmonics(hzOf(pitch), count, amplitude));
const dyads = (root: number, method: RoughnessMethod, count: number, rule: typeof decay) =>
  Array.from(
    { length: 12 },
    (_none, index) => roughness(chord([root, root + index + 1], count, rule), method).total,
  );

describe("roughness after Sethares", () => {
  // Ratios from the tests of an open implementation (dycon), 1 %; the value of two sines is of the
  // formula.
  const two = setharesCurve(440, 460);
  const total = (hz: readonly number[], amplitudes: readonly number[]): number =>
    roughness([pressures(hz, amplitudes)], SETHARES_MINIMUM).total * Math.max(...amplitudes);

  it("of 440 and 460 Hz is 0.17531", () => expect(two).toBeCloseTo(0.17531, 5));

  it.each([
    [[440, 460, 480], [1, 1, 1], 2.9194],
    [[440, 460, 480], [1, 2, 3], 3.9161],
    [[440, 460, 480], [3, 2, 1], 3.9194],
    [[300, 250, 275, 425], [1.5, 2, 9, 4], 4.8657],
  ])("of %j with pressures %j is %f times that", (hz, amplitudes, ratio) => {
    expect(Math.abs(total(hz, amplitudes) / two / ratio - 1)).toBeLessThan(0.01);
  });

  it("peaks at 0.2206 over the stretch of the curve with 0.18077", () => {
    const stretch = 0.24 / (0.021 * 440 + 19);
    const peak = 0.2206 / stretch;
    expect(setharesCurve(440, 440 + peak)).toBeCloseTo(0.18077, 5);
    expect(setharesCurve(440, 440 + peak * 0.9)).toBeLessThan(0.18077);
    expect(setharesCurve(440, 440 + peak * 1.1)).toBeLessThan(0.18077);
  });

  // W. A. Sethares 1993, figure 3: minima of the dyad curve of six harmonics at 6/5, 5/4, 4/3, 3/2,
  // 5/3 and 2/1.
  it.each([110, 261.63, 440, 500])("has its dyad minima at the just ratios over %f Hz", (root) => {
    const at = (cents: number): number =>
      roughness(
        [harmonics(root, 6, decay), harmonics(root * 2 ** (cents / 1200), 6, decay)],
        SETHARES_MINIMUM,
      ).total;
    const curve = Array.from({ length: 1261 }, (_none, cents) => at(cents));
    const minima = [...curve.keys()].filter(
      (cents) =>
        cents > 250 &&
        cents < 1260 &&
        curve[cents]! < curve[cents - 1]! &&
        curve[cents]! < curve[cents + 1]!,
    );
    for (const published of [316, 386, 498, 702, 884, 1200])
      expect(minima.some((cents) => Math.abs(cents - published) <= 2)).toBe(true);
  });
});

describe("roughness after Hutchinson and Knopoff", () => {
  // Reference values of an open implementation (dycon, incon).
  it("of a major and a minor triad is .1202426 and .1300830", () => {
    expect(roughness(chord([60, 64, 67], 11, inverse), HUTCHINSON_KNOPOFF).total).toBeCloseTo(
      0.1202426,
      6,
    );
    expect(roughness(chord([60, 63, 67], 11, inverse), HUTCHINSON_KNOPOFF).total).toBeCloseTo(
      0.130083,
      6,
    );
  });

  it("of pure semitones on C4 and A4, and of one with 11 harmonics, is .499, .491 and .484", () => {
    const pure = (midi: number) =>
      roughness(chord([midi, midi + 1], 1, inverse), HUTCHINSON_KNOPOFF).total;
    expect(pure(60)).toBeCloseTo(0.499, 3);
    expect(pure(69)).toBeCloseTo(0.491, 3);
    expect(roughness(chord([60, 61], 11, inverse), HUTCHINSON_KNOPOFF).total).toBeCloseTo(0.484, 3);
  });

  it("of two partials half a bandwidth and a bandwidth apart is .5413 and .0397", () => {
    expect(hutchinsonCurve(0.5)).toBeCloseTo(0.5413, 4);
    expect(hutchinsonCurve(1)).toBeCloseTo(0.0397, 4);
    expect(hutchinsonCurve(1.25)).toBe(0);
  });
});

// P. N. Vassilakis 2001, thesis p. 208 (measured partials, pressures 1/n) and p. 210 (roughness).
const THESIS_PARTIALS = [
  [262, 526, 790, 1049, 1318, 1573],
  [277, 554, 837, 1118, 1398, 1677],
  [294, 590, 886, 1180, 1473, 1772],
  [311, 624, 932, 1244, 1569, 1873],
  [330, 663, 995, 1323, 1654, 1994],
  [349, 701, 1053, 1408, 1751, 2107],
  [370, 741, 1118, 1482, 1852, 2235],
  [392, 783, 1179, 1570, 1973, 2373],
  [415, 834, 1250, 1670, 2093, 2499],
  [440, 884, 1329, 1768, 2200, 2666],
  [466, 937, 1400, 1874, 2345, 2799],
  [494, 990, 1484, 1985, 2476, 2973],
  [524, 1052, 1573, 2110, 2634, 3154],
] as const;
const THESIS_ROUGHNESS = [
  40.383, 27.617, 18.117, 16.002, 11.446, 12.826, 6.179, 10.103, 5.782, 6.214, 6.996, 1.589,
] as const;

describe("roughness after Vassilakis", () => {
  const measured = (index: number): Spectrum =>
    pressures(THESIS_PARTIALS[index]!, [1, 2, 3, 4, 5, 6].map(inverse));

  it.each(THESIS_ROUGHNESS.map((value, index) => [index + 1, value] as const))(
    "of C4 and the note %i semitones above is the thesis's %f",
    (semitones, published) => {
      const found = roughness([measured(0), measured(semitones)], VASSILAKIS).total * 99.9;
      expect(Math.abs(found / published - 1)).toBeLessThan(0.005);
    },
  );
});

/** Spearman's rank correlation, ties sharing their ranks. */
function rankCorrelation(a: readonly number[], b: readonly number[]): number {
  const ranks = (values: readonly number[]): number[] =>
    values.map(
      (value) =>
        values.filter((other) => other < value).length +
        (values.filter((other) => other === value).length + 1) / 2,
    );
  const [x, y] = [ranks(a), ranks(b)];
  const mean = (a.length + 1) / 2;
  const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
  const both = sum(x.map((value, index) => (value - mean) * (y[index]! - mean)));
  const spread = (values: readonly number[]): number => sum(values.map((v) => (v - mean) ** 2));
  return both / Math.sqrt(spread(x) * spread(y));
}

// D. L. Bowling, D. Purves and K. Z. Gill 2018, mean consonance of the twelve dyads (1 to 4).
const CONSONANCE = [
  1.317, 1.837, 2.693, 3.173, 2.95, 1.953, 3.447, 2.477, 2.713, 1.753, 1.753, 3.893,
] as const;

describe("roughness against people's ratings of dyads", () => {
  it("ranks them well after Hutchinson and Knopoff and fairly after Sethares", () => {
    const smooth = (values: readonly number[]) => values.map((value) => -value);
    const hutchinson = dyads(60, HUTCHINSON_KNOPOFF, 11, inverse);
    const sethares = dyads(60, SETHARES_MINIMUM, 6, decay);
    expect(rankCorrelation(smooth(hutchinson), CONSONANCE)).toBeGreaterThanOrEqual(0.85);
    expect(rankCorrelation(smooth(sethares), CONSONANCE)).toBeGreaterThanOrEqual(0.6);
  });
});
