import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pitchClass, soundingMidi } from "../../src/base/index.ts";
import { LETTERS } from "../../src/theory/letter-table.ts";
import {
  formatPitch,
  formatPitchClass,
  placeSpelling,
  spelledPitchClass,
  spelledToMidi,
  spellOnLetter,
} from "../../src/theory/spelled-pitch.ts";

const spelling = fc.record({
  letter: fc.constantFrom(...LETTERS),
  alteration: fc.integer({ min: -2, max: 2 }),
});

describe("spelled pitches", () => {
  it("print with plain or typographic signs", () => {
    const flat = { letter: "B", alteration: -2, octave: 3 } as const;
    expect(formatPitch(flat)).toBe("Bbb3");
    expect(formatPitch(flat, { signs: "unicode" })).toBe("B♭♭3");
    expect(formatPitchClass({ letter: "F", alteration: 2 })).toBe("F##");
    expect(formatPitch({ letter: "C", alteration: 0, octave: -1 })).toBe("C-1");
  });

  it("refuse to sound outside 0 to 127", () => {
    expect(() => spelledToMidi({ letter: "C", alteration: -1, octave: -1 })).toThrow(RangeError);
    expect(() => spelledToMidi({ letter: "G", alteration: 1, octave: 9 })).toThrow(RangeError);
  });

  it("refuse a key that the spelling does not sound", () => {
    expect(() => placeSpelling(soundingMidi(60), { letter: "D", alteration: 0 })).toThrow(
      RangeError,
    );
  });

  it("find their octave from the key they sound on, there and back", () => {
    fc.assert(
      fc.property(spelling, fc.integer({ min: 0, max: 8 }), (spelled, octave) => {
        const midi = spelledToMidi({ ...spelled, octave });
        expect(midi % 12).toBe(spelledPitchClass(spelled));
        expect(placeSpelling(midi, spelled)).toEqual({ ...spelled, octave });
      }),
      { seed: 7 },
    );
  });

  it("stay on the letter asked for, and leave it only for want of a triple accidental", () => {
    expect(spellOnLetter(0, pitchClass(11))).toEqual({
      spelled: { letter: "C", alteration: -1 },
      isRespelled: false,
    });
    expect(spellOnLetter(7, pitchClass(1)).spelled).toEqual({ letter: "C", alteration: 1 });
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 0, max: 11 }),
        (letter, key) => {
          const { spelled, isRespelled } = spellOnLetter(letter, pitchClass(key));
          expect(spelledPitchClass(spelled)).toBe(key);
          expect(Math.abs(spelled.alteration)).toBeLessThanOrEqual(2);
          if (!isRespelled) expect(spelled.letter).toBe(LETTERS[letter % 7]);
        },
      ),
      { seed: 7 },
    );
  });
});
