/**
 * Instruments: names, transposition, compass, sound names.
 *
 * Compass in written pitch, as players and handbooks state it: ordinary full range of a competent
 * adult, not the extremes of a level (those are in level-table.ts). Transposition in the three
 * values of MusicXML 4.0 `<transpose>`: steps and semitones without the octave part, and octaves.
 * MusicXML sounds: W3C MusicXML 4.0 sound list. Programmes: General MIDI Level 1, counted from 1;
 * it has no flugelhorn and no bass clarinet, so the nearest relative stands in.
 */
import type { Count } from "../base/index.ts";
import type { Clef, InstrumentId, SectionId } from "./band-types.ts";

/** One instrument as handbooks state it. */
export interface InstrumentRow {
  readonly id: InstrumentId;
  readonly name: string;
  readonly abbreviation: string;
  readonly section: SectionId;
  /** Steps, semitones, octaves. */
  readonly transpose: readonly [diatonic: number, chromatic: number, octaveChange: number];
  readonly clef: Clef;
  /** Lowest and highest written pitch. */
  readonly written: readonly [low: string, high: string];
  readonly musicXmlSound: string;
  readonly midiProgram: Count;
  readonly isBrass: boolean;
  readonly source: string;
}

/** Brass first, then reeds and flute, then rhythm. */
export const instrumentTable: readonly InstrumentRow[] = Object.freeze<InstrumentRow[]>([
  {
    id: "trumpet",
    name: "Trumpet",
    abbreviation: "Tpt",
    section: "trumpets",
    transpose: [-1, -2, 0],
    clef: "treble",
    written: ["F#3", "C6"],
    musicXmlSound: "brass.trumpet.bflat",
    midiProgram: 57,
    isBrass: true,
    source: "Johnstone 1917 p. 44 (F#3 to C6, E6 in brackets); other handbooks end at D6 or E6",
  },
  {
    id: "flugelhorn",
    name: "Flugelhorn",
    abbreviation: "Flg",
    section: "trumpets",
    transpose: [-1, -2, 0],
    clef: "treble",
    written: ["F#3", "Bb5"],
    musicXmlSound: "brass.flugelhorn",
    midiProgram: 57,
    isBrass: true,
    source: "after Blatter, Instrumentation and Orchestration; top Bb5 is a value from memory",
  },
  {
    id: "trombone",
    name: "Trombone",
    abbreviation: "Tbn",
    section: "trombones",
    transpose: [0, 0, 0],
    clef: "bass",
    written: ["E2", "Bb4"],
    musicXmlSound: "brass.trombone.tenor",
    midiProgram: 58,
    isBrass: true,
    source: "Arranging and Orchestration Concepts pp. 123-126 (E2 to Bb4), three others agree",
  },
  {
    id: "bass-trombone",
    name: "Bass trombone",
    abbreviation: "B. Tbn",
    section: "trombones",
    transpose: [0, 0, 0],
    clef: "bass",
    written: ["Bb1", "Bb4"],
    musicXmlSound: "brass.trombone.bass",
    midiProgram: 58,
    isBrass: true,
    source: "US Army Field Band grading page (pedal Bb1); top as the tenor trombone",
  },
  {
    id: "horn",
    name: "Horn",
    abbreviation: "Hn",
    section: "trombones",
    transpose: [-4, -7, 0],
    clef: "treble",
    written: ["F#2", "C6"],
    musicXmlSound: "brass.french-horn",
    midiProgram: 61,
    isBrass: true,
    source: "instrument appendix cards (F#2 to C6); the lowest notes are extremes",
  },
  {
    id: "tuba",
    name: "Tuba",
    abbreviation: "Tba",
    section: "trombones",
    transpose: [0, 0, 0],
    clef: "bass",
    written: ["F1", "F4"],
    musicXmlSound: "brass.tuba",
    midiProgram: 59,
    isBrass: true,
    source: "sources range from F1 (school) to D1 and below (professional); school bottom taken",
  },
  {
    id: "soprano-sax",
    name: "Soprano saxophone",
    abbreviation: "Sop",
    section: "saxes",
    transpose: [-1, -2, 0],
    clef: "treble",
    written: ["Bb3", "F6"],
    musicXmlSound: "wind.reed.saxophone.soprano",
    midiProgram: 65,
    isBrass: false,
    source: "Jazz arranging tutorial, ranges of saxes; high F# depends on the model",
  },
  {
    id: "alto-sax",
    name: "Alto saxophone",
    abbreviation: "Alto",
    section: "saxes",
    transpose: [-5, -9, 0],
    clef: "treble",
    written: ["Bb3", "F6"],
    musicXmlSound: "wind.reed.saxophone.alto",
    midiProgram: 66,
    isBrass: false,
    source: "encyclopedia article on the alto saxophone: sounding Db3 to Ab5",
  },
  {
    id: "tenor-sax",
    name: "Tenor saxophone",
    abbreviation: "Ten",
    section: "saxes",
    transpose: [-1, -2, -1],
    clef: "treble",
    written: ["Bb3", "F6"],
    musicXmlSound: "wind.reed.saxophone.tenor",
    midiProgram: 67,
    isBrass: false,
    source: "instrument appendix cards; music21 instrument classes (bottom and major ninth)",
  },
  {
    id: "baritone-sax",
    name: "Baritone saxophone",
    abbreviation: "Bari",
    section: "saxes",
    transpose: [-5, -9, -1],
    clef: "treble",
    written: ["A3", "F6"],
    musicXmlSound: "wind.reed.saxophone.baritone",
    midiProgram: 68,
    isBrass: false,
    source: "low A on most modern instruments; old ones end at Bb3 (give such a player that range)",
  },
  {
    id: "flute",
    name: "Flute",
    abbreviation: "Fl",
    section: "saxes",
    transpose: [0, 0, 0],
    clef: "treble",
    written: ["C4", "D7"],
    musicXmlSound: "wind.flutes.flute",
    midiProgram: 74,
    isBrass: false,
    source: "Ranges of Orchestral Instruments (C4 to D7); low B needs a B foot",
  },
  {
    id: "clarinet",
    name: "Clarinet",
    abbreviation: "Cl",
    section: "saxes",
    transpose: [-1, -2, 0],
    clef: "treble",
    written: ["E3", "G6"],
    musicXmlSound: "wind.reed.clarinet.bflat",
    midiProgram: 72,
    isBrass: false,
    source: "Ranges of Orchestral Instruments (E3, limit C7); practical top G6 from memory",
  },
  {
    id: "bass-clarinet",
    name: "Bass clarinet",
    abbreviation: "B. Cl",
    section: "saxes",
    transpose: [-1, -2, -1],
    clef: "treble",
    written: ["Eb3", "G6"],
    musicXmlSound: "wind.reed.clarinet.bass",
    midiProgram: 72,
    isBrass: false,
    source:
      "Ranges of Orchestral Instruments (Eb3 to G6; low C only on some models), treble notation",
  },
  {
    id: "piano",
    name: "Piano",
    abbreviation: "Pno",
    section: "rhythm",
    transpose: [0, 0, 0],
    clef: "treble",
    written: ["A0", "C8"],
    musicXmlSound: "keyboard.piano",
    midiProgram: 1,
    isBrass: false,
    source: "common practice, no single source; read on two staves, treble and bass",
  },
  {
    id: "double-bass",
    name: "Double bass",
    abbreviation: "Bass",
    section: "rhythm",
    transpose: [0, 0, -1],
    clef: "bass",
    written: ["E2", "G4"],
    musicXmlSound: "pluck.bass.acoustic",
    midiProgram: 33,
    isBrass: false,
    source: "music21 instrument classes (open strings sound E1 A1 D2 G2); pizzicato, jazz use",
  },
]);
