import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Letter, SpelledPitch } from "../../src/theory/index.ts";
import {
  ledgerLines,
  letterIndex,
  midiOfSpelled,
  spellOnLetter,
  staffStep,
} from "../../src/notation/staff-position.ts";

const middleC: SpelledPitch = { letter: "C", alteration: 0, octave: 4 };

describe("places on a staff", () => {
  // Clef positions: W3C MusicXML 4.0, clef element (treble = G on line 2, bass = F on line 4).
  it("puts G4 on the second treble line and F3 on the fourth bass line", () => {
    expect(staffStep({ letter: "G", alteration: 0, octave: 4 }, "treble")).toBe(2);
    expect(staffStep({ letter: "F", alteration: 0, octave: 3 }, "bass")).toBe(6);
  });

  it("puts middle C on one ledger line below treble and one above bass", () => {
    expect(staffStep(middleC, "treble")).toBe(-2);
    expect(staffStep(middleC, "bass")).toBe(10);
    expect(ledgerLines(staffStep(middleC, "treble"))).toBe(1);
    expect(ledgerLines(staffStep(middleC, "bass"))).toBe(1);
  });

  it("needs no ledger line in the spaces next to the staff", () => {
    const steps = [-1, 0, 8, 9].map((step) => ledgerLines(step as ReturnType<typeof staffStep>));
    expect(steps).toEqual([0, 0, 0, 0]);
  });

  it("lets the octave belong to the letter: C♭4 sounds B3, B♯3 sounds C4", () => {
    expect(midiOfSpelled({ letter: "C", alteration: -1, octave: 4 })).toBe(59);
    expect(midiOfSpelled({ letter: "B", alteration: 1, octave: 3 })).toBe(60);
  });

  it("spells any key on any near letter so that it sounds the same", () => {
    const letters = fc.constantFrom<Letter>("C", "D", "E", "F", "G", "A", "B");
    const spelled = fc.record({
      letter: letters,
      alteration: fc.integer({ min: -2, max: 2 }),
      octave: fc.integer({ min: 0, max: 8 }),
    });
    fc.assert(
      fc.property(spelled, (pitch) => {
        expect(spellOnLetter(letterIndex(pitch), midiOfSpelled(pitch))).toEqual(pitch);
      }),
      { seed: 7 },
    );
  });
});
