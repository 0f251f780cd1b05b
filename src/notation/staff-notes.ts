import type { Count, SoundingMidi } from "../base/index.ts";
import { degreeOf, formatPitch, type Chord, type SpelledPitch } from "../theory/index.ts";
import type { Clef } from "../band/index.ts";
import { ledgerLines, letterIndex, staffStep } from "./staff-position.ts";
import { degreeText } from "./spoken.ts";
import type { AccidentalSign, StaffNote, StaffPlayer, StaffStep } from "./staff-layout-types.ts";

/** A note before it stands on a staff. */
export interface NoteSeed {
  readonly sounding: SoundingMidi;
  readonly spelled: SpelledPitch;
  readonly sign: AccidentalSign;
  readonly players: readonly StaffPlayer[];
}

/**
 * Columns for the heads of one chord. Two heads a second or less apart do not fit above each other:
 * the upper one moves to the right, as if on an upward stem. In a run of seconds every other head
 * moves; two forms of one letter beside a third note take a third column.
 * @param steps - low to high
 * @returns for each head the leftmost column where it touches no head below it
 * @source common practice, no single source
 */
export function headColumns(steps: readonly StaffStep[]): readonly Count[] {
  const highestIn: StaffStep[] = [];
  return steps.map((step) => {
    const free = highestIn.findIndex((highest) => step - highest > 1);
    const column = free < 0 ? highestIn.length : free;
    highestIn[column] = step;
    return column;
  });
}

/**
 * Note heads of one chord on one staff.
 * @param seeds - the notes of this staff, any order
 * @param clef - the staff's clef
 * @param chord - gives the degrees
 * @returns note heads, low to high on the staff
 */
export function makeStaffNotes(
  seeds: readonly NoteSeed[],
  clef: Clef,
  chord: Chord,
): readonly StaffNote[] {
  const sorted = [...seeds].sort(
    (a, b) => letterIndex(a.spelled) - letterIndex(b.spelled) || a.sounding - b.sounding,
  );
  const steps = sorted.map((seed) => staffStep(seed.spelled, clef));
  const columns = headColumns(steps);
  return sorted.map((seed, index): StaffNote => {
    const step = steps[index]!;
    const degree = degreeOf(seed.sounding, chord);
    return {
      ...seed,
      step,
      ledgerLines: ledgerLines(step),
      column: columns[index]!,
      name: formatPitch(seed.spelled, { signs: "unicode" }),
      degree,
      degreeText: degreeText(degree),
    };
  });
}
