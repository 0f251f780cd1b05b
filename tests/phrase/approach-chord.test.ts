import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { pitchClass, type SoundingMidi } from "../../src/base/index.ts";
import { spellPitch, spelledToMidi, type Key } from "../../src/theory/index.ts";
import { approachChord, type Approach } from "../../src/phrase/approach-chord.ts";
import type { ApproachTechnique } from "../../src/phrase/harmony-types.ts";
import { chordOf, spelled } from "./support/phrases.ts";

const key: Key = { tonic: { letter: "C", alteration: 0 }, mode: "major" };
const into = (from: string, to: string, target: string): Approach => ({
  from: spelled(from),
  into: spelled(to),
  target: chordOf(target),
  key,
});
const symbol = (technique: ApproachTechnique, approach: Approach): string => {
  const found = approachChord(technique, approach);
  return found.ok ? found.value.symbol : found.problem.code;
};

describe("approach chords", () => {
  it("spell a moved root as the melody moves", () => {
    expect(symbol("parallel", into("F#4", "G4", "Am7"))).toBe("G#m7");
    expect(symbol("parallel", into("Ab4", "G4", "Am7"))).toBe("Bbm7");
    expect(symbol("chromatic", into("Eb5", "D5", "G7"))).toBe("Ab7");
  });

  it("leave a slash bass behind", () =>
    expect(symbol("parallel", into("D#5", "E5", "C6/G"))).toBe("B6"));

  it("say when the melody does not move by a semitone", () =>
    expect(symbol("chromatic", into("D5", "E5", "C6"))).toBe("approach-not-semitone"));

  it("say when the root is not in the key", () =>
    expect(symbol("diatonic", into("Eb5", "D5", "C6"))).toBe("approach-not-diatonic"));

  it("take the form of the dominant that holds the note (common practice)", () => {
    expect(symbol("dominant", into("A4", "G4", "Cmaj7"))).toBe("G9");
    expect(symbol("dominant", into("Ab4", "G4", "Cmaj7"))).toBe("G7(b9)");
    expect(symbol("dominant", into("Bb4", "A4", "C6"))).toBe("G7(#9)");
    expect(symbol("dominant", into("F#4", "G4", "Cmaj7"))).toBe("approach-no-dominant");
  });

  it("have nothing to approach where there is no chord", () => {
    for (const technique of ["diatonic", "parallel", "dominant", "diminished"] as const)
      expect(symbol(technique, into("D5", "C5", "N.C."))).toBe("approach-no-chord");
  });

  it("always hold the melody note, diminished and dominant ones", () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 84 }),
        fc.constantFrom(-2, -1, 1, 2),
        fc.constantFrom("C6", "Dm7", "G7", "Abmaj7", "F#m7(b5)", "Bbm6"),
        fc.constantFrom("diminished", "dominant"),
        (from, step, target, technique) => {
          const approach: Approach = {
            from: spellPitch(from as SoundingMidi),
            into: spellPitch((from + step) as SoundingMidi),
            target: chordOf(target),
            key,
          };
          const found = approachChord(technique, approach);
          if (!found.ok) return;
          const own = found.value.tones.filter(
            ({ kind }) => kind === "stated" || kind === "implied",
          );
          expect(own.map((tone) => tone.pitchClass)).toContain(pitchClass(from));
        },
      ),
      { seed: 7 },
    ));

  it("keep the family of the target when they are parallel", () => {
    const found = approachChord("parallel", into("B4", "C5", "Fm7"));
    if (!found.ok) throw new Error(found.problem.message);
    expect(found.value.family).toBe("minor-seventh");
    expect(spelledToMidi(spelled("B4")) - spelledToMidi(spelled("C5"))).toBe(-1);
    expect(found.value.rootPitchClass).toBe(4);
  });
});
