import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { midiToHz, soundingMidi } from "../../src/base/index.ts";
import { partialsOf, type Dynamic, type InstrumentId } from "../../src/band/index.ts";
import { fundamentalNear, partialLevels, readTone } from "./recorded-tone.ts";

// Single notes of a free sound bank (MIT licence). Neither the dynamic nor the level is known, so
// shape is compared: centroid, likeness of the partial levels, and their rms difference once the
// means agree. One dynamic is taken for all notes of a bank: the trumpet was plainly played loud,
// the alto moderately.
const folder = resolve(import.meta.dirname, "../../../shared/data/audio/tones");
const FAINTEST_RECORDED_DB = -45;
const FAINTEST_MODEL_DB = -60;

interface Comparison {
  readonly centroidRatio: number;
  readonly likeness: number;
  readonly rmsDb: number;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

function centroid(levels: readonly number[]): number {
  const amplitudes = levels.map((level) => 10 ** (level / 20));
  const sum = amplitudes.reduce((total, value) => total + value, 0);
  return amplitudes.reduce((total, value, index) => total + (index + 1) * value, 0) / sum;
}

function compare(
  file: string,
  instrument: InstrumentId,
  midi: number,
  dynamic: Dynamic,
): Comparison {
  const tone = readTone(resolve(folder, file));
  const sounding = soundingMidi(midi);
  const recorded = partialLevels(tone, fundamentalNear(tone, midiToHz(sounding)));
  const partials = partialsOf({ instrument, sounding, dynamic, mute: "open" });
  const top = Math.max(...partials.map(({ dbSpl }) => dbSpl));
  const model = recorded.map((_level, index) => (partials[index]?.dbSpl ?? -999) - top);
  const pairs = recorded
    .map((level, index) => [level, model[index] ?? -999] as const)
    .filter(([real, ours]) => real > FAINTEST_RECORDED_DB && ours > FAINTEST_MODEL_DB);
  const [x, y] = [pairs.map(([real]) => real), pairs.map(([, ours]) => ours)];
  const [dx, dy] = [x.map((value) => value - mean(x)), y.map((value) => value - mean(y))];
  const square = (values: readonly number[]): number => mean(values.map((value) => value ** 2));
  return {
    centroidRatio: centroid(model) / centroid(recorded),
    likeness:
      mean(dx.map((value, index) => value * (dy[index] ?? 0))) / Math.sqrt(square(dx) * square(dy)),
    rmsDb: Math.sqrt(square(dx.map((value, index) => value - (dy[index] ?? 0)))),
  };
}

describe.skipIf(!existsSync(folder))("partials against recorded notes", () => {
  it.each([
    ["trumpet_g3_m67.wav", 67],
    ["trumpet_c4_m72.wav", 72],
    ["trumpet_g4_m79.wav", 79],
  ])("are those of a trumpet at f in %s", (file, midi) => {
    const { centroidRatio, likeness, rmsDb } = compare(file, "trumpet", midi, "f");
    expect(Math.abs(centroidRatio - 1)).toBeLessThan(0.16);
    expect(likeness).toBeGreaterThan(0.95);
    expect(rmsDb).toBeLessThan(4);
  });

  it("keep the order of a trumpet's partials two tones above its written top, but are darker", () => {
    const { centroidRatio, likeness } = compare("trumpet_e5_m88.wav", "trumpet", 88, "f");
    expect(likeness).toBeGreaterThan(0.9);
    expect(centroidRatio).toBeLessThan(1);
  });

  it.each([
    ["alto_sax_D4_m50.wav", 50],
    ["alto_sax_C5_m60.wav", 60],
    ["alto_sax_Gs5_m68.wav", 68],
    ["alto_sax_E6_m76.wav", 76],
  ])("are those of an alto saxophone at mp in %s", (file, midi) => {
    const { centroidRatio, likeness, rmsDb } = compare(file, "alto-sax", midi, "mp");
    expect(Math.abs(centroidRatio - 1)).toBeLessThan(0.25);
    expect(likeness).toBeGreaterThan(0.85);
    expect(rmsDb).toBeLessThan(7);
  });
});
