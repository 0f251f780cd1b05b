import { quantity } from "../base/index.ts";
import type { Divisions, HeardNote, Melody, MelodyNote } from "./melody-types.ts";
import { spelledToMidi } from "./spelled-pitch.ts";

/**
 * The notes of a melody as they are heard: tied notes joined. Ask with a melody that checkMelody
 * has found in order.
 * @param melody - the melody
 * @returns notes in order of onset
 */
export function heardNotes(melody: Pick<Melody, "notes">): readonly HeardNote[] {
  const heard: HeardNote[] = [];
  let group: MelodyNote[] = [];
  for (const note of melody.notes) {
    group.push(note);
    if (note.isTied && note !== melody.notes.at(-1)) continue;
    heard.push(joined(group));
    group = [];
  }
  return heard;
}

function joined(group: readonly MelodyNote[]): HeardNote {
  const first = group[0];
  const last = group.at(-1);
  if (!first || !last) throw new RangeError("a heard note needs at least one written note");
  return {
    id: first.id,
    writtenIds: group.map(({ id }) => id),
    onset: first.onset,
    duration: quantity<Divisions>(last.onset + last.duration - first.onset),
    pitch: first.pitch,
    sounding: spelledToMidi(first.pitch),
  };
}
