import { describe, expect, it } from "vitest";
import { firstInquiry, readInquiry } from "../../src/explore/index.ts";
import { readChord } from "../../src/theory/index.ts";
import { motionPlan, stepText } from "../../src/ui/next-chord/motion-plan.ts";
import { chordSuggestions, melodySuggestions } from "../../src/ui/next-chord/suggestions.ts";
import { voicingOf } from "../../src/ui/state/view-of.ts";

const reading = readInquiry(firstInquiry());
if (!reading.ok) throw new Error("the first question cannot be read");
const { question } = reading;

function suggested(chordText: string, isAfter: boolean): readonly string[] {
  const chord = readChord(chordText);
  if (!chord.ok) throw new Error(chord.problem.message);
  return chordSuggestions(chord.value, isAfter).map(({ text }) => text);
}

describe("neighbouring chords", () => {
  // Fifths and semitones from the root: common practice, no single source.
  it.each([
    ["F13", true, ["Bbmaj9", "Bbm9", "Bb13", "Emaj9", "Gm9"]],
    ["F#7", true, ["Bmaj9", "Bm9", "B13", "Fmaj9", "G#m9"]],
    ["Db7", true, ["Gbmaj9", "Gbm9", "Gb13", "Cmaj9", "Ebm9"]],
    ["Bbmaj7", false, ["F13", "Fm9", "F7(b9,b13)", "B13", "Adim7"]],
  ] as const)("of %s (after: %s) are spelled by their interval", (chord, isAfter, texts) => {
    expect(suggested(chord, isAfter)).toEqual(texts);
  });

  it("can all be read, whatever the root", () => {
    for (const root of ["C", "C#", "Db", "D#", "Eb", "E", "F#", "Gb", "G#", "Ab", "A#", "Bb", "B"])
      for (const isAfter of [true, false])
        for (const text of suggested(`${root}7`, isAfter))
          expect(readChord(text).ok, text).toBe(true);
  });

  it("bring melody notes that belong to them, the nearest first", () => {
    const notes = melodySuggestions("Bbmaj9", 74);
    expect(notes[0]).toEqual({ text: "D5", meaning: "held" });
    expect(notes.map(({ text }) => text)).not.toContain("Eb5");
    expect(notes.every(({ meaning }) => /^(held|(up|down) [1-5])$/.test(meaning))).toBe(true);
    expect(melodySuggestions("H7", 74)).toEqual([]);
  });
});

describe("two joined ladders", () => {
  const before = voicingOf({ tpt1: 74, tpt2: 69, tbn1: 63, tbn2: 63, bari: 41 }, question);
  const after = voicingOf({ tpt1: 74, tpt2: 67, tbn1: 62, tbn2: 62, alto1: 70 }, question);
  const plan = motionPlan(before, after, question.players, 800);

  it("gather players of a section who make the same step", () => {
    const threads = plan.threads.map(({ players, from, to }) => [
      players.map(({ id }) => id).join(" "),
      stepText(from, to),
    ]);
    expect(threads).toEqual([
      ["tpt1", "held"],
      ["alto1", "comes in"],
      ["tpt2", "down 2"],
      ["tbn1 tbn2", "down 1"],
      ["bari", "rests"],
    ]);
  });

  it("keep the names of the steps apart and inside the picture", () => {
    const ys = plan.threads.map(({ labelY }) => labelY);
    ys.slice(1).forEach((y, index) => expect(y - (ys[index] ?? 0)).toBeGreaterThanOrEqual(17.9));
    expect(Math.min(...ys)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...ys)).toBeLessThanOrEqual(plan.height);
  });

  it("leave the tokens out where there is no room, and stay inside the width", () => {
    expect(plan.hasTokens).toBe(true);
    const narrow = motionPlan(before, after, question.players, 358);
    expect(narrow.hasTokens).toBe(false);
    expect(narrow.gap[0]).toBeGreaterThan(0);
    expect(narrow.gap[1]).toBeLessThan(358);
  });
});
