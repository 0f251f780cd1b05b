import { describe, expect, it } from "vitest";
import {
  analyseSonority,
  chromaticLevelsOfPitches,
  maskingLevel,
  pitchCommonality,
  pureToneHeight,
  rootAnalysis,
  type RootSupportEdition,
} from "../../src/acoustics/index.ts";
import type { Hertz, PitchClass, SoundingMidi } from "../../src/base/index.ts";

const analysis = (classes: readonly number[], edition: RootSupportEdition = 2006) =>
  rootAnalysis(classes as PitchClass[], edition);

// R. Parncutt 1988, table 4, to one decimal.
describe("root ambiguity after Parncutt 1988", () => {
  it.each([
    [[0, 1], 2.2],
    [[0, 2], 2.0],
    [[0, 3], 2.1],
    [[0, 4], 1.9],
    [[0, 5], 1.8],
    [[0, 6], 2.2],
    [[0, 4, 7], 2.0],
    [[0, 3, 7], 2.1],
    [[0, 4, 8], 2.3],
    [[0, 3, 6], 2.5],
    [[0, 4, 7, 10], 2.1],
    [[0, 3, 7, 10], 2.3],
    [[0, 4, 7, 11], 2.3],
    [[0, 3, 6, 10], 2.4],
    [[0, 3, 6, 9], 2.9],
  ])("of %j is %f", (classes, published) => {
    expect(Number(analysis(classes, 1988).ambiguity.toFixed(1))).toBe(published);
  });

  // Reference values of an open implementation (parn88) for the supports of 2006.
  it.each([
    [[0, 4, 7], 1.870829],
    [[0, 3, 7], 2.04939],
    [[0, 4, 8], 2.201398],
    [[0, 3, 6], 2.50998],
  ])("of %j with the later supports is %f", (classes, reference) => {
    expect(analysis(classes).ambiguity).toBeCloseTo(reference, 5);
  });
});

describe("chord roots after Parncutt", () => {
  it("support the twelve classes of a C major triad as published", () => {
    expect([...analysis([0, 4, 7]).weights]).toEqual([18, 0, 3, 3, 10, 6, 2, 10, 3, 7, 1, 0]);
  });

  it("are A for C E A and G for D F G B", () => {
    expect(analysis([0, 4, 9]).roots).toEqual([9]);
    expect(analysis([2, 5, 7, 11]).roots).toEqual([7]);
  });

  // Root and ambiguity of jazz chords by both sets of supports, reckoned from the published weights.
  it.each([
    ["sus4", [0, 5, 7], [5], 2.051, [5], 1.984],
    ["6", [0, 4, 7, 9], [9], 2.27, [0], 2.16],
    ["m6", [0, 3, 7, 9], [0], 2.441, [0], 2.366],
    ["m7", [0, 3, 7, 10], [0], 2.27, [3], 2.16],
    ["9", [0, 2, 4, 7, 10], [0], 2.285, [0], 2.236],
    ["13 without a fifth", [0, 2, 4, 9, 10], [2], 2.472, [2], 2.415],
    ["third and seventh alone", [4, 10], [4, 10], 2.183, [4, 10], 2.049],
  ])("of %s are found with their ambiguity", (_name, classes, early, earlyAmb, late, lateAmb) => {
    expect(analysis(classes, 1988).roots).toEqual(early);
    expect(analysis(classes, 1988).ambiguity).toBeCloseTo(earlyAmb, 3);
    expect(analysis(classes).roots).toEqual(late);
    expect(analysis(classes).ambiguity).toBeCloseTo(lateAmb, 3);
  });
});

// R. Parncutt and H. Strasburger 1994, values of an open implementation (parn94).
describe("salience after Parncutt and Strasburger 1994", () => {
  const sonority = (midi: readonly number[]) =>
    analyseSonority(chromaticLevelsOfPitches(midi as SoundingMidi[]));

  it.each([
    [[60, 64, 67], 0.6157366, 0.309965, 2.843946],
    [[80, 83, 86], 0.6535714, 0.181884, 3.242737],
    [[40, 54, 67], 0.5373542, 0.44699, 2.220517],
  ])("of %j has the published sonorousness and multiplicity", (midi, pure, complex, multiple) => {
    const found = sonority(midi);
    expect(found.pureSonorousness).toBeCloseTo(pure, 6);
    expect(found.complexSonorousness).toBeCloseTo(complex, 5);
    expect(found.multiplicity).toBeCloseTo(multiple, 5);
  });

  it("finds the common pitches of C E G with two other chords", () => {
    const tonic = sonority([60, 64, 67]);
    expect(pitchCommonality(tonic, sonority([59, 62, 67]))).toBeCloseTo(0.3496254, 6);
    expect(pitchCommonality(tonic, sonority([48, 76, 79]))).toBeCloseTo(0.894902, 5);
  });

  it("places pure tones at the published heights", () => {
    const heights = [0, 100, 500, 1000, 4000].map((hz) => pureToneHeight(hz as Hertz));
    [0, 3.015, 10.295, 15.293, 26.627].forEach((published, index) =>
      expect(Math.abs(heights[index]! - published)).toBeLessThan(0.02),
    );
  });

  it("masks 500 Hz by 50 dB at 400 Hz with 33 dB, and 400 Hz by 60 dB at 500 Hz with 43 dB", () => {
    const distance = pureToneHeight(500 as Hertz) - pureToneHeight(400 as Hertz);
    expect(maskingLevel(50, distance)).toBeCloseTo(33.27, 2);
    expect(maskingLevel(60, -distance)).toBeCloseTo(43.27, 2);
  });
});
