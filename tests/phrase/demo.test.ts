import { describe, expect, it } from "vitest";
import { barCount, readMelody } from "../../src/theory/index.ts";
import { demoPhrase } from "../../src/phrase/demo.ts";
import { demoTable, type DemoRow } from "../../src/phrase/demo-table.ts";
import { performPhrase } from "../../src/phrase/perform-phrase.ts";
import { checkLines } from "../../src/phrase/check-lines.ts";
import { phraseOf, solved } from "./support/phrases.ts";

describe.each(demoTable.map(({ id }) => id))("the %s to start from", (id) => {
  const question = demoPhrase(id);

  it("is eight bars in order, for a whole band", () => {
    expect(readMelody(question.melody).ok).toBe(true);
    expect(barCount(question.melody)).toBe(8);
    expect(question.players).toHaveLength(13);
  });

  it("is voiced, played and checked without a note out of range", () => {
    const phrase = phraseOf(question);
    const { answer } = solved(phrase);
    const performance = performPhrase(phrase, answer);
    const remarks = checkLines(phrase, answer, performance.parts).flatMap(
      ({ remarks: own }) => own,
    );
    expect(remarks.filter(({ kind }) => kind === "range")).toEqual([]);
    expect(performance.played.length).toBeGreaterThan(100);
    const quarters = question.melody.length / question.melody.division;
    expect(performance.seconds).toBeCloseTo((quarters * 60) / question.melody.tempo, 6);
    for (const { onset, duration } of performance.played)
      expect(onset + duration).toBeLessThanOrEqual(performance.seconds + 0.1);
  });
});

it("has the shout grow to its peak and settle", () => {
  const { answer } = solved(phraseOf(demoPhrase("shout")));
  const players = answer.moments.map(({ players: sounding }) => sounding);
  const peak = players.indexOf(Math.max(...players));
  expect(peak / players.length).toBeGreaterThan(0.5);
  expect(players[0]).toBeLessThan(players[peak]!);
});

it("is known by name", () =>
  expect(() => demoPhrase("waltz" as DemoRow["id"])).toThrow(RangeError));
