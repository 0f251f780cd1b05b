import type { Count } from "../../base/index.ts";
import type { Dynamic } from "../../band/index.ts";
import { spelledToMidi } from "../../theory/index.ts";
import { checkScore } from "../score/check-score.ts";
import { midiChannels } from "../score/midi-channels.ts";
import { playedScore } from "../score/played-score.ts";
import { programOf } from "../score/program-of.ts";
import type { ScoreModel, ScoreNote, ScorePart } from "../score/score-model.ts";
import { placedBars } from "../score/score-times.ts";
import { leadingEvents } from "./leading-events.ts";
import { midiBytes } from "./track-bytes.ts";
import { ACCENT_VELOCITY, velocityOf } from "./velocity-table.ts";

/** Fewest ticks a quarter note that are written; programs work with 96 to 960. */
const LEAST_TICKS: Count = 480;
const MOST_TICKS: Count = 0x7fff;

/**
 * Writes a score as a Standard MIDI File of format 1: a first track with tempo, metre, key and the
 * chord symbols as markers, then one track a part. Repeats are written out, and eighth notes are
 * even.
 * @param score - bars, parts and chords in sounding pitch
 * @returns the bytes of the file
 * @throws RangeError when the score is not in order, or its division is above 32767
 * @source MIDI Association, Standard MIDI Files 1.0 (RP-001)
 */
export function writeMidi(score: ScoreModel): Uint8Array {
  checkScore(score);
  const played = playedScore(score);
  const { division, parts } = played;
  const scale = ticksOfDivision(division);
  const channels = midiChannels(parts.map(programOf));
  const tracks = parts.map((part, index) => ({
    name: part.name,
    channel: channels[index]!,
    program: programOf(part),
    notes: part.notes.map((note) => ({
      onset: note.onset * scale,
      end: (note.onset + note.duration) * scale,
      key: spelledToMidi(note.pitch),
      velocity: velocityAt(note, part),
    })),
  }));
  const end = placedBars(played).at(-1)!.end * scale;
  return midiBytes(division * scale, leadingEvents(played, scale), tracks, end);
}

/**
 * Ticks that stand for one division, so that a quarter note has enough of them.
 * @param division - parts of a quarter note
 * @returns whole number
 * @throws RangeError when the division is above 32767
 */
export function ticksOfDivision(division: Count): Count {
  if (division > MOST_TICKS)
    throw new RangeError(`a MIDI file holds up to ${MOST_TICKS} ticks a quarter, got ${division}`);
  return Math.max(1, Math.ceil(LEAST_TICKS / division));
}

function velocityAt({ onset, marks = [] }: ScoreNote, { directions }: ScorePart): Count {
  let dynamic: Dynamic = "mf";
  for (const each of directions)
    if ("dynamic" in each && each.onset <= onset) dynamic = each.dynamic;
  const isAccented = marks.includes("accent") || marks.includes("marcato");
  return Math.min(127, velocityOf[dynamic] + (isAccented ? ACCENT_VELOCITY : 0));
}
