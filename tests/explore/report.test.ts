import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import {
  cellOf,
  firstInquiry,
  readInquiry,
  referencePoints,
  reportOn,
  ruleTexts,
  textOf,
} from "../../src/explore/index.ts";
import { stackOf, type Question, type Voicing } from "../../src/voicing/index.ts";

const question = ((): Question => {
  const reading = readInquiry(firstInquiry());
  if (!reading.ok) throw new Error("the first question can be read");
  return reading.question;
})();

/** The players named on the notes given. */
function voicingFrom(notes: Readonly<Record<string, number>>): Voicing {
  return {
    placements: question.players
      .filter(({ id }) => id in notes)
      .map((player) => ({ player, sounding: soundingMidi(notes[player.id] ?? 0) })),
  };
}

const handMade = voicingFrom({ tpt1: 74, tpt2: 74, alto1: 69, tenor1: 63, bari: 41 });

describe("a report", () => {
  const report = reportOn(handMade, question);

  it("places the voicing in its cell", () => {
    expect(report.cell).toEqual({ span: 33, notes: 4, players: 5 });
    expect(report.stack).toEqual([41, 63, 69, 74]);
    expect(cellOf({ placements: [] })).toEqual({ span: 0, notes: 0, players: 0 });
  });

  it("has a cost that is the sum of its terms, each in words", () => {
    const sum = report.cost.terms.reduce((total, { value }) => total + value, 0);
    expect(report.cost.total).toBe(sum);
    for (const { text } of report.cost.terms) expect(text.length).toBeGreaterThan(5);
  });

  it("names the rules a voicing breaks instead of refusing it", () => {
    // F2 and E♭4 lie 22 semitones apart; C♯5 is foreign and a semitone under the melody.
    expect(report.broken.map(({ rule }) => rule)).toContain("H8");
    const clash = reportOn(voicingFrom({ tpt1: 74, alto1: 73, tenor1: 60, bari: 41 }), question);
    expect(clash.broken.map(({ rule }) => rule)).toEqual(expect.arrayContaining(["H2", "H7"]));
  });

  it("measures what can be counted by hand", () => {
    const values = Object.fromEntries(
      report.measures.map(({ metric, measured }) => [metric.id, measured.value]),
    );
    expect(values).toMatchObject({ span: 33, notes: 4, players: 5 });
    // Distinct notes per octave: 12 · 3 / 33.
    expect(values["density"]).toBeCloseTo(12 / 11, 6);
  });

  it("can be pasted as text, from the top note down", () => {
    const lines = textOf(report, question).split("\n");
    expect(lines[0]).toBe("F13 under D5, f");
    const notes = lines.slice(1, 5).map((line) => line.trim().split(/\s+/).slice(0, 2).join(" "));
    expect(notes).toEqual(["13 D5", "3 A4", "♭7 E♭4", "1 F2"]);
    expect(lines.at(-1)).toMatch(/^Breaks a rule: .*\.$/);
  });
});

describe("the reference points", () => {
  const points = referencePoints(question);

  it("are what each section would play by the book, under the same melody", () => {
    expect(points.length).toBeGreaterThan(3);
    for (const { report, label } of points) {
      expect(label).not.toBe("");
      expect(stackOf(report.voicing).at(-1)).toBe(74);
    }
  });

  it("carry letters in order and are never left out for a broken rule", () => {
    expect(points.map(({ letter }) => letter).join("")).toBe(
      "ABCDEFGHIJKLMNOPQRSTUVWXYZ".slice(0, points.length),
    );
    expect(points.some(({ report }) => report.broken.length > 0)).toBe(true);
  });
});

describe("the rules in words", () => {
  it("name each rule once, with its source", () => {
    const ids = ruleTexts.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toEqual(["H1", "H2", "H3", "H4", "H5", "H5b", "H6", "H7", "H8", "H9"]);
    for (const { source, meaning } of ruleTexts) expect([source, meaning]).not.toContain("");
  });
});
