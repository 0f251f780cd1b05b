import { describe, expect, it } from "vitest";
import type { Cents, Db, Hertz, Seconds } from "../../src/base/index.ts";
import type { DynamicPosition } from "../../src/audio/dynamic-steps.ts";
import { noteShape } from "../../src/audio/note-shape.ts";

const articulation = (attack: number) => ({
  attackSeconds: attack as Seconds,
  releaseSeconds: 0.1 as Seconds,
  vibratoHz: 0 as Hertz,
  vibratoCents: 0 as Cents,
  vibratoDelaySeconds: 1 as Seconds,
  noiseDb: -40 as Db,
});
const levelOf = (position: DynamicPosition): number => 10 ** ((4 * position) / 20);
const steady = 4 as DynamicPosition;

describe("the shape of a note", () => {
  it.each([0.01, 0.03, 0.08, 0.2])(
    "takes exactly %f s from 10 to 90 %% although brightness grows too",
    (attack) => {
      const shape = noteShape(articulation(attack), 2 as Seconds, levelOf, steady);
      const levelAt = (time: number): number => {
        const darker = shape.darkerAt(time as Seconds);
        return (
          (shape.gainAt(time as Seconds) * levelOf((steady - darker) as DynamicPosition)) /
          levelOf(steady)
        );
      };
      const reaches = (share: number): number => {
        let time = 0;
        while (levelAt(time) < share) time += 1e-5;
        return time;
      };
      expect((reaches(0.9) - reaches(0.1)) / attack).toBeCloseTo(1, 1);
    },
  );

  it("begins and ends in silence, without a corner, and is whole between", () => {
    const shape = noteShape(articulation(0.03), 1 as Seconds, levelOf, steady);
    expect(shape.gainAt(0 as Seconds)).toBe(0);
    expect(shape.gainAt(0.5 as Seconds)).toBe(1);
    expect(shape.darkerAt(0.5 as Seconds)).toBe(0);
    expect(shape.gainAt(shape.length)).toBeCloseTo(0, 12);
    expect(shape.gainAt(1e-4 as Seconds)).toBeLessThan(1e-4);
  });

  it("bites at the start only", () => {
    const shape = noteShape(articulation(0.03), 1 as Seconds, levelOf, steady);
    expect(shape.biteAt(0 as Seconds)).toBe(0);
    expect(shape.biteAt(0.025 as Seconds)).toBeGreaterThan(0.5);
    expect(shape.biteAt(0.5 as Seconds)).toBe(0);
  });
});
