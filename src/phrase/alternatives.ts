import type { Count, Ratio } from "../base/index.ts";
import { alternativeRows, leastDifference, type AlternativeRow } from "./alternative-table.ts";
import type { Curve, TextureCurves } from "./curves.ts";
import type { Phrase, PhraseAnswer, PhraseProgress } from "./phrase-types.ts";
import { searchPhrase } from "./search-phrase.ts";
import { textureAt } from "./curves.ts";

/** Another answer to the same question. */
export interface PhraseAlternative {
  readonly id: AlternativeRow["id"];
  readonly label: string;
  readonly curves: TextureCurves;
  readonly answer: PhraseAnswer;
}

/** What the search for alternatives reports. */
export interface AlternativeProgress {
  readonly id: AlternativeRow["id"];
  readonly progress: PhraseProgress;
}

/**
 * How far two answers lie apart for the ear.
 * @param a - an answer
 * @param b - another answer to the same melody
 * @returns share of their distinct pitches that only one of them has, weighted by time; 0 to 1
 * @source symmetric difference over union (P. Jaccard, 1901) of the pitches of each moment
 */
export function answerDifference(a: PhraseAnswer, b: PhraseAnswer): Ratio {
  let apart = 0;
  let all = 0;
  a.moments.forEach((voiced, index) => {
    const other = b.moments[index];
    if (!other) return;
    const here = new Set(voiced.pitches.filter((pitch) => pitch > 0));
    const there = new Set(other.pitches.filter((pitch) => pitch > 0));
    const union = new Set([...here, ...there]);
    const shared = [...here].filter((pitch) => there.has(pitch)).length;
    const { duration } = voiced.moment;
    apart += (duration * (union.size - shared)) / union.size;
    all += duration;
  });
  return all === 0 ? 0 : apart / all;
}

/**
 * Curves bent by constant factors.
 * @param curves - as drawn
 * @param row - factors
 * @returns curves with the same points in time
 */
export function bentCurves(
  curves: TextureCurves,
  row: Pick<AlternativeRow, "span" | "density" | "weight">,
): TextureCurves {
  const bent = (curve: Curve, factor: number): Curve =>
    curve.map((point) => ({ ...point, value: point.value * factor }));
  return {
    span: bent(curves.span, row.span),
    density: bent(curves.density, row.density),
    weight: bent(curves.weight, row.weight),
  };
}

/**
 * Answers to one phrase that differ to the ear: as drawn first, then with the curves bent, as long as
 * each lies far enough from all before.
 * @param phrase - a question that readPhrase has worked out
 * @param curves - its curves
 * @param count - how many are wanted
 * @returns a generator of progress that ends with the alternatives, up to `count`; fewer where the
 *   band or the rules leave too little room
 */
export function* searchAlternatives(
  phrase: Phrase,
  curves: TextureCurves,
  count: Count,
): Generator<AlternativeProgress, readonly PhraseAlternative[]> {
  const found: PhraseAlternative[] = [];
  for (const row of alternativeRows) {
    if (found.length >= count) break;
    const bent = bentCurves(curves, row);
    const search = searchPhrase(withCurves(phrase, bent));
    let step = search.next();
    for (; !step.done; step = search.next()) yield { id: row.id, progress: step.value };
    const answer = step.value;
    if (found.every((other) => answerDifference(answer, other.answer) >= leastDifference))
      found.push({ id: row.id, label: row.label, curves: bent, answer });
  }
  return found;
}

/** Other curves for the same moments; weight stays within the players who may sound. */
function withCurves(phrase: Phrase, curves: TextureCurves): Phrase {
  return {
    ...phrase,
    moments: phrase.moments.map((one) => {
      const asked = textureAt(curves, one.moment.onset);
      const resting = one.question.locks.filter(({ sounding }) => sounding === "rest").length;
      const most = Math.max(1, phrase.players.length - resting);
      return { ...one, asked: { ...asked, weight: Math.min(most, Math.max(1, asked.weight)) } };
    }),
  };
}
