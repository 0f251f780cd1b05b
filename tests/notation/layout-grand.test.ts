import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import { layoutGrand } from "../../src/notation/layout-grand.ts";
import { midiOfSpelled } from "../../src/notation/staff-position.ts";
import { chord, F13, player, voicing, WIDE_F13 } from "./support/voicings.ts";

describe("grand staff", () => {
  it("shows each pitch once with everyone who sounds it", () => {
    const [treble, bass] = layoutGrand(WIDE_F13, F13);
    expect(treble?.notes.map((note) => note.name)).toEqual(["C4", "E♭4", "G4", "D5"]);
    expect(bass?.notes.map((note) => note.name)).toEqual(["F2", "A3"]);
    expect(treble?.notes.at(-1)?.players.map((each) => each.id)).toEqual(["tpt1", "tpt2", "alto1"]);
  });

  it("puts the degree beside every note", () => {
    const degrees = layoutGrand(WIDE_F13, F13).flatMap((staff) =>
      staff.notes.map((note) => note.degreeText),
    );
    expect(degrees).toEqual(["5", "♭7", "9", "13", "1", "3"]);
  });

  it("writes a diminished seventh without its double flat", () => {
    const dim = chord("C°7", "diminished-seventh", "C 1, Eb b3, Gb b5, Bbb bb7");
    const [treble] = layoutGrand(voicing("tpt1=A4 tpt2=Gb4"), dim);
    expect(treble?.notes.map((note) => [note.name, note.degree, note.sign])).toEqual([
      ["G♭4", "b5", "flat"],
      ["A4", "bb7", "none"],
    ]);
  });

  it("shows a natural where the other staff alters the same letter", () => {
    const sharpNine = chord("C7(♯9)", "dominant", "C 1, D# #9, E 3, G 5, Bb b7, D 9");
    const [treble, bass] = layoutGrand(voicing("tpt1=D#5 tbn1=D3"), sharpNine);
    expect(treble?.notes[0]?.sign).toBe("sharp");
    expect(bass?.notes[0]?.sign).toBe("natural");
  });

  it("loses nobody and sounds what was asked, for any voicing", () => {
    const ids = ["tpt1", "tpt2", "tbn1", "btbn", "alto1", "tenor1", "bari"];
    const pitches = fc.array(fc.integer({ min: 30, max: 90 }), { minLength: 1, maxLength: 7 });
    fc.assert(
      fc.property(pitches, (midis) => {
        const placements = midis.map((midi, index) => ({
          player: player(ids[index] ?? "tpt1"),
          sounding: soundingMidi(midi),
        }));
        const notes = layoutGrand({ placements }, F13).flatMap((staff) => staff.notes);
        expect(new Set(notes.map((note) => note.sounding))).toEqual(new Set(midis));
        expect(notes.flatMap((note) => note.players)).toHaveLength(midis.length);
        for (const note of notes) {
          expect(midiOfSpelled(note.spelled)).toBe(note.sounding);
          expect(Math.abs(note.spelled.alteration)).toBeLessThanOrEqual(1);
        }
      }),
      { seed: 7 },
    );
  });
});
