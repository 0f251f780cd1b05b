import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seededChance } from "../../src/base/index.ts";
import {
  answerTurn,
  ideaValue,
  ideasOf,
  lessonTextures,
  pairMargin,
  questionOf,
  quizDeck,
  quizRules,
  quizStart,
  startRound,
  type Idea,
  type QuizDeck,
  type QuizPair,
  type QuizRound,
} from "../../src/explore/index.ts";
import { metrics } from "../../src/metrics/index.ts";
import { voicingOfTexture } from "../../src/explore/index.ts";
import { ask, playersOf } from "../voicing/support/questions.ts";
import { texturesOf } from "./support/textures.ts";

const ideas: readonly Idea[] = ["span", "weight", "density", "interleaving"];
const levels = 5;

const questions = [
  ask("F13", "D5", "f"),
  ask("Dm7", "F5", "mf", { players: playersOf("six-horn") }),
  ask("C7alt", "Bb4", "p"),
  ask("Cmaj7", "E5", "f", { players: playersOf("three-horn") }),
].map((question) => ({ question, textures: texturesOf(question) }));

function pairsOf(deck: QuizDeck): readonly QuizPair[] {
  return ideas.flatMap((idea) => deck[idea].flat());
}

describe("the pairs of a listening quiz", () => {
  const someDeck = fc
    .tuple(fc.constantFrom(...questions), fc.nat(2 ** 31))
    .map(([{ question, textures }, seed]) => ({
      question,
      pairs: pairsOf(quizDeck(question, textures, seed)),
    }));
  const overPairs = (check: (pair: QuizPair) => void) =>
    fc.assert(
      fc.property(someDeck, ({ pairs }) => pairs.forEach(check)),
      { seed: 7, numRuns: 12 },
    );

  it("differ in what is asked by the margin of their level, and by less than the level before", () => {
    overPairs((pair) => {
      const { margins } = quizRules[pair.idea];
      expect(pairMargin(pair)).toBeGreaterThanOrEqual(margins[pair.level] ?? NaN);
      expect(pairMargin(pair)).toBeLessThan(margins[pair.level - 1] ?? Infinity);
    });
  });

  it("stay within the stated tolerance in everything else", () => {
    overPairs(({ idea, less, more }) => {
      const { most } = quizRules[idea];
      const apart = (of: "span" | "notes" | "players") => Math.abs(less[of] - more[of]);
      if (idea !== "span") expect(apart("span")).toBeLessThanOrEqual(most.span);
      if (idea !== "density") expect(apart("notes")).toBeLessThanOrEqual(most.notes);
      if (idea !== "weight") expect(apart("players")).toBeLessThanOrEqual(most.players);
      const [light, heavy] = [less.weight, more.weight].sort((a, b) => a - b);
      if (idea !== "weight") expect(heavy).toBeLessThanOrEqual(most.weight * (light ?? NaN) + 1e-9);
      const woven = ideaValue(less, "interleaving") - ideaValue(more, "interleaving");
      if (idea !== "interleaving") expect(Math.abs(woven)).toBeLessThanOrEqual(most.interleaving);
    });
  });

  it("hold every idea finitely that the asked one does not carry with it", () => {
    // What a rule leaves free (Infinity) must be the idea itself or follow from it.
    const free = ideas.map((idea) => {
      const { most } = quizRules[idea];
      return Object.entries(most).flatMap(([key, value]) => (value === Infinity ? [key] : []));
    });
    expect(free).toEqual([["span"], ["players", "weight"], ["notes"], ["interleaving"]]);
  });

  it("make the heavier one the louder one as well, by the listener's model", () => {
    const { question, textures } = questions[0] ?? fail();
    const loudness = metrics.find((metric) => metric.id === "loudness") ?? fail();
    for (const { less, more } of quizDeck(question, textures, 5).weight.flat()) {
      const [soft, loud] = [less, more].map(
        (texture) => loudness.measure(voicingOfTexture(question, texture), question).value,
      );
      expect(loud).toBeGreaterThan(soft ?? Infinity);
    }
  });

  it("exist at every level of every idea for a big band", () => {
    const { question, textures } = questions[0] ?? fail();
    const deck = quizDeck(question, textures, 1);
    for (const idea of ideas)
      for (const pairs of deck[idea]) expect(pairs.length).toBeGreaterThanOrEqual(6);
  });

  it("come out the same for the same seed, and others for another", () => {
    const { question, textures } = questions[1] ?? fail();
    expect(quizDeck(question, textures, 3)).toEqual(quizDeck(question, textures, 3));
    expect(quizDeck(question, textures, 3)).not.toEqual(quizDeck(question, textures, 4));
  });

  it("leave out ideas that one section alone cannot show", () => {
    const { question, textures } = questions[3] ?? fail();
    expect(ideasOf(quizDeck(question, textures, 1))).not.toContain("interleaving");
    expect(ideasOf(quizDeck(question, lessonTextures(question, "free", []), 1))).toEqual([]);
  });
});

function fail(): never {
  throw new Error("missing");
}

describe("a round", () => {
  it("has the answer as often on either side, whatever is asked", () => {
    fc.assert(
      fc.property(fc.subarray([...ideas], { minLength: 1 }), fc.nat(), (asked, seed) => {
        const { turns } = startRound(asked, seed);
        expect(turns.filter((turn) => turn.moreSide === "A").length).toBe(turns.length / 2);
        const counts = asked.map((idea) => turns.filter((turn) => turn.idea === idea).length);
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
      }),
      { seed: 7 },
    );
  });

  it("does not alternate: the same side can come three times in a row", () => {
    const runs = Array.from({ length: 40 }, (_, seed) =>
      startRound(ideas, seed)
        .turns.map((turn) => turn.moreSide)
        .join(""),
    );
    expect(runs.some((run) => /AAA|BBB/.test(run))).toBe(true);
    expect(new Set(runs).size).toBeGreaterThan(20);
  });

  it("asks no pair of an idea twice while others of the level are left", () => {
    const { question, textures } = questions[0] ?? fail();
    const deck = quizDeck(question, textures, 2);
    // Always wrong: the level stays at the easiest.
    let round = startRound(["span"], 3);
    const seen: QuizPair[] = [];
    for (;;) {
      const turn = questionOf(round, deck);
      if (turn === null) break;
      seen.push(turn.pair);
      round = answerTurn(round, turn, turn.turn.moreSide === "A" ? "B" : "A", levels);
    }
    expect(new Set(seen).size).toBe(seen.length);
    expect(round.standings.span).toMatchObject({ level: 0, asked: 12, right: 0, finest: null });
  });

  it("keeps the levels for the next round and starts the score anew", () => {
    const { question, textures } = questions[0] ?? fail();
    const deck = quizDeck(question, textures, 2);
    const done = played(startRound(["density"], 1), deck, () => true);
    expect(done.standings.density.level).toBe(levels - 1);
    const next = startRound(["density"], 2, done);
    expect(next.standings.density).toMatchObject({ level: levels - 1, asked: 0, right: 0 });
    expect(() => startRound([], 1)).toThrow(RangeError);
  });
});

function played(start: QuizRound, deck: QuizDeck, isHeard: (pair: QuizPair) => boolean): QuizRound {
  let round = start;
  for (;;) {
    const question = questionOf(round, deck);
    if (question === null) return round;
    const { moreSide } = question.turn;
    const other = moreSide === "A" ? "B" : "A";
    round = answerTurn(round, question, isHeard(question.pair) ? moreSide : other, levels);
  }
}

describe("the level of difficulty", () => {
  const { question, textures } = questions[0] ?? fail();
  const deck = quizDeck(question, textures, 9);

  it("rises after two right answers in a row and falls after one wrong one", () => {
    const verdicts = [true, true, true, false, true, true, false, false, false];
    const reached: number[] = [];
    let round = startRound(["span"], 1);
    for (const isRight of verdicts) {
      const turn = questionOf(round, deck) ?? fail();
      const other = turn.turn.moreSide === "A" ? "B" : "A";
      round = answerTurn(round, turn, isRight ? turn.turn.moreSide : other, levels);
      reached.push(round.standings.span.level);
    }
    expect(reached).toEqual([0, 1, 1, 0, 0, 1, 0, 0, 0]);
  });

  it("settles where 70.7 % of the answers are right", () => {
    // H. Levitt, Transformed up-down methods in psychoacoustics, JASA 49 (1971), 467-477, table I:
    // two right down, one wrong up converges on 70.7 %. The listener here is simulated: certain on
    // the easiest level, guessing on the hardest.
    const skill = [0.98, 0.9, 0.76, 0.62, 0.5];
    const chance = seededChance(11);
    let right = 0;
    let asked = 0;
    let before = { standings: quizStart.standings, drawn: quizStart.drawn };
    for (let lap = 0; lap < 400; lap += 1) {
      const done = played(startRound(["span"], lap, before), deck, ({ level }) => {
        return chance() < (skill[level] ?? 0.5);
      });
      if (lap > 20) {
        right += done.standings.span.right;
        asked += done.standings.span.asked;
      }
      before = done;
    }
    expect(right / asked).toBeGreaterThan(0.67);
    expect(right / asked).toBeLessThan(0.76);
  });
});
