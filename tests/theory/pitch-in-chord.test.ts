import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import { degreeOf, pitchName, spellPitch } from "../../src/theory/pitch-in-chord.ts";
import { spelledToMidi } from "../../src/theory/spelled-pitch.ts";
import { chord } from "./support/chords.ts";

const name = (midi: number, symbol: string) => pitchName(soundingMidi(midi), chord(symbol));
const degree = (midi: number, symbol: string) => degreeOf(soundingMidi(midi), chord(symbol));
const from60 = (symbol: string, of: (midi: number, symbol: string) => string) =>
  Array.from({ length: 12 }, (_, step) => of(60 + step, symbol)).join(" ");

describe("a pitch in its chord", () => {
  it("takes the spelling of the chord's own tone", () => {
    expect(name(59, "Abm")).toBe("Cb4");
    expect(name(69, "Cdim7")).toBe("Bbb4");
    expect(name(63, "C7(#9)")).toBe("D#4");
    expect(name(63, "Cm7")).toBe("Eb4");
    expect(pitchName(soundingMidi(59), chord("Abm"), { signs: "unicode" })).toBe("C♭4");
  });

  it("is spelled by its degree where it is foreign", () => {
    expect(name(61, "C7")).toBe("Db4");
    expect(name(66, "C7")).toBe("F#4");
    expect(name(66, "Cm7")).toBe("Gb4");
    expect(name(63, "Cmaj7")).toBe("Eb4");
  });

  it("avoids double accidentals on notes the chord does not print", () => {
    expect(name(69, "Ab7")).toBe("A4");
    expect(name(69, "Ab7(b9)")).toBe("Bbb4");
    expect(name(74, "Db7")).toBe("D5");
  });

  it("has a plain name without a chord", () => {
    const plain = Array.from({ length: 12 }, (_, step) => pitchName(soundingMidi(60 + step)));
    expect(plain.join(" ")).toBe("C4 Db4 D4 Eb4 E4 F4 F#4 G4 Ab4 A4 Bb4 B4");
    expect(name(61, "N.C.")).toBe("Db4");
  });

  it("has a degree for every key", () => {
    expect(from60("C7", degree)).toBe("1 b9 9 #9 3 11 #11 5 b13 13 b7 7");
    expect(from60("Cm7", degree)).toBe("1 b9 9 b3 3 11 b5 5 b13 13 b7 7");
    expect(from60("Cmaj7", degree)).toBe("1 b9 9 b3 3 11 #11 5 b13 13 b7 7");
    expect(from60("Cdim7", degree)).toBe("1 b9 9 b3 3 11 b5 5 b13 bb7 b7 7");
    expect(from60("C7sus4", degree)).toBe("1 b9 9 #9 3 4 #11 5 b13 13 b7 7");
    expect(from60("C", degree)).toBe("1 b9 9 b3 3 11 #11 5 b6 6 b7 7");
    expect(degree(60, "N.C.")).toBe("");
  });

  it("always sounds the key it was asked for", () => {
    const symbols = ["Abm", "B##7", "Ebb13", "Cdim7", "F#7alt", "Gbmaj7#11", "Cb9sus4", "N.C."];
    fc.assert(
      fc.property(
        fc.constantFrom(...symbols),
        fc.integer({ min: 12, max: 120 }),
        (symbol, midi) => {
          expect(spelledToMidi(spellPitch(soundingMidi(midi), chord(symbol)))).toBe(midi);
        },
      ),
      { seed: 7, numRuns: 500 },
    );
  });
});
