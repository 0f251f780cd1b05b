import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import type { Cents, Seconds } from "../../src/base/index.ts";
import { articulationOf, partialsOf } from "../../src/band/index.ts";
import { dbSplToPeak } from "../../src/audio/level-calibration.ts";
import { stringMaterial } from "../../src/audio/string-material.ts";

const sounding = soundingMidi(48);
const sound = { kind: "pitched", instrument: "piano", sounding, mute: "open" } as const;
const spec = {
  sound,
  duration: 2 as Seconds,
  curve: [{ at: 0 as Seconds, dynamic: "mf" as const }],
  seed: 1,
};
const partials = partialsOf({ ...sound, dynamic: "mf" });
const articulation = articulationOf("piano", sounding, "mf");
const materialAt = (mistuning: number) =>
  stringMaterial(spec, partials, {
    articulation,
    damping: 0.2,
    noise: new Float32Array(16384),
    mistuning: mistuning as Cents,
  });

describe("a string", () => {
  it("starts with exactly the partials of the table, in two stages each", () => {
    const { modes } = materialAt(0);
    expect(modes).toHaveLength(2 * partials.length);
    partials.forEach(({ hz, dbSpl }) => {
      const stages = modes.filter((mode) => Math.abs(mode.hz - hz) < 1e-6);
      expect(stages.reduce((sum, { peak }) => sum + peak, 0)).toBeCloseTo(dbSplToPeak(dbSpl), 12);
    });
  });

  it("keeps the band's ringing time at the fundamental, and lets high partials go sooner", () => {
    const prompt = materialAt(0).modes.filter((_, n) => n % 2 === 0);
    expect(prompt[0]!.t60).toBeCloseTo(articulation.decaySeconds, 6);
    for (let n = 1; n < prompt.length; n++) expect(prompt[n]!.t60).toBeLessThan(prompt[n - 1]!.t60);
  });

  it("can be a little out of tune as a whole", () => {
    const [straight, sharp] = [materialAt(0), materialAt(2)];
    expect(1200 * Math.log2(sharp.modes[0]!.hz / straight.modes[0]!.hz)).toBeCloseTo(2, 6);
  });
});
