import { placedBars } from "./score-times.ts";
import type { ScoreModel, ScoreNote, ScorePart } from "./score-model.ts";

/**
 * Refuses a score that cannot be written. Every score that this folder builds or reads is in
 * order; what is refused is a caller's bug.
 * @param score - the score
 * @throws RangeError on times that are no whole divisions, without a bar, on notes that overlap or
 *   leave the score, on ids that are no XML names or are given twice
 */
export function checkScore(score: ScoreModel): void {
  const { division, tempo, bars, parts, harmonies } = score;
  if (!isWhole(division, 1)) throw new RangeError(`a division is a whole number, got ${division}`);
  if (!(tempo > 0)) throw new RangeError(`a tempo is above 0, got ${tempo}`);
  if (bars.length === 0) throw new RangeError("a score has at least one bar");
  if (parts.length === 0) throw new RangeError("a score has at least one part");
  for (const bar of bars)
    if (!isWhole(bar.length, 1))
      throw new RangeError(`a bar is as long as a whole number of divisions, got ${bar.length}`);
  const end = placedBars(score).at(-1)!.end;
  checkOrder(harmonies, "chords");
  const ids = new Set<string>();
  for (const part of parts) {
    if (!/^[A-Za-z][\w.-]*$/.test(part.id) || ids.has(part.id))
      throw new RangeError(`a part needs an id of its own, an XML name, got "${part.id}"`);
    ids.add(part.id);
    checkNotes(part, end);
  }
}

const isWhole = (value: number, least: number): boolean =>
  Number.isInteger(value) && value >= least;

function checkOrder(entries: readonly { readonly onset: number }[], what: string): void {
  for (const [index, { onset }] of entries.entries())
    if (!isWhole(onset, 0) || onset <= (entries[index - 1]?.onset ?? -1))
      throw new RangeError(`${what} stand in order of onset, got ${onset}`);
}

function checkNotes({ id, notes }: ScorePart, end: number): void {
  let before: ScoreNote | undefined;
  for (const note of notes) {
    const { onset, duration } = note;
    if (!isWhole(onset, 0) || !isWhole(duration, 1) || onset + duration > end)
      throw new RangeError(`notes of ${id} lie inside the score, got ${onset} + ${duration}`);
    const isChord = before?.onset === onset && before.duration === duration;
    if (before && !isChord && onset < before.onset + before.duration)
      throw new RangeError(`notes of ${id} do not overlap, got one at ${onset}`);
    before = note;
  }
}
