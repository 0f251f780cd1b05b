import { describe, expect, it } from "vitest";
import { mud, mudBetween, MUDDY_FROM } from "../../src/acoustics/index.ts";
import { audibility, type Spectrum } from "../../src/acoustics/index.ts";
import { envelopeNote } from "../acoustics/support/measured-envelopes.ts";
import { hzOf } from "../acoustics/support/sounds.ts";

const KEYS = Array.from({ length: 12 }, (_none, index) => index - 6);
const inKey = (midi: readonly number[], key: number): number[] => midi.map((note) => note + key);
const verdict = (midi: readonly number[]) => mud(midi.map(hzOf)).verdict;

/** A dominant ninth for four trombones, low in the register. */
const LOW_NINTH = [36, 40, 46, 50];
/** The same chord in their effective register. */
const EFFECTIVE_NINTH = [52, 58, 62, 67];
/** A cluster A3 Bb3 C4 D4. */
const MIDDLE_CLUSTER = [57, 58, 60, 62];
/** The ninth opened out: C2 Bb2 E3 D4. */
const OPEN_SPREAD = [36, 46, 52, 62];
const OCTAVE_UP = inKey(LOW_NINTH, 12);

// Common practice, no single source: trombones muddy low, clear in the effective register; what must
// not be called muddy are a cluster in the middle register, an open low spread, and the same chord an
// octave up.
describe("mud in all twelve keys", () => {
  it.each(KEYS)("%i semitones from C: the low ninth is muddy and the controls are not", (key) => {
    expect(verdict(inKey(LOW_NINTH, key))).toBe("muddy");
    expect(verdict(inKey(EFFECTIVE_NINTH, key))).toBe("clear");
    expect(verdict(inKey(MIDDLE_CLUSTER, key))).not.toBe("muddy");
    expect(verdict(inKey(OPEN_SPREAD, key))).not.toBe("muddy");
    expect(verdict(inKey(OCTAVE_UP, key))).not.toBe("muddy");
  });

  it("blames the low third", () => {
    const { worst } = mud(LOW_NINTH.map(hzOf));
    expect([worst?.low, worst?.high]).toEqual([hzOf(36), hzOf(40)]);
  });

  // Figures of a feasibility study with the same formula (worst neighbouring pair): 1.10 and 0.52.
  it("gives the low and the effective ninth on C the figures of the study", () => {
    expect(mud(LOW_NINTH.map(hzOf)).value).toBeCloseTo(1.1, 2);
    const effectivePairs = [
      [52, 58],
      [58, 62],
      [62, 67],
    ] as const;
    for (const [low, high] of effectivePairs)
      expect(mudBetween(hzOf(low), hzOf(high))).toBeLessThan(0.521);
  });
});

// Low interval limits, lower note as taught: m2 E3, M2 Eb3, m3 C3, M3 Bb2, P4 Bb2, P5 Bb1 (common
// practice, after arranging courses; value from memory).
describe("mud along the taught low interval limits", () => {
  const limits = [
    ["minor second", 1, 52],
    ["major second", 2, 51],
    ["minor third", 3, 48],
    ["major third", 4, 46],
    ["fourth", 5, 46],
    ["fifth", 7, 34],
  ] as const;

  it.each(limits)("does not call a %s at its limit muddy", (_name, semitones, lowest) => {
    expect(mudBetween(hzOf(lowest), hzOf(lowest + semitones))).toBeLessThan(MUDDY_FROM);
  });

  it.each(limits.slice(0, 4))(
    "calls a %s an octave under its limit muddy",
    (_n, semitones, low) => {
      expect(mudBetween(hzOf(low - 12), hzOf(low - 12 + semitones))).toBeGreaterThan(MUDDY_FROM);
    },
  );
});

// The figures of the same study on measured mean trombone spectra at 74 dB: the worst player's
// margin over twelve keys -1.8 to +.8 dB low, +1.9 to +9.8 dB in the effective register.
describe("players of the low and the effective ninth", () => {
  const worstMargin = (midi: readonly number[]): number => {
    const notes: readonly Spectrum[] = midi.map((note) => envelopeNote("trombone", note, 74));
    const heard = audibility(notes.map((spectrum, index) => ({ id: `tbn${index}`, spectrum })));
    return Math.min(...heard.map(({ margin }) => margin));
  };

  it.each(KEYS)("%i semitones from C are lost low and heard in the effective register", (key) => {
    expect(worstMargin(inKey(LOW_NINTH, key))).toBeLessThan(1);
    expect(worstMargin(inKey(EFFECTIVE_NINTH, key))).toBeGreaterThan(1.5);
  });
});
