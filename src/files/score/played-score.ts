import type { Count } from "../../base/index.ts";
import type { Divisions, Repeat } from "../../theory/index.ts";
import { placedBars, type PlacedBar } from "./score-times.ts";
import type { PartDirection, ScoreModel, ScoreNote } from "./score-model.ts";

/**
 * The score as it is played: every repeat written out.
 * @param score - the score
 * @returns the same without repeats; the score itself when it has none
 */
export function playedScore(score: ScoreModel): ScoreModel {
  if (score.repeats.length === 0) return score;
  const bars = placedBars(score);
  const first = bars[0]?.number ?? 1;
  const played = playedNumbers(score.repeats, first, bars.length).map(
    (number) => bars[number - first]!,
  );
  return {
    ...score,
    bars: played.map(({ bar }) => bar),
    harmonies: inPlayedOrder(score.harmonies, played),
    repeats: [],
    parts: score.parts.map((part) => ({
      ...part,
      notes: inPlayedOrder<ScoreNote>(part.notes, played).map(cutAt(played)),
      directions: inPlayedOrder<PartDirection>(part.directions, played),
    })),
  };
}

/** Numbers of the bars in the order they are played. */
function playedNumbers(repeats: readonly Repeat[], first: Count, count: Count): readonly Count[] {
  const order: Count[] = [];
  const add = (from: Count, to: Count): void => {
    for (let number = Math.max(first, from); number <= to; number += 1) order.push(number);
  };
  const last = first + count - 1;
  let next = first;
  for (const { fromBar, toBar, times, endings = [] } of repeats) {
    add(next, fromBar - 1);
    for (let pass = 1; pass <= times; pass += 1)
      for (let number = fromBar; number <= Math.min(last, toBar); number += 1) {
        const ending = endings.find((each) => each.fromBar <= number && number <= each.toBar);
        if (ending === undefined || ending.passes.includes(pass)) order.push(number);
      }
    next = toBar + 1;
  }
  add(next, last);
  return order;
}

/** What begins in each played bar, moved to where the bar is played. */
function inPlayedOrder<T extends { readonly onset: Divisions }>(
  entries: readonly T[],
  played: readonly PlacedBar[],
): readonly T[] {
  let at = 0;
  return played.flatMap(({ start, end }) => {
    const shift = at - start;
    at += end - start;
    return entries
      .filter(({ onset }) => onset >= start && onset < end)
      .map((entry) => ({ ...entry, onset: (entry.onset + shift) as Divisions }));
  });
}

/** A note that a jump would let sound into other bars ends with the score at the latest. */
function cutAt(
  played: readonly PlacedBar[],
): (note: ScoreNote, index: Count, all: readonly ScoreNote[]) => ScoreNote {
  const whole = played.reduce((sum, { bar }) => sum + bar.length, 0);
  return (note, index, all) => {
    const next = all.slice(index + 1).find(({ onset }) => onset > note.onset)?.onset ?? whole;
    const duration = Math.min(note.duration, next - note.onset, whole - note.onset);
    return duration === note.duration ? note : { ...note, duration: duration as Divisions };
  };
}
