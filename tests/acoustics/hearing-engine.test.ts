import { describe, expect, it } from "vitest";
import { spectralCentroid } from "../../src/acoustics/centroid.ts";
import { createHearingEngine } from "../../src/acoustics/hearing-engine.ts";
import { loudnessIso5322 } from "../../src/acoustics/iso532-2-loudness.ts";
import { mud } from "../../src/acoustics/mud.ts";
import { roughness } from "../../src/acoustics/roughness.ts";
import { HUTCHINSON_KNOPOFF } from "../../src/acoustics/roughness-hutchinson.ts";
import { SETHARES_MINIMUM } from "../../src/acoustics/roughness-sethares.ts";
import type { Spectrum } from "../../src/acoustics/spectrum.ts";
import type { Hertz } from "../../src/base/index.ts";
import { hzOf, plainNote, randomNotes, randomVoicings, sine } from "./support/sounds.ts";

const SPECTRA = randomNotes(120, 51);
const engine = createHearingEngine();
const NOTES = SPECTRA.map((spectrum) => engine.prepare(spectrum));
const pick = (indices: readonly number[]) => indices.map((index) => NOTES[index]!);
const sound = (indices: readonly number[]): Spectrum => indices.flatMap((i) => SPECTRA[i]!);
const off = (indices: readonly number[]): number =>
  Math.abs(engine.loudness(pick(indices)) / loudnessIso5322(sound(indices)) - 1);

describe("the fast ear", () => {
  it("is within 1 % of the full loudness for random thirteen-note voicings", () => {
    const worst = Math.max(...randomVoicings(SPECTRA.length, 150, 61).map(off));
    expect(worst).toBeLessThan(0.01);
  });

  it("is within 1 % for few notes, unisons, extreme levels and single sines too", () => {
    for (const indices of [[0], [1, 1, 1, 1], [2, 3], [4, 5, 6, 7, 8]])
      expect(off(indices)).toBeLessThan(0.01);
    for (const spectrum of [
      plainNote(hzOf(36), 110),
      plainNote(hzOf(84), 25),
      [sine(1000, 60)],
      [sine(97, 80), sine(101, 80), sine(3333, 40)],
    ]) {
      const note = engine.prepare(spectrum);
      expect(Math.abs(engine.loudness([note]) / loudnessIso5322(spectrum) - 1)).toBeLessThan(0.01);
    }
  });

  it("says of a voicing what the full methods say", () => {
    const indices = randomVoicings(SPECTRA.length, 1, 71)[0]!;
    const notes = pick(indices);
    const spectra = indices.map((index) => SPECTRA[index]!);
    const heard = engine.listen(notes);
    expect(heard.loudness).toBe(engine.loudness(notes));
    expect(heard.groups).toHaveLength(13);
    expect(heard.roughness).toBeCloseTo(roughness(spectra, HUTCHINSON_KNOPOFF).total, 9);
    expect(heard.mud.value).toBeCloseTo(mud(notes.map((note) => note.fundamental)).value, 12);
    expect(heard.centroidByAmplitude).toBeCloseTo(spectralCentroid(spectra.flat(), "amplitude"), 6);
    expect(heard.centroidByPower).toBeCloseTo(spectralCentroid(spectra.flat(), "power"), 6);
  });

  it("hears the same whatever the order of the players", () => {
    const indices = randomVoicings(SPECTRA.length, 1, 81)[0]!;
    const forwards = engine.listen(pick(indices));
    const backwards = engine.listen(pick([...indices].reverse()));
    expect(backwards.loudness / forwards.loudness).toBeCloseTo(1, 12);
    expect(backwards.roughness / forwards.roughness).toBeCloseTo(1, 12);
    expect(backwards.mud).toEqual(forwards.mud);
    forwards.groups.forEach((group, at) =>
      expect(backwards.groups[12 - at]!.margin).toBeCloseTo(group.margin, 9),
    );
  });

  it("never grows softer when a player joins", () => {
    for (const indices of randomVoicings(SPECTRA.length, 40, 91)) {
      const before = engine.loudness(pick(indices.slice(0, 12)));
      expect(engine.loudness(pick(indices))).toBeGreaterThan(before * 0.999);
    }
  });

  it("gives nothing for no notes", () => {
    const heard = engine.listen([]);
    expect(heard.loudness).toBe(0);
    expect(heard.groups).toEqual([]);
    expect(heard.centroidByPower).toBe(0);
  });

  it("wants a group for every note", () => {
    expect(() => engine.listen(pick([0, 1]), [0])).toThrow(/every note needs a group: 2, got 1/);
  });

  it("judges another grouping as listening would", () => {
    const notes = pick([0, 1, 2, 3]);
    expect(engine.judge(notes, [0, 1, 0, 1])).toEqual(engine.listen(notes, [0, 1, 0, 1]).groups);
    expect(() => engine.judge(notes, [0])).toThrow(RangeError);
  });

  it("can be told field, tuning and roughness", () => {
    const other = createHearingEngine({
      field: "diffuse",
      a4Hz: 442 as Hertz,
      roughness: SETHARES_MINIMUM,
    });
    const note = other.prepare(SPECTRA[0]!);
    const full = loudnessIso5322(SPECTRA[0]!, { field: "diffuse" });
    expect(Math.abs(other.loudness([note]) / full - 1)).toBeLessThan(0.01);
    expect(other.listen([note]).roughness).toBeCloseTo(
      roughness([SPECTRA[0]!], SETHARES_MINIMUM).total,
      9,
    );
  });
});
