import fc from "fast-check";
import { Note } from "tonal";
import { describe, expect, it } from "vitest";
import { instrumentOf, type InstrumentId } from "../../src/band/index.ts";
import type { Letter, SpelledPitch } from "../../src/theory/index.ts";
import {
  asWhiteKey,
  concertReading,
  CONCERT,
  moveSpelled,
  readingOf,
  withoutDoubles,
} from "../../src/notation/transposed-spelling.ts";
import { midiOfSpelled } from "../../src/notation/staff-position.ts";
import { chord, F13 } from "./support/voicings.ts";

function spelled(name: string): SpelledPitch {
  const [, letter = "C", signs = "", octave = "4"] = /^([A-G])([b#]*)(\d)$/.exec(name) ?? [];
  const alteration = [...signs].reduce((sum, sign) => sum + (sign === "#" ? 1 : -1), 0);
  return { letter: letter as Letter, alteration, octave: Number(octave) };
}

function nameOf({ letter, alteration, octave }: SpelledPitch): string {
  return letter + (alteration < 0 ? "b".repeat(-alteration) : "#".repeat(alteration)) + octave;
}

const C7 = chord("C7", "dominant", "C 1, E 3, G 5, Bb b7");

function written(concert: string, instrument: InstrumentId, heardIn = C7): string {
  const reading = readingOf(heardIn, instrumentOf(instrument).transposition);
  return nameOf(withoutDoubles(moveSpelled(spelled(concert), reading)));
}

describe("written spelling of transposing instruments", () => {
  // Intervals: W3C MusicXML 4.0, transpose element; instrument appendix cards and music21's
  // instrument classes agree (tenor a major ninth, baritone a major thirteenth).
  it.each<[string, InstrumentId, string]>([
    ["Bb3", "tenor-sax", "C5"],
    ["Eb2", "baritone-sax", "C4"],
    ["Eb4", "alto-sax", "C5"],
    ["Bb3", "trumpet", "C4"],
    ["Bb3", "flugelhorn", "C4"],
    ["Bb3", "soprano-sax", "C4"],
    ["F3", "horn", "C4"],
    ["C4", "trombone", "C4"],
    ["C4", "bass-trombone", "C4"],
    ["E2", "double-bass", "E3"],
    // Alto sax: written B♭3 to F6 sounds D♭3 to A♭5 (encyclopedia article on the alto saxophone).
    ["Db3", "alto-sax", "Bb3"],
    ["Ab5", "alto-sax", "F6"],
  ])("%s for %s is written %s", (concert, instrument, expected) => {
    expect(written(concert, instrument)).toBe(expected);
  });

  it("keeps the letter of the interval: concert F♯ of D7 is G♯ for a trumpet, not A♭", () => {
    const D7 = chord("D7", "dominant", "D 1, F# 3, A 5, C b7");
    expect(written("F#4", "trumpet", D7)).toBe("G#4");
  });

  // An independent general-purpose library moves notes by named intervals.
  it("agrees with interval arithmetic for every spelling and instrument", () => {
    const intervals = [
      ["trumpet", "2M"],
      ["alto-sax", "6M"],
      ["tenor-sax", "9M"],
      ["baritone-sax", "13M"],
      ["horn", "5P"],
    ] as const;
    const noChord = chord("N.C.", "no-chord", "");
    const pitch = fc.record({
      letter: fc.constantFrom<Letter>("C", "D", "E", "F", "G", "A", "B"),
      alteration: fc.integer({ min: -1, max: 1 }),
      octave: fc.integer({ min: 1, max: 5 }),
    });
    fc.assert(
      fc.property(pitch, fc.constantFrom(...intervals), (concert, [instrument, interval]) => {
        const reading = readingOf(noChord, instrumentOf(instrument).transposition);
        const moved = nameOf(moveSpelled(concert, reading));
        expect(moved).toBe(Note.transpose(nameOf(concert), interval));
      }),
      { seed: 7 },
    );
  });

  it("always sounds the pitch it was given, whatever the chord is respelled to", () => {
    const roots = ["C", "C#", "Db", "F#", "Gb", "B", "Cb", "G#", "Ab"];
    const instruments = fc.constantFrom<InstrumentId>(
      "trumpet",
      "alto-sax",
      "tenor-sax",
      "baritone-sax",
      "horn",
      "trombone",
    );
    const pitch = fc.record({
      letter: fc.constantFrom<Letter>("C", "D", "E", "F", "G", "A", "B"),
      alteration: fc.integer({ min: -2, max: 2 }),
      octave: fc.integer({ min: 2, max: 5 }),
    });
    fc.assert(
      fc.property(pitch, instruments, fc.constantFrom(...roots), (concert, instrument, root) => {
        const { transposition } = instrumentOf(instrument);
        const one = chord(`${root}5`, "power", `${root} 1`);
        const read = withoutDoubles(moveSpelled(concert, readingOf(one, transposition)));
        const sounds =
          midiOfSpelled(read) + transposition.chromatic + 12 * transposition.octaveChange;
        expect(sounds).toBe(midiOfSpelled(concert));
        expect(Math.abs(read.alteration)).toBeLessThanOrEqual(1);
      }),
      { seed: 7 },
    );
  });
});

describe("enharmonic choice", () => {
  // common practice, no single source
  it("reads concert B7 as A♭7 on alto sax: G♯7 would need B♯", () => {
    const B7 = chord("B7", "dominant", "B 1, D# 3, F# 5, A b7");
    expect(["B4", "D#5", "F#5", "A4"].map((name) => written(name, "alto-sax", B7))).toEqual([
      "Ab5",
      "C6",
      "Eb6",
      "Gb5",
    ]);
  });

  it("leaves a chord alone when the other spelling reads no better", () => {
    const E7 = chord("E7", "dominant", "E 1, G# 3, B 5, D b7");
    expect(written("G#4", "alto-sax", E7)).toBe("E#5");
  });

  it("moves the whole chord of F♯7 for a trumpet, root and third alike", () => {
    const FSharp7 = chord("F♯7", "dominant", "F# 1, A# 3, C# 5, E b7");
    expect(written("F#4", "trumpet", FSharp7)).toBe("Ab4");
    expect(written("A#4", "trumpet", FSharp7)).toBe("C5");
  });

  it("takes double accidentals off without changing the key", () => {
    const names = ["F##4", "Bbb3", "E##4", "Cbb4", "Abb4"];
    expect(names.map((name) => nameOf(withoutDoubles(spelled(name))))).toEqual([
      "G4",
      "A3",
      "F#4",
      "Bb3",
      "G4",
    ]);
  });

  it("names white keys plainly when asked", () => {
    const names = ["E#4", "B#3", "Cb5", "Fb4", "F#4", "Bb4", "D4"];
    expect(names.map((name) => nameOf(asWhiteKey(spelled(name))))).toEqual([
      "F4",
      "C4",
      "B4",
      "E4",
      "F#4",
      "Bb4",
      "D4",
    ]);
  });
});

describe("concert scores", () => {
  // W3C MusicXML 4.0, concert-score element: octave changes stay, other transpositions go.
  it("show horns as they sound and the double bass an octave up", () => {
    expect(concertReading(instrumentOf("baritone-sax").transposition)).toEqual(CONCERT);
    const bass = concertReading(instrumentOf("double-bass").transposition);
    expect(nameOf(moveSpelled(spelled("E1"), bass))).toBe("E2");
  });

  it("read written and concert alike where nothing transposes", () => {
    const { transposition } = instrumentOf("trombone");
    expect(readingOf(F13, transposition)).toEqual(CONCERT);
  });
});
