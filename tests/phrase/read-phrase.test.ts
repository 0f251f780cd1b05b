import { describe, expect, it } from "vitest";
import { quantity, type SoundingMidi } from "../../src/base/index.ts";
import { dynamicAt, readPhrase } from "../../src/phrase/read-phrase.ts";
import type { PhraseQuestion } from "../../src/phrase/phrase-types.ts";
import { at, levelCurves, melodyOf, phraseOf, playersOf, questionOf } from "./support/phrases.ts";

const melody = melodyOf("C5:1@C6 D5:1/2 E5:1/2 G5:2 | A5:4@F6");
const midi = (value: number) => value as SoundingMidi;

function problems(changed: Partial<PhraseQuestion>, of = melody) {
  const found = readPhrase(questionOf(of, changed));
  return found.ok ? [] : found.problems;
}

describe("a phrase worked out", () => {
  it("asks one voicing question a moment, resting players held to silence", () => {
    const phrase = phraseOf(
      questionOf(melody, { turns: [{ who: "trombones", from: at(0), to: at(1), plays: false }] }),
    );
    expect(phrase.moments[0]?.question.locks).toEqual([{ playerId: "tbn1", sounding: "rest" }]);
    expect(phrase.moments[1]?.question.locks).toEqual([]);
    expect(phrase.moments[0]?.asked.weight).toBe(3);
  });

  it("ticks plain tones under borrowed approach chords and the colour asked for elsewhere", () => {
    const phrase = phraseOf(questionOf(melody, { choices: { n2: { technique: "dominant" } } }));
    expect(phrase.moments[1]?.question.ticked).toEqual([0, 4, 7, 10]);
    expect(phrase.moments[0]?.question.ticked).toContain(2);
  });

  it("calls short what is no longer than a quarter (seconds under the lead: G. Lindsay)", () => {
    const phrase = phraseOf(questionOf(melody));
    expect(phrase.moments.map(({ question }) => question.shortNote)).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
  });

  it("holds the lead player to the melody wherever the player reaches it", () => {
    const low = melodyOf("C5:2@C6 E5:2");
    const phrase = phraseOf(questionOf(low, { leadPlayer: "tenor1" }));
    expect(phrase.moments[0]?.question.leadPlayer).toBe("tenor1");
    const high = phraseOf(questionOf(melodyOf("G5:4@C6"), { leadPlayer: "tenor1" }));
    expect(high.moments[0]?.question.leadPlayer).toBeUndefined();
  });

  it("says where players had to be called in", () => {
    const onlyTenor = ["trumpets", "trombones", "alto1"].map((who) => ({
      who,
      from: at(0),
      to: melody.length,
      plays: false,
    }));
    const phrase = phraseOf(questionOf(melody, { turns: onlyTenor }));
    expect(phrase.remarks.map(({ momentId }) => momentId)).toContain("n5");
  });

  it("writes repeats out", () => {
    const repeated = melodyOf("C5:4@C6 | D5:4", { repeats: [{ fromBar: 1, toBar: 2, times: 2 }] });
    expect(phraseOf(questionOf(repeated)).moments).toHaveLength(4);
  });
});

describe("what is wrong with a phrase", () => {
  it("names the bar of a melody note that nobody reaches", () => {
    const [problem] = problems({}, melodyOf("C5:4@C6 | C7:4@F6"));
    expect(problem?.code).toBe("melody-out-of-reach");
    expect(problem?.message).toMatch(/^Bar 2, beat 1: Nobody in this line-up can play/);
    expect(problem?.bar).toBe(2);
  });

  it("names the bar of a lock outside a player's range or the chord", () => {
    const lock = (playerId: string, sounding: number) => ({
      locks: { notes: [{ momentId: "n5", playerId, sounding: midi(sounding) }], moments: [] },
    });
    expect(problems(lock("tbn1", 90)).map(({ code, bar }) => [code, bar])).toEqual([
      ["lock-out-of-range", 2],
    ]);
    expect(problems(lock("tbn1", 61)).map(({ code }) => code)).toEqual(["lock-not-in-chord"]);
    expect(problems(lock("tuba9", 60)).map(({ code }) => code)).toEqual(["lock-unknown-player"]);
  });

  it("tells locks of notes that are gone", () => {
    const locks = {
      notes: [{ momentId: "n99", playerId: "tpt1", sounding: midi(72) }],
      moments: [],
    };
    expect(problems({ locks }).map(({ code }) => code)).toEqual(["lock-unknown-moment"]);
  });

  it("checks held voicings for range", () => {
    const moments = [{ momentId: "n1", pitches: { tbn1: midi(90) } }];
    expect(problems({ locks: { notes: [], moments } }).map(({ code }) => code)).toEqual([
      "lock-out-of-range",
    ]);
  });

  it("needs players and a melody", () => {
    expect(problems({ players: [] }).map(({ code }) => code)).toEqual(["line-up-empty"]);
    expect(problems({ melody: { ...melody, notes: [] } }).map(({ code }) => code)).toEqual([
      "melody-empty",
    ]);
  });

  it("passes on what is wrong with choices", () =>
    expect(problems({ choices: { n5: { role: "approach" } } }).map(({ code }) => code)).toEqual([
      "approach-last",
    ]));
});

it("knows the dynamic at every time, mf before the first mark", () => {
  const marks = [
    { at: at(4), dynamic: "p" },
    { at: at(8), dynamic: "ff" },
  ] as const;
  expect([0, 4, 7, 8, 99].map((time) => dynamicAt(marks, at(time)))).toEqual([
    "mf",
    "p",
    "p",
    "ff",
    "ff",
  ]);
});

it("asks a big band with the weight its players allow", () => {
  const phrase = phraseOf(
    questionOf(melody, { players: playersOf("big-band"), curves: levelCurves(20, 3, 99) }),
  );
  expect(phrase.moments[0]?.asked.weight).toBe(13);
});

it("remarks where harmony and unison change within a few notes (C. Israels, lesson 15)", () => {
  const line = melodyOf("C5:1/2@C6 E5:1/2 G5:1/2 E5:1/2 C5:2");
  const phrase = phraseOf(questionOf(line, { choices: { n2: { texture: "unison" } } }));
  expect(phrase.remarks.map(({ momentId }) => momentId)).toEqual(["n2"]);
  const long = {
    n1: { texture: "unison" },
    n2: { texture: "unison" },
    n3: { texture: "unison" },
  } as const;
  expect(phraseOf(questionOf(line, { choices: long })).remarks).toEqual([]);
});

it("lets nobody breathe where the melody would be left alone", () => {
  const low = melodyOf(Array.from({ length: 10 }, () => "C6:1@C6 A5:1 G5:1 E5:1").join(" | "), {
    tempo: 50,
  });
  const phrase = phraseOf(questionOf(low, { breaths: true, leadPlayer: "tbn1" }));
  for (const { question } of phrase.moments)
    expect(question.players.length).toBeGreaterThan(question.locks.length);
});

it("says with the bar when whoever reaches the melody is fixed on something else", () => {
  const melody = melodyOf("C5:4@F6 | F5:4@F6");
  const players = playersOf("four-horn").filter(({ id }) => id === "tpt1" || id === "tbn1");
  const lock = { momentId: "n2", playerId: "tpt1", sounding: quantity<SoundingMidi>(69) };
  const read = readPhrase(questionOf(melody, { players, locks: { notes: [lock], moments: [] } }));
  expect(read).toMatchObject({
    ok: false,
    problems: [{ code: "melody-out-of-reach", bar: 2, noteId: "n2" }],
  });
});
