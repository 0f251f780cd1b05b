import { quantity, type Seconds, type SoundingMidi } from "../base/index.ts";
import { dynamics, type Dynamic } from "../band/index.ts";
import type { Divisions, HeardNote, Melody } from "../theory/index.ts";
import { markTable, unmarkedShare, type ArticulationMark } from "./articulation-rule-table.ts";
import type { PlayerPart } from "./parts.ts";
import type { DynamicMark } from "./phrase-types.ts";
import { dynamicAt } from "./read-phrase.ts";
import { clockOf, pulseOf, type Feel } from "./swing.ts";

/** One note as it is played. */
export interface PlayedNote {
  readonly playerId: string;
  readonly sounding: SoundingMidi;
  /** From the start of the phrase; may lie a little before or after the even beat. */
  readonly onset: Seconds;
  readonly duration: Seconds;
  readonly dynamic: Dynamic;
  readonly marks: readonly ArticulationMark[];
  readonly momentId: string;
}

/**
 * How the horns play their parts: in seconds, swung, articulated, with dynamics.
 * @param melody - time and notes
 * @param notes - its heard notes; a quarter that they cut finer than in two does not swing
 * @param parts - what everybody plays
 * @param marks - dynamics in order of time
 * @param feel - swing
 * @returns notes in order of onset, then of players
 */
export function performParts(
  melody: Melody,
  notes: readonly HeardNote[],
  parts: readonly PlayerPart[],
  marks: readonly DynamicMark[],
  feel: Feel,
): readonly PlayedNote[] {
  const clock = clockOf(melody, feel);
  const even = evenPulses(melody, notes);
  const pulseAt = (at: Divisions): number => Math.floor((at - melody.pickup) / pulseOf(melody));
  const time = (at: Divisions): Seconds => clock.horns(at, even.has(pulseAt(at)));
  const played = parts.flatMap(({ player, notes: own }) =>
    own.map((note): PlayedNote => {
      const onset = time(note.onset);
      const end = time(quantity<Divisions>(note.onset + note.duration));
      return {
        playerId: player.id,
        sounding: note.sounding,
        onset,
        duration: quantity<Seconds>((end - onset) * shareOf(note.marks)),
        dynamic: louder(dynamicAt(marks, note.onset), note.marks),
        marks: note.marks,
        momentId: note.momentId,
      };
    }),
  );
  return played
    .map((note, index) => ({ note, index }))
    .sort((a, b) => a.note.onset - b.note.onset || a.index - b.index)
    .map(({ note }) => note);
}

function shareOf(marks: readonly ArticulationMark[]): number {
  return marks.length === 0
    ? unmarkedShare
    : Math.min(...marks.map((mark) => markTable[mark].share));
}

function louder(dynamic: Dynamic, marks: readonly ArticulationMark[]): Dynamic {
  const steps = Math.max(0, ...marks.map((mark) => markTable[mark].louder));
  const at = Math.min(dynamics.indexOf(dynamic) + steps, dynamics.length - 1);
  return dynamics[at] ?? dynamic;
}

/** Pulses that hold an onset or an end which is neither their beginning nor their middle. */
function evenPulses(melody: Melody, notes: readonly HeardNote[]): ReadonlySet<number> {
  const pulse = pulseOf(melody);
  const found = new Set<number>();
  for (const note of notes)
    for (const at of [note.onset, note.onset + note.duration]) {
      const position = at - melody.pickup;
      if ((2 * position) % pulse !== 0) found.add(Math.floor(position / pulse));
    }
  return found;
}
