import { describe, expect, it } from "vitest";
import type { SoundingMidi } from "../../src/base/index.ts";
import { stageOf, type Stage, type StageSize } from "../../src/phrase/stages.ts";
import type { AskedMoment, PhraseQuestion } from "../../src/phrase/phrase-types.ts";
import { levelCurves, melodyOf, phraseOf, playersOf, questionOf } from "./support/phrases.ts";

const size: StageSize = { rows: 60, cells: 4, stacksInCell: 3, assignmentsOfStack: 4 };
const band = playersOf("big-band");

function asked(text: string, changed: Partial<PhraseQuestion> = {}): readonly AskedMoment[] {
  return phraseOf(
    questionOf(melodyOf(text), { players: band, curves: levelCurves(24, 2.8, 10), ...changed }),
  ).moments;
}

function only(text: string, changed: Partial<PhraseQuestion> = {}): Stage {
  const [moment] = asked(text, changed);
  if (!moment) throw new Error("must be there");
  return stageOf(moment, size, undefined, undefined);
}

const rowsOf = (stage: Stage) =>
  Array.from({ length: stage.count }, (_, n) => [...stage.pitches.subarray(n * 13, (n + 1) * 13)]);

describe("the voicings of a moment", () => {
  it("all have the melody on top", () => {
    for (const row of rowsOf(only("D5:4@F6"))) expect(Math.max(...row)).toBe(74);
  });

  it("hold several assignments of one stack, so that a line can stay in one player's hands", () => {
    const stacks = rowsOf(only("D5:4@F6")).map((row) => [...new Set(row)].sort().join());
    expect(new Set(stacks).size).toBeLessThan(stacks.length / 2);
    expect(new Set(rowsOf(only("D5:4@F6")).map((row) => row.join())).size).toBe(stacks.length);
  });

  it("are lines where lines are asked", () => {
    for (const row of rowsOf(only("D5:4@F6", { choices: { n1: { texture: "unison" } } })))
      expect(row.filter((pitch) => pitch > 0).every((pitch) => pitch === 74)).toBe(true);
    for (const row of rowsOf(only("D5:4@F6", { choices: { n1: { texture: "octaves" } } })))
      expect(row.filter((pitch) => pitch > 0).every((pitch) => (74 - pitch) % 12 === 0)).toBe(true);
  });

  it("are one where the voicing is held, whatever it is", () => {
    const pitches = { tpt1: 74, tbn1: 57 } as Readonly<Record<string, number>> as Readonly<
      Record<string, SoundingMidi>
    >;
    const stage = only("D5:4@F6", { locks: { notes: [], moments: [{ momentId: "n1", pitches }] } });
    expect(rowsOf(stage)).toEqual([[74, 0, 0, 0, 57, 0, 0, 0, 0, 0, 0, 0, 0]]);
  });

  it("charge whoever overtakes the section's first chair", () => {
    const stage = only("D5:4@F6");
    rowsOf(stage).forEach((row, n) => {
      const sections = [row.slice(0, 4), row.slice(4, 8), row.slice(8)];
      const over = sections.reduce(
        (sum, [first = 0, ...others]) =>
          sum + (first === 0 ? 0 : others.filter((pitch) => pitch > first).length),
        0,
      );
      expect(stage.chairs[n]).toBe(4 * over);
    });
  });

  it("are a line with a remark where no harmony fits", () => {
    const stage = only("C3:4@Cmaj7", {
      players: band.filter(({ section }) => section === "trombones"),
    });
    expect(stage.count).toBeGreaterThan(0);
    expect(stage.remark).toMatch(/^No harmony fits/);
  });
});

describe("a moment that moves as a block", () => {
  const [before, after] = asked("G#4:1/2@Am7 A4:7/2", {
    choices: { n1: { technique: "chromatic" } },
  });
  if (!before || !after) throw new Error("must be there");
  const next = stageOf(after, size, undefined, undefined);
  const stage = stageOf(before, size, next, after);

  it("has the next one's voicings, every voice a semitone lower", () => {
    const targets = rowsOf(next);
    rowsOf(stage).forEach((row, n) => {
      const target = targets[stage.into?.[n] ?? -1] ?? [];
      expect(row).toEqual(target.map((pitch) => (pitch === 0 ? 0 : pitch - 1)));
    });
    expect(stage.count).toBeGreaterThan(0);
  });

  it("is voiced freely with a remark where nobody can move so", () => {
    const pitches = Object.fromEntries([
      ["tpt1", 69],
      ["tbn1", 40],
    ]) as Readonly<Record<string, SoundingMidi>>;
    const locks = { notes: [], moments: [{ momentId: "n2", pitches }] };
    const [first, held] = asked("G#4:1/2@Am7 A4:7/2", {
      choices: { n1: { technique: "chromatic" } },
      locks,
    });
    if (!first || !held) throw new Error("must be there");
    const free = stageOf(first, size, stageOf(held, size, undefined, undefined), held);
    expect(free.into).toBeUndefined();
    expect(free.remark).toMatch(/^Not everyone can move/);
  });
});

describe("locks that leave no room", () => {
  it("leave the melody and what is fixed, with a remark", () => {
    const clash = [
      { momentId: "n1", playerId: "tbn1", sounding: 50 as SoundingMidi },
      { momentId: "n1", playerId: "tbn2", sounding: 51 as SoundingMidi },
    ];
    const stage = only("C5:4@Ebmaj7", {
      locks: { notes: clash, moments: [] },
      colour: "tensions",
    });
    expect(stage.remark).toMatch(/^What is fixed here/);
    expect(rowsOf(stage)).toEqual([[72, 0, 0, 0, 50, 51, 0, 0, 0, 0, 0, 0, 0]]);
  });

  it("turn a line into harmony where a player is fixed beside the melody", () => {
    const notes = [{ momentId: "n1", playerId: "tbn1", sounding: 57 as SoundingMidi }];
    const stage = only("D5:4@F6", {
      locks: { notes, moments: [] },
      choices: { n1: { texture: "unison" } },
    });
    expect(stage.remark).toMatch(/so the note is harmonised/);
    for (const row of rowsOf(stage)) expect(row[4]).toBe(57);
  });
});
