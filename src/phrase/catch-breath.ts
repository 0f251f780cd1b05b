import { quantity, type Seconds } from "../base/index.ts";
import type { Divisions, Melody } from "../theory/index.ts";
import { breathTable } from "./breath-table.ts";
import { secondsOf } from "./moments.ts";
import type { PartNote, PlayerPart } from "./parts.ts";
import type { Phrase } from "./phrase-types.ts";

/**
 * Parts in which whoever would go on too long takes a breath at the end of a long note: the note ends
 * an eighth early, or as much earlier as a breath takes. Whoever has the melody holds it out.
 * @param phrase - tempo, melody, whether players are to breathe
 * @param parts - what everybody plays
 * @returns the parts, in the same order
 * @source common practice, no single source; lengths in breath-table.ts
 */
export function withCaughtBreaths(
  phrase: Phrase,
  parts: readonly PlayerPart[],
): readonly PlayerPart[] {
  if (!phrase.breaths) return parts;
  const leads = new Map(phrase.moments.map(({ moment }) => [moment.id, moment.lead]));
  return parts.map(({ player, notes }) => {
    const longest = breathTable.longestSeconds[player.instrument];
    const mayCut = ({ momentId, sounding }: PartNote): boolean => leads.get(momentId) !== sounding;
    return { player, notes: breathing(notes, phrase.melody, longest, mayCut) };
  });
}

function breathing(
  notes: readonly PartNote[],
  melody: Melody,
  longest: number,
  mayCut: (note: PartNote) => boolean,
): readonly PartNote[] {
  const seconds = (length: number): Seconds => secondsOf(quantity<Divisions>(length), melody);
  const played = [...notes];
  let start = 0;
  let lastLong: number | undefined;
  played.forEach((note, index) => {
    const before = played[index - 1];
    const silence = before ? note.onset - before.onset - before.duration : Infinity;
    if (seconds(silence) >= breathTable.breathSeconds) {
      start = note.onset;
      lastLong = undefined;
    }
    const end = note.onset + note.duration;
    if (seconds(end - start) > longest && lastLong !== undefined) {
      const long = played[lastLong]!;
      played[lastLong] = { ...long, duration: cut(long.duration, melody) };
      start = played[lastLong + 1]!.onset;
      lastLong = undefined;
    }
    const isLong = seconds(note.duration) >= breathTable.longNoteSeconds;
    if (isLong && index + 1 < played.length && mayCut(note)) lastLong = index;
  });
  return played;
}

/** The length without the shortest plain value that is long enough for a breath. */
function cut(duration: Divisions, melody: Melody): Divisions {
  const { division } = melody;
  const values = [division / 2, division, 2 * division].filter(Number.isInteger);
  const breath = values.find(
    (value) => secondsOf(quantity<Divisions>(value), melody) >= breathTable.breathSeconds,
  );
  return breath === undefined || 2 * breath > duration
    ? duration
    : quantity<Divisions>(duration - breath);
}
