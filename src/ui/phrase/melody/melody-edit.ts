import { quantity } from "../../../base/index.ts";
import {
  barCount,
  barLength,
  barStart,
  formatPitch,
  type Divisions,
  type Melody,
  type MelodyNote,
  type SpelledPitch,
  type Tuplet,
} from "../../../theory/index.ts";
import { highestName } from "../with-melody.ts";

/** What is put on the staff. */
export interface Entry {
  readonly at: Divisions;
  readonly duration: Divisions;
  readonly pitch: SpelledPitch;
  readonly tuplet?: Tuplet;
}

const time = (value: number): Divisions => quantity<Divisions>(value);

/** Parts of a quarter in which every length that can be entered is whole: 32nds, triplets. */
const finest = 24;

/**
 * The melody counted so finely that every length that can be entered is whole.
 * @param melody - the melody
 * @returns the same music
 */
export function countedFinely(melody: Melody): Melody {
  const { division } = melody;
  const factor = finest / greatestCommon(division, finest);
  if (factor === 1) return melody;
  const at = (value: Divisions) => time(value * factor);
  return {
    ...melody,
    division: division * factor,
    pickup: at(melody.pickup),
    length: at(melody.length),
    notes: melody.notes.map((note) => ({
      ...note,
      onset: at(note.onset),
      duration: at(note.duration),
    })),
    changes: melody.changes.map((change) => ({ ...change, onset: at(change.onset) })),
  };
}

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}

/**
 * Puts a note on the staff; what was there gives way. Over a bar line it is written tied, and bars
 * are added where it reaches past the last.
 * @param melody - the melody, counted finely
 * @param entry - the note
 * @returns the melody with it
 */
export function placed(melody: Melody, entry: Entry): Melody {
  const end = entry.at + entry.duration;
  const long = lengthened(melody, end);
  const free = cleared(long, entry.at, time(end));
  let name = highestName(melody);
  const pieces = cutAtBars(long, entry.at, end).map(([from, to]): MelodyNote => {
    name += 1;
    return {
      id: `n${name}`,
      onset: time(from),
      duration: time(to - from),
      pitch: entry.pitch,
      isTied: to < end,
      ...(entry.tuplet ? { tuplet: entry.tuplet } : {}),
    };
  });
  return { ...free, notes: inOrder([...free.notes, ...pieces]) };
}

const inOrder = (notes: readonly MelodyNote[]): readonly MelodyNote[] =>
  [...notes].sort((a, b) => a.onset - b.onset);

function lengthened(melody: Melody, end: number): Melody {
  if (end <= melody.length) return melody;
  const full = barLength(melody);
  const more = Math.ceil((end - melody.length) / full) * full;
  return { ...melody, length: time(melody.length + more) };
}

function cutAtBars(melody: Melody, from: number, end: number): readonly [number, number][] {
  const pieces: [number, number][] = [];
  let at = from;
  for (let bar = 1; bar <= barCount(melody) + 1 && at < end; bar += 1) {
    const start = barStart(melody, bar);
    if (start <= at) continue;
    pieces.push([at, Math.min(start, end)]);
    at = Math.min(start, end);
  }
  if (at < end) pieces.push([at, end]);
  return pieces;
}

/**
 * Makes a stretch silent: notes in it go, one that sounds into it ends there, one that begins in it
 * goes whole.
 * @param melody - the melody
 * @param from - beginning
 * @param to - end
 * @returns the melody
 */
export function cleared(melody: Melody, from: Divisions, to: Divisions): Melody {
  const notes = melody.notes.flatMap((note): MelodyNote[] => {
    const end = note.onset + note.duration;
    if (end <= from || note.onset >= to) return [note];
    if (note.onset >= from) return [];
    return [{ ...note, duration: time(from - note.onset), isTied: false }];
  });
  return untied({ ...melody, notes });
}

/** Ties that lead nowhere are no ties. */
export function untied(melody: Melody): Melody {
  const { notes } = melody;
  const isHeld = (note: MelodyNote, next: MelodyNote | undefined): boolean =>
    next?.onset === note.onset + note.duration &&
    formatPitch(note.pitch) === formatPitch(next.pitch);
  return {
    ...melody,
    notes: notes.map((note, index) =>
      note.isTied && !isHeld(note, notes[index + 1]) ? { ...note, isTied: false } : note,
    ),
  };
}

/** Ids of the notes that are heard as one with a note: its tied chain. */
export function chainOf({ notes }: Pick<Melody, "notes">, id: string): readonly string[] {
  const at = notes.findIndex((note) => note.id === id);
  if (at < 0) return [];
  let first = at;
  while (first > 0 && notes[first - 1]?.isTied === true) first -= 1;
  let last = at;
  while (notes[last]?.isTied === true && last < notes.length - 1) last += 1;
  return notes.slice(first, last + 1).map((note) => note.id);
}

/**
 * Gives a note, and what is tied to it, another pitch.
 * @param melody - the melody
 * @param id - one of its notes
 * @param pitch - the new pitch
 * @returns the melody
 */
export function repitched(melody: Melody, id: string, pitch: SpelledPitch): Melody {
  const chain = new Set(chainOf(melody, id));
  return {
    ...melody,
    notes: melody.notes.map((note) => (chain.has(note.id) ? { ...note, pitch } : note)),
  };
}

/**
 * Gives a note another length; a longer one takes the room of what follows. Its name stays.
 * @param melody - the melody, counted finely
 * @param id - one of its notes
 * @param duration - its new length
 * @param tuplet - of triplets
 * @returns the melody
 */
export function relengthed(
  melody: Melody,
  id: string,
  duration: Divisions,
  tuplet?: Tuplet,
): Melody {
  const note = melody.notes.find((one) => one.id === id);
  if (note === undefined) return melody;
  const chain = new Set(chainOf(melody, id));
  const others = { ...melody, notes: melody.notes.filter((one) => !chain.has(one.id)) };
  const first = melody.notes.find((one) => chain.has(one.id)) ?? note;
  const next = placed(others, {
    at: first.onset,
    duration,
    pitch: note.pitch,
    ...(tuplet ? { tuplet } : {}),
  });
  const notes = next.notes.map((one) =>
    one.onset === first.onset ? { ...one, id: first.id } : one,
  );
  return { ...next, notes };
}

/** Takes a note and what is tied to it away; a rest stays. */
export function without(melody: Melody, id: string): Melody {
  const chain = new Set(chainOf(melody, id));
  return untied({ ...melody, notes: melody.notes.filter((note) => !chain.has(note.id)) });
}

/** Ties a note to the one after it, or unties it; unchanged where their pitches differ. */
export function tied(melody: Melody, id: string): Melody {
  const notes = melody.notes.map((note) =>
    note.id === id ? { ...note, isTied: !note.isTied } : note,
  );
  return untied({ ...melody, notes });
}

/**
 * Puts a chord symbol at a time, or takes it away.
 * @param melody - the melody
 * @param at - when it begins
 * @param text - as typed; empty to take it away
 * @returns the melody
 */
export function withChord(melody: Melody, at: Divisions, text: string): Melody {
  const others = melody.changes.filter(({ onset }) => onset !== at);
  const typed = text.trim();
  const changes = typed === "" ? others : [...others, { onset: at, text: typed }];
  return { ...melody, changes: changes.sort((a, b) => a.onset - b.onset) };
}
