import { quantity } from "../base/index.ts";
import type { Divisions, Melody } from "../theory/index.ts";
import { styleRows } from "./accompaniment-table.ts";
import type { RhythmNote } from "./accompaniment-types.ts";
import { rhythmBars } from "./rhythm-bars.ts";

/**
 * The drummer's time: ride cymbal by style, hi-hat on every second beat. Strokes are written even;
 * swing comes with the performance.
 * @param melody - metre, style, length
 * @returns strokes in order of onset, ride before hi-hat
 * @source accompaniment-table.ts
 */
export function cymbalPattern(melody: Melody): readonly RhythmNote[] {
  const { ride } = styleRows[melody.style];
  return rhythmBars(melody).flatMap(({ start, beat, beats }) => {
    const strokes: RhythmNote[] = [];
    const add = (cymbal: "ride-cymbal" | "hi-hat", at: number, long: number): void => {
      strokes.push({
        part: "drums",
        sound: { kind: "cymbal", cymbal },
        onset: quantity<Divisions>(Math.round(at)),
        duration: quantity<Divisions>(Math.max(1, Math.round(long))),
      });
    };
    for (let n = 0; n < beats; n++) {
      const halves = ride.filter((half) => Math.floor(half / 2) === n % 2);
      for (const half of halves) add("ride-cymbal", start + (n + (half % 2) / 2) * beat, beat / 2);
      if (n % 2 === 1) add("hi-hat", start + n * beat, beat / 4);
    }
    return strokes;
  });
}
