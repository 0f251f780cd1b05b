import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { quantity, type SoundingMidi } from "../../src/base/index.ts";
import { canSound } from "../../src/band/index.ts";
import { brokenRules, voicingOf } from "../../src/voicing/index.ts";
import type { Phrase, PhraseAnswer, PhraseQuestion } from "../../src/phrase/phrase-types.ts";
import { linesCost, searchPhrase, stepBetween } from "../../src/phrase/search-phrase.ts";
import { lockLine, lockMoment } from "../../src/phrase/lock-line.ts";
import {
  levelCurves,
  melodyOf,
  phraseOf,
  playersOf,
  questionOf,
  solved,
} from "./support/phrases.ts";

const shout = melodyOf(
  "C5:1/2@F6 D5:1/2 E5:1/2 F5:5/2 | A5:1/2@Bb7 F#5:1/2 G5:1 r:1 F5:1~ | F5:2@Gm7 E5:2@C7",
  { key: "F", tempo: 160 },
);

/** Everything an answer must hold whatever was asked. */
function check(phrase: Phrase, answer: PhraseAnswer): void {
  expect(answer.moments).toHaveLength(phrase.moments.length);
  answer.moments.forEach(({ pitches, moment }, index) => {
    const { question, held } = phrase.moments[index]!;
    pitches.forEach((pitch, p) => {
      if (pitch > 0) expect(canSound(phrase.players[p]!, quantity<SoundingMidi>(pitch))).toBe(true);
    });
    for (const lock of question.locks) {
      const p = phrase.players.findIndex(({ id }) => id === lock.playerId);
      expect(pitches[p]).toBe(lock.sounding === "rest" ? 0 : lock.sounding);
    }
    if (held) return;
    expect(pitches).toContain(moment.lead);
    const cell = {
      key: { span: 0, notes: 0, players: 0 },
      cost: 0,
      chairCost: 0,
      pitches,
      family: "harmony",
    } as const;
    expect(brokenRules(voicingOf(question, cell), question)).toEqual([]);
  });
}

/** The sum of what the moments say they cost. */
const total = ({ moments }: PhraseAnswer): number =>
  moments.reduce(
    (sum, { cost }) => sum + cost.voicing + cost.texture + cost.chairs + cost.lines,
    0,
  );

describe("a voiced phrase", () => {
  const phrase = phraseOf(
    questionOf(shout, { players: playersOf("six-horn"), curves: levelCurves(18, 3, 6) }),
  );
  const { answer, answers } = solved(phrase);

  it("keeps players in range and breaks no rule that is on", () => check(phrase, answer));

  it("costs the sum of its parts", () => expect(total(answer)).toBe(answer.cost));

  it("comes early once and gets no dearer", () => {
    expect(answers).toHaveLength(2);
    check(phrase, answers[0]!);
    expect(answers[1]!.cost).toBeLessThanOrEqual(answers[0]!.cost);
    expect(answers[1]).toBe(answer);
  });

  it("is the same every time, however it is stepped through", () => {
    expect(solved(phrase).answer).toEqual(answer);
    expect(
      solved(
        phraseOf(
          questionOf(shout, { players: playersOf("six-horn"), curves: levelCurves(18, 3, 6) }),
        ),
      ).answer,
    ).toEqual(answer);
  });

  it("tells what was asked and what it got", () => {
    for (const { asked, span, density, players, pitches } of answer.moments) {
      const sounding = pitches.filter((pitch) => pitch > 0);
      expect(asked.span).toBe(18);
      expect(span).toBe(Math.max(...sounding) - Math.min(...sounding));
      expect(density).toBeCloseTo((12 * (new Set(sounding).size - 1)) / span, 9);
      expect(players).toBe(sounding.length);
    }
  });

  it("moves every voice of a chromatic approach by the same semitone", () => {
    const at = phrase.moments.findIndex(({ moment }) => moment.movesAsBlock);
    expect(phrase.moments[at]?.moment.technique).toBe("chromatic");
    const [before, after] = [answer.moments[at]!, answer.moments[at + 1]!];
    const moves = before.pitches.map((pitch, p) => (pitch === 0 ? 0 : after.pitches[p]! - pitch));
    expect(new Set(moves.filter((_, p) => before.pitches[p]! > 0)).size).toBe(1);
    expect(before.pitches.map((pitch) => pitch > 0)).toEqual(
      after.pitches.map((pitch) => pitch > 0),
    );
  });

  it("holds on where only the chord changes under a held note", () => {
    const held = phrase.moments.filter(({ moment }) => moment.isHeld);
    for (const { moment } of held)
      expect(answer.moments[moment.index]?.pitches).toContain(moment.lead);
  });
});

describe("a big band's moment", () => {
  it("is chosen from at least 600 voicings", () => {
    const phrase = phraseOf(
      questionOf(melodyOf("D5:2@F6 C5:2"), {
        players: playersOf("big-band"),
        curves: levelCurves(28, 2.5, 13),
      }),
    );
    for (const { candidates } of solved(phrase).answer.moments)
      expect(candidates).toBeGreaterThanOrEqual(600);
  });
});

describe("locks", () => {
  const changed: Partial<PhraseQuestion> = {
    players: playersOf("six-horn"),
    curves: levelCurves(18, 3, 6),
  };
  const phrase = phraseOf(questionOf(shout, changed));
  const { answer } = solved(phrase);

  function again(locks: PhraseQuestion["locks"], more: Partial<PhraseQuestion> = {}): PhraseAnswer {
    const locked = phraseOf(questionOf(shout, { ...changed, ...more, locks }));
    const found = solved(locked).answer;
    check(locked, found);
    return found;
  }

  it("hold a player's line while everything else is solved again", () => {
    const notes = lockLine(phrase, answer, "tbn1");
    const found = again({ notes, moments: [] }, { curves: levelCurves(26, 2, 5) });
    const line = (one: PhraseAnswer) => one.moments.map(({ pitches }) => pitches[2]);
    expect(line(found)).toEqual(line(answer));
  });

  it("hold a moment's voicing", () => {
    const lock = lockMoment(phrase, answer, "n4");
    if (!lock) throw new Error("must be there");
    const found = again({ notes: [], moments: [lock] }, { curves: levelCurves(26, 2, 5) });
    const at = answer.moments.findIndex(({ moment }) => moment.id === "n4");
    expect(found.moments[at]?.pitches).toEqual(answer.moments[at]?.pitches);
  });

  it("cost nothing when they hold what was found anyway", () => {
    const moments = answer.moments.map(({ moment }) => lockMoment(phrase, answer, moment.id)!);
    expect(again({ notes: [], moments }).moments.map(({ pitches }) => pitches)).toEqual(
      answer.moments.map(({ pitches }) => pitches),
    );
  });
});

describe("random melodies", () => {
  const chord = fc.constantFrom(
    "C6",
    "Dm7",
    "G7",
    "Fmaj7",
    "Bdim7",
    "Ebmaj7",
    "A7(b9)",
    "F#m7(b5)",
    "Gsus4",
    "Bb13",
  );
  const length = fc.constantFrom("1/2", "1", "3/2", "2");
  const letter = fc.constantFrom("C", "C#", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B");
  const note = fc.record({
    letter,
    octave: fc.constantFrom(4, 4, 5),
    length,
    rests: fc.boolean(),
    chord: fc.option(chord),
  });

  it("keep every player in range and break no rule that is on, ever", () =>
    fc.assert(
      fc.property(
        fc.array(note, { minLength: 2, maxLength: 6 }),
        chord,
        fc.constantFrom("three-horn", "four-horn", "six-horn", "school-band"),
        fc.integer({ min: 5, max: 30 }),
        fc.integer({ min: 1, max: 6 }),
        fc.constantFrom("swing", "straight", "ballad", "latin"),
        fc.boolean(),
        (drawn, first, lineUp, span, weight, style, breaths) => {
          const items = drawn.map(
            ({ letter: name, octave, length: long, rests, chord: own }, n) => {
              const symbol = n === 0 ? first : own;
              return `${name}${octave}:${long}${symbol === null ? "" : `@${symbol}`}${rests ? " r:1/2" : ""}`;
            },
          );
          // One long bar of 32 quarters: where the bar lines fall does not matter here.
          const melody = melodyOf(items.join(" "), { style, metre: { beats: 32, beatType: 4 } });
          const players = playersOf(lineUp);
          const found = phraseOfOrNothing(
            questionOf(melody, { players, curves: levelCurves(span, 3, weight), breaths }),
          );
          if (!found) return;
          check(found, solved(found).answer);
        },
      ),
      { seed: 7, numRuns: 30 },
    ));
});

/** A phrase, or nothing where the drawn melody is out of everyone's reach. */
function phraseOfOrNothing(question: PhraseQuestion): Phrase | undefined {
  try {
    return phraseOf(question);
  } catch (error) {
    if (error instanceof Error && error.message.includes("can play the melody note"))
      return undefined;
    throw error;
  }
}

it("reports progress on the way and can be left at any time", () => {
  const phrase = phraseOf(questionOf(shout));
  const steps = [...searchPhrase(phrase)];
  expect(steps.filter(({ answer }) => answer).map(({ stage }) => stage)).toEqual(["first", "full"]);
  expect(steps.every(({ momentsDone, moments }) => momentsDone <= moments)).toBe(true);
  const search = searchPhrase(phrase);
  search.next();
  expect(search.return(undefined as never).done).toBe(true);
});

it("knows what lies between two moments", () => {
  const { moments, melody } = phraseOf(questionOf(shout));
  const step = stepBetween(moments[0]!, moments[1]!, melody);
  expect(step.situation).toEqual({ speed: "fast", isMelodyMoving: true, isAfterRest: false });
  const afterRest = moments.findIndex(({ moment }) => moment.restBefore > 0);
  expect(
    stepBetween(moments[afterRest - 1]!, moments[afterRest]!, melody).situation.isAfterRest,
  ).toBe(true);
  expect(linesCost({ players: playersOf("four-horn") }, [0, 0, 0, 0], [0, 0, 0, 0], step)).toBe(0);
});
