import { seededChance, type Chance, type Count } from "../base/index.ts";
import type { Idea } from "./lesson-types.ts";
import { pairMargin } from "./quiz-pairs.ts";
import { runToHarder, turnsARound } from "./quiz-table.ts";
import type {
  QuizDeck,
  QuizPair,
  QuizRound,
  QuizSide,
  QuizStanding,
  QuizTurn,
} from "./quiz-types.ts";

/** What a round goes on from. */
export type QuizBefore = Pick<QuizRound, "standings" | "drawn">;

const fresh: QuizStanding = { level: 0, run: 0, asked: 0, right: 0, finest: null };

/** Where a listener starts: the easiest level of everything. */
export const quizStart: QuizBefore = Object.freeze({
  standings: { span: fresh, weight: fresh, density: fresh, interleaving: fresh },
  drawn: { span: 0, weight: 0, density: 0, interleaving: 0 },
});

/**
 * Ideas that a deck has pairs for.
 * @param deck - the deck
 * @returns ideas with at least one pair
 */
export function ideasOf(deck: QuizDeck): readonly Idea[] {
  return (Object.keys(deck) as Idea[]).filter((idea) =>
    deck[idea].some((pairs) => pairs.length > 0),
  );
}

/**
 * Starts a round: every idea equally often, each side right equally often, in an order that
 * cannot be foreseen.
 * @param asked - ideas to ask about; at least one
 * @param seed - any whole number; the same seed gives the same order
 * @param before - how far the listener has come; scores start anew, levels stay
 * @returns the round, before its first question
 * @throws RangeError when no idea is asked
 */
export function startRound(
  asked: readonly Idea[],
  seed: Count,
  before: QuizBefore = quizStart,
): QuizRound {
  if (asked.length === 0) throw new RangeError("a round needs at least one idea, got none");
  const chance = seededChance(seed);
  const first = chance() < 0.5 ? 0 : 1;
  const turns = Array.from({ length: turnsARound }, (_, at): QuizTurn => {
    const place = at % asked.length;
    const lap = Math.floor(at / asked.length);
    // Sides alternate within an idea, and from idea to idea, so that both come out even.
    const moreSide: QuizSide = (place + lap + first) % 2 === 0 ? "A" : "B";
    return { idea: asked[place] ?? "span", moreSide };
  });
  const standings = Object.fromEntries(
    Object.entries(before.standings).map(([idea, { level, run, finest }]) => [
      idea,
      { level, run, finest, asked: 0, right: 0 },
    ]),
  ) as unknown as QuizRound["standings"];
  return { turns: shuffled(turns, chance), answers: [], standings, drawn: before.drawn };
}

/** Fisher and Yates's shuffle. */
function shuffled<T>(things: readonly T[], chance: Chance): readonly T[] {
  const left = [...things];
  const order: T[] = [];
  while (left.length > 0) order.push(...left.splice(Math.floor(chance() * left.length), 1));
  return order;
}

/** The question that waits for an answer. */
export interface QuizQuestion {
  readonly turn: QuizTurn;
  readonly pair: QuizPair;
}

/**
 * The question that waits for an answer.
 * @param round - the round
 * @param deck - pairs to draw from; must have one for every idea of the round
 * @returns what is asked and the pair, or null at the end of the round
 * @throws RangeError when the deck has no pair for the idea
 */
export function questionOf(round: QuizRound, deck: QuizDeck): QuizQuestion | null {
  const turn = round.turns[round.answers.length];
  if (turn === undefined) return null;
  const { idea } = turn;
  const pairs = pairsNear(deck[idea], round.standings[idea].level);
  const pair = pairs[round.drawn[idea] % Math.max(1, pairs.length)];
  if (pair === undefined) throw new RangeError(`the deck has no pair for "${idea}"`);
  return { turn, pair };
}

/** The pairs of a level; where it has none, of the nearest that has, the easier one first. */
function pairsNear(levels: readonly (readonly QuizPair[])[], level: Count): readonly QuizPair[] {
  for (let away = 0; away < levels.length; away += 1)
    for (const each of [level - away, level + away]) {
      const pairs = levels[each] ?? [];
      if (pairs.length > 0) return pairs;
    }
  return [];
}

/**
 * Takes an answer: two right in a row make the next difference smaller, one wrong makes it larger.
 * @param round - the round
 * @param question - the question that waited
 * @param chosen - the side said to have more
 * @param levels - how many levels there are
 * @returns the round after the answer
 * @source H. Levitt, Transformed up-down methods in psychoacoustics, JASA 49 (1971), 467-477: this
 *   rule settles where 70.7 % of the answers are right
 */
export function answerTurn(
  round: QuizRound,
  { turn, pair }: QuizQuestion,
  chosen: QuizSide,
  levels: Count,
): QuizRound {
  const { idea } = turn;
  const isRight = chosen === turn.moreSide;
  return {
    ...round,
    answers: [...round.answers, { turn, pair, chosen, isRight }],
    drawn: { ...round.drawn, [idea]: round.drawn[idea] + 1 },
    standings: {
      ...round.standings,
      [idea]: afterAnswer(round.standings[idea], pair, isRight, levels),
    },
  };
}

function afterAnswer(
  { level, run, asked, right, finest }: QuizStanding,
  pair: QuizPair,
  isRight: boolean,
  levels: Count,
): QuizStanding {
  if (!isRight) return { level: Math.max(0, level - 1), run: 0, asked: asked + 1, right, finest };
  const isReady = run + 1 >= runToHarder;
  const margin = pairMargin(pair);
  return {
    level: isReady ? Math.min(levels - 1, level + 1) : level,
    run: isReady ? 0 : run + 1,
    asked: asked + 1,
    right: right + 1,
    finest: finest === null ? margin : Math.min(finest, margin),
  };
}
