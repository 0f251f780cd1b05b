import { describe, expect, it } from "vitest";
import { formatPitch } from "../../src/theory/index.ts";
import { partsOf } from "../../src/phrase/parts.ts";
import type { PhraseAnswer } from "../../src/phrase/phrase-types.ts";
import {
  levelCurves,
  melodyOf,
  phraseOf,
  playersOf,
  questionOf,
  solved,
} from "./support/phrases.ts";

const melody = melodyOf("C5:2@F6 Ab4:1/2@Bb7 C5:1/2 D5:1~ | D5:2@G7 r:2", { key: "F" });
const phrase = phraseOf(
  questionOf(melody, { players: playersOf("four-horn"), curves: levelCurves(14, 3, 4) }),
);
const { answer } = solved(phrase);

/** The same answer with one player's pitches put in by hand. */
function withLine(player: number, line: readonly number[]): PhraseAnswer {
  const moments = answer.moments.map((one, n) => ({
    ...one,
    pitches: one.pitches.map((pitch, p) => (p === player ? line[n]! : pitch)),
  }));
  return { ...answer, moments };
}

describe("parts", () => {
  it("are one for each player, in the order of the line-up", () =>
    expect(partsOf(phrase, answer, []).map(({ player }) => player.id)).toEqual(
      phrase.players.map(({ id }) => id),
    ));

  it("hold on where only the chord changes and the pitch stays", () => {
    const [, part] = partsOf(phrase, withLine(1, [57, 56, 57, 58, 58]), []);
    expect(part?.notes.map(({ duration }) => duration / melody.division)).toEqual([2, 0.5, 0.5, 3]);
  });

  it("strike anew where the pitch changes under the held melody", () => {
    const [, part] = partsOf(phrase, withLine(1, [57, 56, 57, 58, 59]), []);
    expect(part?.notes.map(({ duration }) => duration / melody.division)).toEqual([
      2, 0.5, 0.5, 1, 2,
    ]);
  });

  it("rest where a player rests", () => {
    const [, part] = partsOf(phrase, withLine(1, [57, 0, 0, 58, 0]), []);
    expect(part?.notes.map(({ onset }) => onset / melody.division)).toEqual([0, 3]);
  });

  it("spell the melody as written in every octave, other notes for their chord", () => {
    const [, part] = partsOf(phrase, withLine(1, [60, 56, 62, 62, 65]), []);
    expect(part?.notes.map(({ pitch }) => formatPitch(pitch))).toEqual([
      "C4",
      "Ab3",
      "D4",
      "D4",
      "F4",
    ]);
  });

  it("carry the marks of their melody notes", () => {
    const [part] = partsOf(phrase, answer, [{ noteId: "n2", marks: ["accent"], reason: "" }]);
    expect(part?.notes.map(({ noteId, marks }) => `${noteId} ${marks.join()}`)).toContain(
      "n2 accent",
    );
  });

  it("have the same sounding time as the answer, note for note", () => {
    partsOf(phrase, answer, []).forEach(({ notes }, p) => {
      const time = notes.reduce((sum, { duration }) => sum + duration, 0);
      const sounding = answer.moments.filter(({ pitches }) => pitches[p]! > 0);
      expect(time).toBe(sounding.reduce((sum, { moment }) => sum + moment.duration, 0));
    });
  });
});
