import type { PhraseWork } from "../../explore/index.ts";
import type { Curve, PhraseQuestion } from "../../phrase/index.ts";
import { quantity } from "../../base/index.ts";
import {
  formatPitch,
  withoutRepeats,
  type Divisions,
  type Melody,
  type MelodyNote,
} from "../../theory/index.ts";

/** Id of the note that a moment or a repeated note belongs to: "n3+1" and "n3~2" are of "n3". */
function noteIdOf(id: string): string {
  return id.replace(/[+~].*$/, "");
}

/**
 * Another melody for the same phrase. What was decided for a note stays with it; what was held at a
 * note that is gone, or now has another pitch, is let go.
 * @param work - the phrase
 * @param melody - its new melody; notes that stayed keep their names
 * @returns the phrase with it
 */
export function withMelody(work: PhraseWork, melody: Melody): PhraseWork {
  const { question } = work;
  const before = new Map(question.melody.notes.map((note) => [note.id, formatPitch(note.pitch)]));
  const ids = new Set(melody.notes.map(({ id }) => id));
  const same = new Set(
    melody.notes
      .filter(({ id, pitch }) => before.get(id) === formatPitch(pitch))
      .map(({ id }) => id),
  );
  const isHeld = ({ momentId }: { readonly momentId: string }) => same.has(noteIdOf(momentId));
  const { locks, choices } = question;
  return {
    ...work,
    question: {
      ...question,
      ...rescaled(question, melody),
      melody,
      choices: kept(choices, ids),
      locks: { notes: locks.notes.filter(isHeld), moments: locks.moments.filter(isHeld) },
    },
    articulations: kept(work.articulations, ids),
    alternative: 0,
  };
}

function kept<T>(byNote: Readonly<Record<string, T>>, ids: ReadonlySet<string>) {
  const entries = Object.entries(byNote);
  return entries.every(([id]) => ids.has(noteIdOf(id)))
    ? byNote
    : Object.fromEntries(entries.filter(([id]) => ids.has(noteIdOf(id))));
}

/** Curves, turns and dynamics in the new melody's time. */
function rescaled({ melody: before, curves, turns, dynamics }: PhraseQuestion, melody: Melody) {
  const factor = melody.division / before.division;
  const stretch = withoutRepeats(melody).length / withoutRepeats(before).length;
  if (factor === 1 && stretch === 1) return {};
  const at = (time: Divisions) => quantity<Divisions>(Math.round(time * factor));
  // Curves keep their shape over the whole; who plays and how loud stay in their bars.
  const curve = (points: Curve) =>
    points.map((point) => ({ ...point, at: quantity<Divisions>(Math.round(point.at * stretch)) }));
  return {
    curves: {
      span: curve(curves.span),
      density: curve(curves.density),
      weight: curve(curves.weight),
    },
    turns: turns.map((turn) => ({ ...turn, from: at(turn.from), to: at(turn.to) })),
    dynamics: dynamics.map((mark) => ({ ...mark, at: at(mark.at) })),
  };
}

/**
 * Gives the notes of a melody that was read anew the names they had.
 * @param melody - as read
 * @param before - the melody before
 * @returns the same with the old names where a note begins at the same time with the same pitch,
 *   then where only the time is the same; new names elsewhere
 */
export function withOldNames(melody: Melody, before: Melody): Melody {
  const free = new Map(before.notes.map((note) => [keyOf(note, before, true), note.id]));
  const byTime = new Map(before.notes.map((note) => [keyOf(note, before, false), note.id]));
  const used = new Set<string>();
  const exact = melody.notes.map((note) => claim(free.get(keyOf(note, melody, true)), used));
  const names = melody.notes.map(
    (note, index) => exact[index] ?? claim(byTime.get(keyOf(note, melody, false)), used),
  );
  let last = highestName(before);
  const notes = melody.notes.map((note, index) => ({
    ...note,
    id: names[index] ?? `n${(last += 1)}`,
  }));
  return { ...melody, notes };
}

function claim(id: string | undefined, used: Set<string>): string | undefined {
  if (id === undefined || used.has(id)) return undefined;
  used.add(id);
  return id;
}

function keyOf(note: MelodyNote, { division }: Melody, hasPitch: boolean): string {
  const time = (note.onset * 5040) / division;
  return hasPitch ? `${time} ${formatPitch(note.pitch)}` : String(time);
}

/**
 * The highest number in the names of a melody's notes.
 * @param melody - the melody
 * @returns 0 when it has no note
 */
export function highestName({ notes }: Pick<Melody, "notes">): number {
  return Math.max(0, ...notes.map(({ id }) => Number(/^n(\d+)$/.exec(id)?.[1] ?? 0)));
}
