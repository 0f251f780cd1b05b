import { describe, expect, it } from "vitest";
import type { RuleId } from "../../src/voicing/index.ts";
import { candidateNotes, isHarmonyNote } from "../../src/voicing/candidate-notes.ts";
import { harmonyOf } from "../../src/voicing/harmony.ts";
import { ask, midi } from "./support/questions.ts";

function notesOf(chord: string, lead: string, off: readonly RuleId[] = []): readonly number[] {
  const asked = ask(chord, lead, "f");
  const rules = { ...asked.rules };
  for (const id of off) rules[id] = false;
  const question = { ...asked, rules };
  return candidateNotes(question, harmonyOf(question), question.players);
}

describe("the notes that may sound", () => {
  it("are the ticked tones under the melody that anyone can sound, and low octaves for lines", () => {
    // Twenty for F13 under D5: the search model's count, low tensions included.
    expect(notesOf("F13", "D5", ["H9"])).toHaveLength(20);
    const notes = notesOf("F13", "D5");
    expect(notes[0]).toBe(midi("D5"));
    expect(notes.at(-1)).toBe(midi("C2"));
    expect(notes).toContain(midi("D2"));
    expect(notes).not.toContain(midi("Eb2"));
  });

  it("hold the octaves of a foreign melody note for lines, but not for the harmony", () => {
    const question = ask("F13", "C#5", "f");
    const harmony = harmonyOf(question);
    expect(notesOf("F13", "C#5")).toContain(midi("C#4"));
    expect(isHarmonyNote(midi("C#4"), question, harmony)).toBe(false);
    expect(isHarmonyNote(midi("C#5"), question, harmony)).toBe(true);
  });

  it("grow with each rule that is switched off", () => {
    const usual = notesOf("F7", "Eb5");
    expect(usual).not.toContain(midi("D5"));
    expect(notesOf("F7", "Eb5", ["H7"])).toContain(midi("D5"));
    expect(notesOf("F7", "Eb5", ["H9"])).toContain(midi("A2"));
    expect(notesOf("F7", "Eb5", ["H2"])).toContain(midi("B4"));
    expect(notesOf("F7", "Eb5", ["H1"])[0]).toBe(midi("Eb6") - 1);
  });
});
