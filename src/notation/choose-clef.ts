import type { SpelledPitch } from "../theory/index.ts";
import type { Clef, Transposition } from "../band/index.ts";
import { ledgerLines, letterIndex, staffStep } from "./staff-position.ts";

const MIDDLE_C = 28;
/** Two ledger lines below the treble staff (A3) to two above the bass staff (E4). */
const MIDDLE_LOW = 26;
const MIDDLE_HIGH = 30;

/**
 * Clef of one player's note at concert pitch. Bass-clef players stay in bass clef, as in their
 * parts. Treble-clef players keep treble while it reads well: those who read an octave or more above
 * their sound (tenor, baritone) change from two ledger lines down, the others from four.
 * @param spelled - the note at concert pitch
 * @param partClef - clef of the player's part
 * @param transposition - the instrument's
 * @returns the clef that fits
 * @source common practice, no single source
 */
export function concertClef(
  spelled: SpelledPitch,
  partClef: Clef,
  transposition: Transposition,
): Clef {
  if (partClef === "bass") return "bass";
  const step = staffStep(spelled, "treble");
  const lowest = transposition.octaveChange < 0 ? 2 : 4;
  return step < 0 && ledgerLines(step) >= lowest ? "bass" : "treble";
}

/**
 * Which staff of a grand staff each note stands on. Middle C divides them; notes near it (A3 to E4)
 * join the others where everything else lies on one side, so that a close chord is not torn apart.
 * @param notes - the spelled pitches of one chord, any order
 * @returns treble or bass for each, in the order given
 * @source common practice, no single source
 */
export function grandStaffClefs(notes: readonly SpelledPitch[]): readonly Clef[] {
  const indices = notes.map(letterIndex);
  const hasLow = indices.some((index) => index < MIDDLE_LOW);
  const hasHigh = indices.some((index) => index > MIDDLE_HIGH);
  const reachesMiddle = indices.some((index) => index >= MIDDLE_C);
  if (!hasLow && reachesMiddle) return indices.map(() => "treble");
  if (!hasHigh && hasLow && indices.every((index) => index <= MIDDLE_C))
    return indices.map(() => "bass");
  return indices.map((index) => (index >= MIDDLE_C ? "treble" : "bass"));
}
