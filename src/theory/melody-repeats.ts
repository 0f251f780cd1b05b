import { quantity, type Count } from "../base/index.ts";
import { barCount, barLength, barStart } from "./melody-place.ts";
import type { Divisions, Melody, Repeat } from "./melody-types.ts";

/** A stretch of the written melody that is played at some point. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  /** 1 for the first time through. */
  readonly pass: Count;
}

/**
 * The melody as it is played, every repeat written out. Notes of a later pass are named after the
 * first one: "n3~2".
 * @param melody - a melody that readMelody has found in order
 * @returns the same without repeats; the melody itself when it has none
 */
export function withoutRepeats(melody: Melody): Melody {
  if (melody.repeats.length === 0) return melody;
  const notes: Melody["notes"][number][] = [];
  const changes: Melody["changes"][number][] = [];
  let at = 0;
  for (const { from, to, pass } of stretchesOf(melody)) {
    const shift = at - from;
    const holding = melody.changes.filter(({ onset }) => onset < from).at(-1);
    const starts = melody.changes.some(({ onset }) => onset === from);
    if (holding && !starts) changes.push({ onset: quantity<Divisions>(at), text: holding.text });
    for (const change of melody.changes)
      if (change.onset >= from && change.onset < to)
        changes.push({ ...change, onset: quantity<Divisions>(change.onset + shift) });
    for (const note of melody.notes)
      if (note.onset >= from && note.onset < to)
        notes.push({
          ...note,
          id: pass === 1 ? note.id : `${note.id}~${pass}`,
          onset: quantity<Divisions>(note.onset + shift),
          isTied: note.isTied && note.onset + note.duration < to,
        });
    at += to - from;
  }
  return { ...melody, notes, changes, length: quantity<Divisions>(at), repeats: [] };
}

function stretchesOf(melody: Melody): readonly Stretch[] {
  const stretches: Stretch[] = [];
  const end = barCount(melody) + 1;
  let bar = 0;
  const add = (from: Count, to: Count, pass: Count): void => {
    if (to > from)
      stretches.push({ from: barStart(melody, from), to: endOfBars(melody, to), pass });
  };
  for (const repeat of melody.repeats) {
    add(bar, repeat.fromBar, 1);
    for (let pass = 1; pass <= repeat.times; pass++)
      for (const [from, to] of barsOfPass(repeat, pass)) add(from, to, pass);
    bar = repeat.toBar + 1;
  }
  add(bar, end, 1);
  return stretches;
}

/** Start of a bar that may lie one past the last. */
function endOfBars(melody: Melody, bar: Count): number {
  const end = bar === 0 ? 0 : melody.pickup + (bar - 1) * barLength(melody);
  return Math.min(end, melody.length);
}

/** Bars of one pass, endings of other passes left out; ends excluded. */
function barsOfPass(repeat: Repeat, pass: Count): readonly (readonly [Count, Count])[] {
  const skipped = (repeat.endings ?? []).filter(({ passes }) => !passes.includes(pass));
  const found: [Count, Count][] = [];
  let from = repeat.fromBar;
  for (const { fromBar, toBar } of [...skipped].sort((a, b) => a.fromBar - b.fromBar)) {
    found.push([from, fromBar]);
    from = toBar + 1;
  }
  found.push([from, repeat.toBar + 1]);
  return found;
}
