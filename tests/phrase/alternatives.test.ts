import { describe, expect, it } from "vitest";
import { answerDifference, bentCurves, searchAlternatives } from "../../src/phrase/alternatives.ts";
import { leastDifference } from "../../src/phrase/alternative-table.ts";
import { levelCurves, melodyOf, phraseOf, playersOf, questionOf } from "./support/phrases.ts";

const curves = levelCurves(20, 3, 6);
const phrase = phraseOf(
  questionOf(melodyOf("C5:1@F6 D5:1 F5:2 | Eb5:2@F7 D5:2@Bb7"), {
    players: playersOf("six-horn"),
    curves,
  }),
);

function found(count: number) {
  const search = searchAlternatives(phrase, curves, count);
  for (let step = search.next(); ; step = search.next()) if (step.done) return step.value;
}

describe("alternatives for a whole phrase", () => {
  const three = found(3);

  it("are three, the one as drawn first", () => {
    expect(three).toHaveLength(3);
    expect(three[0]?.id).toBe("as-drawn");
    expect(three[0]?.curves).toEqual(curves);
  });

  it("differ to the ear, each from each", () => {
    three.forEach((one, n) =>
      three
        .slice(n + 1)
        .forEach((other) =>
          expect(answerDifference(one.answer, other.answer)).toBeGreaterThanOrEqual(
            leastDifference,
          ),
        ),
    );
  });

  it("have the same melody", () => {
    for (const { answer } of three)
      expect(
        answer.moments.every(({ pitches, moment }) => Math.max(...pitches) === moment.lead),
      ).toBe(true);
  });
});

describe("the difference of two answers", () => {
  const [one] = found(1);

  it("is nothing between an answer and itself", () => {
    if (!one) throw new Error("must be there");
    expect(answerDifference(one.answer, one.answer)).toBe(0);
  });

  it("is the share of pitches that only one has (Jaccard 1901): {60, 64} and {60, 67} share one of three", () => {
    if (!one) throw new Error("must be there");
    const [first] = one.answer.moments;
    const answer = (pitches: readonly number[]) => ({
      ...one.answer,
      moments: [{ ...first!, pitches }],
    });
    expect(answerDifference(answer([60, 64, 0]), answer([60, 0, 67]))).toBeCloseTo(2 / 3, 9);
  });
});

it("bends curves by factors, point by point", () =>
  expect(bentCurves(curves, { span: 0.5, density: 2, weight: 1 })).toEqual(levelCurves(10, 6, 6)));
