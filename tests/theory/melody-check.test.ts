import { describe, expect, it } from "vitest";
import type { Divisions, Melody, MelodyNote, QuartersPerMinute } from "../../src/theory/index.ts";
import { readMelody } from "../../src/theory/melody-check.ts";
import { melodyOf } from "../phrase/support/phrases.ts";

const fine = melodyOf("C5:1@C6 D5:1 E5:2 | F5:1@F6 r:1 G5:2 | A5:4@Am7");
const divisions = (quarters: number) => (quarters * fine.division) as Divisions;

function codes(changed: Partial<Melody>): readonly string[] {
  const found = readMelody({ ...fine, ...changed });
  return found.ok ? [] : found.problems.map(({ code }) => code);
}

function messages(changed: Partial<Melody>): readonly string[] {
  const found = readMelody({ ...fine, ...changed });
  return found.ok ? [] : found.problems.map(({ message }) => message);
}

const withNote = (index: number, change: Partial<MelodyNote>): Partial<Melody> => ({
  notes: fine.notes.map((note, n) => (n === index ? { ...note, ...change } : note)),
});

describe("a melody in order", () => {
  it("is read into heard notes and chords that hold until the next", () => {
    const found = readMelody(fine);
    if (!found.ok) throw new Error("must be fine");
    expect(found.value.notes).toHaveLength(6);
    expect(found.value.changes.map(({ end }) => end)).toEqual([
      divisions(4),
      divisions(8),
      divisions(12),
    ]);
  });
});

describe("what is wrong with a melody", () => {
  it("names the bar and beat of a note that overlaps the next", () => {
    expect(messages(withNote(1, { duration: divisions(2) }))).toEqual([
      "Bar 1, beat 2: D5 still sounds when E5 begins; a melody has one note at a time.",
    ]);
  });

  it("names the bar of a chord that cannot be read, and why", () => {
    const found = readMelody({ ...fine, changes: [{ onset: divisions(4), text: "Hm7" }] });
    expect(found).toMatchObject({ ok: false, problems: [{ code: "chord-root", bar: 2 }] });
    expect(messages({ changes: [{ onset: divisions(4), text: "Hm7" }] })[0]).toMatch(
      /^Bar 2, beat 1, chord “Hm7”: A chord starts with its root/,
    );
  });

  it("refuses ties to another pitch, and ties into nothing", () => {
    expect(codes(withNote(0, { isTied: true }))).toEqual(["tie-pitch"]);
    expect(codes(withNote(3, { isTied: true }))).toEqual(["tie-gap"]);
    expect(codes(withNote(5, { isTied: true }))).toEqual(["tie-gap"]);
  });

  it("refuses notes without length, outside the melody, outside the keyboard, named twice", () => {
    expect(codes(withNote(0, { duration: divisions(0) }))).toEqual(["note-length"]);
    expect(codes(withNote(5, { duration: divisions(9) }))).toEqual(["note-outside"]);
    expect(codes(withNote(0, { pitch: { letter: "A", alteration: 0, octave: 9 } }))).toEqual([
      "note-pitch",
    ]);
    expect(codes(withNote(1, { id: "n1" }))).toEqual(["note-twice"]);
  });

  it("refuses chords out of order or past the end", () => {
    const [first] = fine.changes;
    if (!first) throw new Error("must have a chord");
    expect(codes({ changes: [first, first] })).toEqual(["change-twice"]);
    expect(codes({ changes: [{ onset: divisions(12), text: "C" }] })).toEqual(["change-outside"]);
  });

  it("refuses a frame that makes no sense, one problem at a time", () => {
    expect(codes({ metre: { beats: 4, beatType: 3 } })).toEqual(["melody-metre"]);
    expect(codes({ division: 1, metre: { beats: 5, beatType: 8 } })).toEqual(["melody-division"]);
    expect(codes({ tempo: 0 as QuartersPerMinute })).toEqual(["melody-tempo"]);
    expect(codes({ tempo: Number.NaN as QuartersPerMinute })).toEqual(["melody-tempo"]);
    expect(codes({ pickup: divisions(4) })).toEqual(["melody-pickup"]);
    expect(codes({ notes: [] })).toEqual(["melody-empty"]);
    expect(codes({ repeats: [{ fromBar: 2, toBar: 9, times: 2 }] })).toEqual(["melody-repeat"]);
  });

  it("tells everything at once, in order of bars", () => {
    const broken = {
      ...withNote(3, { isTied: true }),
      changes: [{ onset: divisions(0), text: "?" }],
    };
    const found = readMelody({ ...fine, ...broken });
    if (found.ok) throw new Error("must be refused");
    expect(found.problems.map(({ bar }) => bar)).toEqual([1, 2]);
  });
});
