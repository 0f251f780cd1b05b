import type { EarGrid } from "./ear-grid.ts";
import type { StepOfPower } from "./level-steps.ts";
import type { PreparedNote } from "./prepared-note.ts";
import type { SlopeRows } from "./slope-rows.ts";

/** Excitation of several notes together, in buffers that the next pass overwrites. */
export interface ExcitationPass {
  /** Per place: power re 0 dB. */
  readonly excitation: Float64Array;
  /** Runs the pass: powers add, then one walk over the grid with slopes that follow the total. */
  readonly run: (notes: readonly PreparedNote[]) => void;
  /** Excitation of one note of the last run at one place, through the total's slopes. */
  readonly share: (note: PreparedNote, place: number) => number;
}

/**
 * Makes a pass with its buffers.
 * @param grid - places
 * @param rows - slopes
 * @param stepOf - level steps
 * @returns the pass
 */
export function excitationPass(
  grid: EarGrid,
  rows: SlopeRows,
  stepOf: StepOfPower,
): ExcitationPass {
  const { size } = grid;
  const { levels, weights, starts } = rows;
  const power = new Float64Array(size);
  const nearby = new Float64Array(size);
  const excitation = new Float64Array(size);
  const rowStarts = new Int32Array(size);
  const rowEnds = new Int32Array(size);

  const add = (note: PreparedNote): void => {
    const { power: notePower, nearby: noteNearby, rest } = note;
    for (let place = note.from; place < size; place += 1) {
      power[place] = power[place]! + notePower[place]!;
      nearby[place] = nearby[place]! + noteNearby[place]!;
      excitation[place] = excitation[place]! + rest[place]!;
    }
  };

  const spread = (): void => {
    for (let place = 0; place < size; place += 1) {
      const value = power[place]!;
      if (value === 0) continue;
      const row = place * levels + stepOf(nearby[place]!);
      const start = starts[row]!;
      const end = starts[row + 1]!;
      rowStarts[place] = start;
      rowEnds[place] = end;
      for (let at = start, to = place; at < end; at += 1, to += 1)
        excitation[to] = excitation[to]! + value * weights[at]!;
    }
  };

  return {
    excitation,
    run: (notes) => {
      power.fill(0);
      nearby.fill(0);
      excitation.fill(0);
      for (const note of notes) add(note);
      spread();
    },
    share: (note, place) => {
      const { places, placePowers } = note;
      let sum = note.rest[place]!;
      for (let index = 0; index < places.length; index += 1) {
        const from = places[index]!;
        if (from > place) break;
        const at = rowStarts[from]! + place - from;
        if (at < rowEnds[from]!) sum += placePowers[index]! * weights[at]!;
      }
      return sum;
    },
  };
}
