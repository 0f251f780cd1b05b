import type { Divisions, HeardNote, ReadChange } from "../theory/index.ts";

/**
 * The chord a note takes early. A note less than a beat before a change that is held into it takes
 * the coming chord; so does one at most half a beat before it, when nothing else is struck until
 * the change is past.
 * @param note - the note
 * @param next - the note after it, if any
 * @param changes - the chords, in order
 * @param beat - length of a beat
 * @returns the coming change, or undefined where the note keeps the chord it stands in
 * @source anticipations belong to the chord they go into: common practice, no single source
 */
export function anticipatedChange(
  note: HeardNote,
  next: HeardNote | undefined,
  changes: readonly ReadChange[],
  beat: Divisions,
): ReadChange | undefined {
  const coming = changes.find(({ onset }) => onset > note.onset);
  const isFirst = coming !== undefined && coming === changes[0];
  if (!coming || isFirst) return coming;
  const early = coming.onset - note.onset;
  const isHeld = note.onset + note.duration > coming.onset;
  if (isHeld) return early < beat ? coming : undefined;
  const isLeftAlone = !next || next.onset > coming.onset;
  return isLeftAlone && 2 * early <= beat ? coming : undefined;
}
