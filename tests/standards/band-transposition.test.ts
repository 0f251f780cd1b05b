import { describe, expect, it } from "vitest";
import { quantity, soundingMidi, type WrittenMidi } from "../../src/base/index.ts";
import {
  instrumentOf,
  instruments,
  soundingMinusWritten,
  toSounding,
  toWritten,
  type InstrumentId,
} from "../../src/band/index.ts";

const written = (midi: number) => quantity<WrittenMidi>(midi);

// W3C MusicXML 4.0 `<transpose>`: what is added to written pitch to get sounding pitch; chromatic
// and diatonic leave the octave part out. Values: music21 instrument classes, instrument appendix
// cards, Ranges of Orchestral Instruments, which agree.
const published: readonly [InstrumentId, number, number, number, number][] = [
  ["flute", 0, 0, 0, 0],
  ["clarinet", -1, -2, 0, -2],
  ["bass-clarinet", -1, -2, -1, -14],
  ["soprano-sax", -1, -2, 0, -2],
  ["alto-sax", -5, -9, 0, -9],
  ["tenor-sax", -1, -2, -1, -14],
  ["baritone-sax", -5, -9, -1, -21],
  ["trumpet", -1, -2, 0, -2],
  ["flugelhorn", -1, -2, 0, -2],
  ["horn", -4, -7, 0, -7],
  ["trombone", 0, 0, 0, 0],
  ["bass-trombone", 0, 0, 0, 0],
  ["tuba", 0, 0, 0, 0],
  ["piano", 0, 0, 0, 0],
  ["double-bass", 0, 0, -1, -12],
];

describe("transposition as MusicXML states it", () => {
  it.each(published)(
    "is as published for the %s",
    (id, diatonic, chromatic, octaveChange, semitones) => {
      expect(instrumentOf(id).transposition).toEqual({ diatonic, chromatic, octaveChange });
      expect(soundingMinusWritten(id)).toBe(semitones);
    },
  );

  it("covers every instrument", () => {
    expect(new Set(published.map(([id]) => id))).toEqual(new Set(instruments.map(({ id }) => id)));
  });

  it("keeps octaves apart from an interval smaller than an octave, as the schema asks", () => {
    for (const { transposition } of instruments) {
      expect(Math.abs(transposition.chromatic)).toBeLessThan(12);
      expect(Math.abs(transposition.diatonic)).toBeLessThan(7);
      if (transposition.diatonic === 0) expect(transposition.chromatic).toBe(0);
    }
    // Tenor has an octave change, alto has none.
    expect(instrumentOf("tenor-sax").transposition.octaveChange).toBe(-1);
    expect(instrumentOf("alto-sax").transposition.octaveChange).toBe(0);
  });

  it("sounds a tenor's written C5 as Bb3, a major ninth lower", () => {
    // Instrument appendix cards; music21 (major ninth).
    expect(toSounding(written(72), "tenor-sax")).toBe(58);
  });

  it("sounds a baritone's written C4 as Eb2, a major thirteenth lower", () => {
    // Instrument appendix cards; music21 (major thirteenth).
    expect(toSounding(written(60), "baritone-sax")).toBe(39);
  });

  it("writes an alto's Db3 to Ab5 as Bb3 to F6", () => {
    // Encyclopedia article on the alto saxophone states both.
    expect(toWritten(soundingMidi(49), "alto-sax")).toBe(58);
    expect(toWritten(soundingMidi(80), "alto-sax")).toBe(89);
  });
});

describe("sounds of other standards", () => {
  it("are names of the W3C MusicXML 4.0 sound list", () => {
    expect(instruments.map(({ musicXmlSound }) => musicXmlSound)).toEqual([
      "brass.trumpet.bflat",
      "brass.flugelhorn",
      "brass.trombone.tenor",
      "brass.trombone.bass",
      "brass.french-horn",
      "brass.tuba",
      "wind.reed.saxophone.soprano",
      "wind.reed.saxophone.alto",
      "wind.reed.saxophone.tenor",
      "wind.reed.saxophone.baritone",
      "wind.flutes.flute",
      "wind.reed.clarinet.bflat",
      "wind.reed.clarinet.bass",
      "keyboard.piano",
      "pluck.bass.acoustic",
    ]);
  });

  it("are General MIDI Level 1 programmes, counted from 1", () => {
    // GM Level 1: 57 trumpet, 58 trombone, 59 tuba, 61 French horn, 65 to 68 saxophones, 72
    // clarinet, 74 flute, 1 grand piano, 33 acoustic bass; value from memory.
    const programme = (id: InstrumentId) => instrumentOf(id).midiProgram;
    expect((["trumpet", "trombone", "tuba", "horn"] as const).map(programme)).toEqual([
      57, 58, 59, 61,
    ]);
    expect(
      (["soprano-sax", "alto-sax", "tenor-sax", "baritone-sax"] as const).map(programme),
    ).toEqual([65, 66, 67, 68]);
    expect((["clarinet", "flute", "piano", "double-bass"] as const).map(programme)).toEqual([
      72, 74, 1, 33,
    ]);
  });
});
