import { describe, expect, it } from "vitest";
import { melodyOfScore } from "../../../src/files/score/melody-of-score.ts";
import { playedScore } from "../../../src/files/score/played-score.ts";
import { scoreOfMelody } from "../../../src/files/score/score-of-melody.ts";
import type { ScoreBar, ScoreModel } from "../../../src/files/score/score-model.ts";
import { quantity } from "../../../src/base/index.ts";
import { melodyFromBars, type Divisions } from "../../../src/theory/index.ts";
import { pitchOf, shortPhrase } from "../support/scores.ts";

const at = (value: number): Divisions => quantity<Divisions>(value);
const metre = { beats: 4, beatType: 4 } as const;
const bar = (length: number, more: Partial<ScoreBar> = {}): ScoreBar => ({
  length: at(length),
  metre,
  key: null,
  ...more,
});

/** A score of one line, a note for every bar. */
function lineOver(bars: readonly ScoreBar[], repeats: ScoreModel["repeats"] = []): ScoreModel {
  let now = 0;
  const names = ["C5", "D5", "E5", "F5", "G5", "A5"];
  const notes = bars.map(({ length }, index) => {
    const onset = at(now);
    now += length;
    return { onset, duration: length, pitch: pitchOf(names[index]!) };
  });
  const { parts, ...rest } = shortPhrase;
  const part = { ...parts[0]!, notes, directions: [] };
  return {
    ...rest,
    division: 1,
    bars,
    harmonies: [{ onset: at(0), symbol: "C" }],
    repeats,
    parts: [part],
  };
}

const letters = (score: ScoreModel): string =>
  score.parts[0]!.notes.map(({ pitch }) => pitch.letter).join("");

describe("a score as it is played", () => {
  it("goes through its repeats and endings", () => {
    const repeats = [
      {
        fromBar: 2,
        toBar: 4,
        times: 2,
        endings: [
          { fromBar: 3, toBar: 3, passes: [1] },
          { fromBar: 4, toBar: 4, passes: [2] },
        ],
      },
    ];
    const played = playedScore(lineOver([bar(4), bar(4), bar(4), bar(4), bar(4)], repeats));
    expect(letters(played)).toBe("CDEDFG");
    expect(played.parts[0]!.notes.map(({ onset }) => onset)).toEqual([0, 4, 8, 12, 16, 20]);
    expect(played.repeats).toEqual([]);
  });

  it("counts a pickup as bar 0", () => {
    const repeats = [{ fromBar: 1, toBar: 1, times: 3 }];
    const bars = [bar(1, { isPickup: true }), bar(4), bar(4)];
    expect(letters(playedScore(lineOver(bars, repeats)))).toBe("CDDDE");
  });

  it("is the score itself without repeats", () => {
    const score = lineOver([bar(4)]);
    expect(playedScore(score)).toBe(score);
  });
});

describe("the melody of a score", () => {
  it("has its notes tied over bar lines, its chords, pickup, style and repeats", () => {
    const found = melodyOfScore(shortPhrase);
    if (!found.ok) throw new Error(found.problems[0]!.message);
    const { melody, remarks } = found.value;
    expect(remarks).toEqual(["Of 3 lines the first is taken."]);
    expect(melody).toMatchObject({ pickup: 12, length: 108, style: "swing", tempo: 168 });
    expect(melody.changes.map(({ text }) => text)).toEqual(["Ebmaj7", "C7(b9)", "Fm9/Bb"]);
    expect(melody.repeats).toEqual(shortPhrase.repeats);
    const tied = melody.notes.filter(({ isTied }) => isTied);
    expect(tied.map(({ onset, duration }) => [onset, duration])).toEqual([[56, 4]]);
  });

  const split = [bar(1, { isPickup: true }), bar(4), bar(3), bar(1), bar(4), bar(3)];

  it("joins bars that are split at a repeat, the repeat written out", () => {
    const repeats = [{ fromBar: 0, toBar: 2, times: 2 }];
    expect(melodyOfScore(lineOver(split.slice(0, 5), repeats))).toMatchObject({
      ok: true,
      value: { remarks: ["The repeats are written out."], melody: { repeats: [], length: 21 } },
    });
  });

  it("is refused when a repeat leaves a bar that cannot be filled", () => {
    const repeats = [{ fromBar: 3, toBar: 4, times: 2 }];
    expect(melodyOfScore(lineOver(split, repeats))).toMatchObject({
      ok: false,
      problems: [
        { code: "bar-short", bar: 2 },
        { code: "bar-short", bar: 3 },
      ],
    });
  });

  it("tells which notes stand in a triplet", () => {
    const found = melodyOfScore({ ...shortPhrase, parts: [shortPhrase.parts[1]!] });
    const tuplets = found.ok ? found.value.melody.notes.map(({ tuplet }) => tuplet?.notes) : [];
    expect(tuplets).toEqual([undefined, undefined, undefined, 3, 3, 3, undefined]);
  });

  it("is refused for every bar that is out of order at once", () => {
    expect(melodyOfScore(lineOver([bar(4), bar(3), bar(5), bar(4)]))).toMatchObject({
      problems: [
        { code: "bar-short", bar: 2 },
        { code: "bar-long", bar: 3 },
      ],
    });
  });

  it.each([
    [
      "a bar too short",
      [bar(4), bar(3), bar(4)],
      "Bar 2 holds only 3 beats, but 4/4 has room for 4.",
    ],
    ["a bar too long", [bar(4), bar(5)], "Bar 2 holds 5 beats, but 4/4 has room for 4."],
    [
      "another metre",
      [bar(4), bar(3, { metre: { beats: 3, beatType: 4 } })],
      "Bar 2: the metre changes to 3/4; a melody keeps one metre.",
    ],
  ])("is refused for %s, in a sentence that names the bar", (_, bars, message) => {
    expect(melodyOfScore(lineOver(bars))).toMatchObject({ ok: false, problems: [{ message }] });
  });

  it("is refused when nobody plays", () => {
    const silent = { ...shortPhrase, parts: [{ ...shortPhrase.parts[0]!, notes: [] }] };
    expect(melodyOfScore(silent)).toMatchObject({ ok: false, problems: [{ code: "melody-none" }] });
  });

  it("is the melody again that made a lead sheet", () => {
    const made = melodyFromBars(
      {
        title: "Lamp Oil",
        metre,
        key: { tonic: { letter: "F", alteration: 0 }, mode: "minor" },
        tempo: quantity(92),
        style: "latin",
      },
      [
        [{ length: [1, 1], pitch: pitchOf("C5") }],
        [
          { length: [3, 2], pitch: pitchOf("F5"), chord: "Fm6" },
          { length: [5, 2], pitch: pitchOf("Ab5"), isTied: true },
        ],
        [{ length: [4, 1], pitch: pitchOf("Ab5"), chord: "C7(b9)" }],
      ],
    );
    if (!made.ok) throw new Error(made.problems[0]!.message);
    expect(melodyOfScore(scoreOfMelody(made.value))).toEqual({
      ok: true,
      value: { melody: made.value, remarks: [] },
    });
  });
});
