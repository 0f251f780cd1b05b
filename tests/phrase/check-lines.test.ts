import { describe, expect, it } from "vitest";
import { checkLines } from "../../src/phrase/check-lines.ts";
import { partsOf } from "../../src/phrase/parts.ts";
import type { PhraseAnswer } from "../../src/phrase/phrase-types.ts";
import {
  levelCurves,
  melodyOf,
  phraseOf,
  playersOf,
  questionOf,
  solved,
  type Head,
} from "./support/phrases.ts";

/** Checks of a melody whose players' lines can be put in by hand, index of player → pitches. */
function checks(text: string, lines: Readonly<Record<number, readonly number[]>>, head: Head = {}) {
  const phrase = phraseOf(
    questionOf(melodyOf(text, head), {
      players: playersOf("six-horn"),
      curves: levelCurves(14, 3, 6),
    }),
  );
  const { answer } = solved(phrase);
  const moments = answer.moments.map((one, n) => ({
    ...one,
    pitches: one.pitches.map((pitch, p) => lines[p]?.[n] ?? pitch),
  }));
  const changed: PhraseAnswer = { ...answer, moments };
  return checkLines(phrase, changed, partsOf(phrase, changed, []));
}

const four = "C5:1@C6 E5:1 G5:1 E5:1 | C5:4";

describe("a player's line looked over", () => {
  it("names an awkward slide with bar and beat", () => {
    const [, , trombone] = checks(
      "C5:1/2@C6 E5:1/2 G5:1 E5:2",
      { 2: [46, 47, 48, 48] },
      { tempo: 180 },
    );
    expect(trombone?.remarks.map(({ text }) => text)).toEqual([
      "Bar 1, the and of 1: slide from position 1 to 7.",
    ]);
  });

  it("names a wide leap", () => {
    const [, trumpet] = checks(four, { 1: [60, 72, 62, 60, 60] });
    expect(trumpet?.remarks[0]).toMatchObject({
      kind: "move",
      text: expect.stringMatching(/^Bar 1, beat 2: leaps 12/) as string,
    });
  });

  it("names a note out of range", () => {
    const [, , , alto] = checks(four, { 3: [60, 60, 90, 60, 60] });
    expect(alto?.remarks.map(({ text }) => text)).toContain("Bar 1, beat 3: F♯6 is out of range.");
  });

  it("tells range and tessitura bar by bar", () => {
    const [, trumpet] = checks(four, { 1: [60, 62, 64, 62, 67] });
    expect(trumpet?.range).toEqual({ low: 60, high: 67 });
    expect(trumpet?.tessitura).toEqual([
      { bar: 1, low: 60, high: 64, middle: 62 },
      { bar: 2, low: 67, high: 67, middle: 67 },
    ]);
  });

  it("finds the longest stretch without a breath and says when it is too long", () => {
    const long = Array.from({ length: 6 }, () => "C5:2@C6 E5:2").join(" | ");
    const [trumpet] = checks(`${long} | r:4 | G5:4@C6`, {}, { tempo: 60 });
    expect(trumpet?.longestStretch).toEqual({ seconds: 24, onset: 0 });
    expect(trumpet?.remarks.find(({ kind }) => kind === "breath")?.text).toBe(
      "Bar 1, beat 1: 24.0 seconds without a breath; 9 is long for this instrument.",
    );
  });

  it("warns of a line that lies long in a tiring register", () => {
    const [trumpet] = checks("Bb5:4@Bb6 | A5:4@F6 | Bb5:4@Bb6", {}, { key: "Bb" });
    expect(trumpet?.tiringShare).toBeGreaterThan(0.5);
    expect(trumpet?.remarks.find(({ kind }) => kind === "tiring")?.text).toMatch(/lip/);
  });

  it("has nothing to say of a player who rests", () => {
    const [, trumpet] = checks(four, { 1: [0, 0, 0, 0, 0] });
    expect(trumpet?.range).toBeUndefined();
    expect(trumpet?.tessitura).toEqual([]);
    expect(trumpet?.remarks).toEqual([]);
  });
});
