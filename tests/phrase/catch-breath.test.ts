import { describe, expect, it } from "vitest";
import { withCaughtBreaths } from "../../src/phrase/catch-breath.ts";
import { breathTable } from "../../src/phrase/breath-table.ts";
import { checkLines } from "../../src/phrase/check-lines.ts";
import { partsOf } from "../../src/phrase/parts.ts";
import { performPhrase } from "../../src/phrase/perform-phrase.ts";
import {
  levelCurves,
  melodyOf,
  phraseOf,
  playersOf,
  questionOf,
  solved,
} from "./support/phrases.ts";

/** Sixteen bars of half notes at 60: 32 notes of 2 s without a rest. */
const line = melodyOf(
  Array.from({ length: 8 }, () => "C5:2@F6 D5:2 | C5:2@Gm7 Bb4:2").join(" | "),
  {
    tempo: 60,
    key: "F",
  },
);
const asked = questionOf(line, {
  players: playersOf("four-horn"),
  curves: levelCurves(14, 3, 4),
  breaths: true,
});
const phrase = phraseOf(asked);
const { answer } = solved(phrase);
const full = partsOf(phrase, answer, []);
const parts = withCaughtBreaths(phrase, full);

describe("breaths at the end of long notes", () => {
  it("leave nobody but the melody without one for too long", () => {
    const checks = checkLines(phrase, answer, performPhrase(phrase, answer).parts);
    const tooLong = checks.filter(({ remarks }) => remarks.some(({ kind }) => kind === "breath"));
    const leads = new Set(
      answer.moments.flatMap(({ moment, pitches }) =>
        phrase.players.filter((_, p) => pitches[p] === moment.lead).map(({ id }) => id),
      ),
    );
    for (const { player } of tooLong) expect(leads).toContain(player.id);
    expect(tooLong.length).toBeLessThan(phrase.players.length);
  });

  it("shorten notes by a breath, and only notes that are long enough and not the melody", () => {
    const leads = new Map(answer.moments.map(({ moment }) => [moment.id, moment.lead]));
    let cuts = 0;
    parts.forEach(({ notes }, p) =>
      notes.forEach((note, index) => {
        const whole = full[p]!.notes[index]!;
        const cut = (whole.duration - note.duration) / line.division;
        if (cut === 0) return;
        cuts += 1;
        // An eighth at 60 is half a second.
        expect(cut).toBe(0.5);
        expect(whole.duration / line.division).toBeGreaterThanOrEqual(breathTable.longNoteSeconds);
        expect(note.sounding).not.toBe(leads.get(note.momentId));
      }),
    );
    expect(cuts).toBeGreaterThan(5);
  });

  it("take no player out: nobody misses a note for a breath here", () => {
    for (const { question } of phrase.moments)
      expect(question.locks.filter(({ sounding }) => sounding === "rest")).toEqual([]);
  });

  it("change nothing where none are asked for", () => {
    const held = phraseOf({ ...asked, breaths: false });
    expect(withCaughtBreaths(held, full)).toBe(full);
  });
});
