import type { Db, DbSpl, Hertz, SoundingMidi, WrittenMidi } from "../base/index.ts";

/** Sections of the band, as arrangers name them. */
export type SectionId = "trumpets" | "trombones" | "saxes" | "rhythm";

export type InstrumentId =
  | "trumpet"
  | "flugelhorn"
  | "trombone"
  | "bass-trombone"
  | "horn"
  | "tuba"
  | "soprano-sax"
  | "alto-sax"
  | "tenor-sax"
  | "baritone-sax"
  | "flute"
  | "clarinet"
  | "bass-clarinet"
  | "piano"
  | "double-bass";

export type MuteId = "open" | "cup" | "straight" | "harmon" | "plunger" | "bucket";

/** Dynamics on paper. */
export type Dynamic = "ppp" | "pp" | "p" | "mp" | "mf" | "f" | "ff" | "fff";

/** How far a player has come; sets the easy range. */
export type PlayerLevel = "school" | "semi-pro" | "pro";

export type Clef = "treble" | "bass";

/** Lowest and highest pitch, both included. */
export interface SoundingRange {
  readonly low: SoundingMidi;
  readonly high: SoundingMidi;
}
export interface WrittenRange {
  readonly low: WrittenMidi;
  readonly high: WrittenMidi;
}

/** What is added to written pitch to get sounding pitch, as MusicXML 4.0 `<transpose>` states it. */
export interface Transposition {
  readonly diatonic: number;
  readonly chromatic: number;
  readonly octaveChange: number;
}

/** A named stretch of an instrument's compass. */
export interface Register {
  readonly low: SoundingMidi;
  readonly high: SoundingMidi;
  /** Plain words for the page: "weak", "easy", "tiring". */
  readonly label: string;
  readonly strength: "weak" | "even" | "strong" | "tiring" | "risky";
}

export interface Instrument {
  readonly id: InstrumentId;
  readonly name: string;
  readonly abbreviation: string;
  readonly section: SectionId;
  readonly transposition: Transposition;
  /** Clef of the player's part. */
  readonly clef: Clef;
  /** Ordinary full compass of a competent adult player, sounding. */
  readonly range: SoundingRange;
  readonly registers: readonly Register[];
  /** Sound name of the MusicXML sound list. */
  readonly musicXmlSound: string;
  /** General MIDI programme, 1 to 128. */
  readonly midiProgram: number;
  readonly isBrass: boolean;
  readonly source: string;
}

/** Cost of a register by dynamic; a zone reaches from the one before up to its top, included. */
export interface RegisterZone {
  readonly top: SoundingMidi;
  /** Whole numbers; see the scale of costs in the voicing tables. */
  readonly costAtF: number;
  readonly costAtMf: number;
  readonly costAtP: number;
}

/** One person with an instrument, as the search and the page know them. */
export interface Player {
  /** Stable id: tpt1, tbn3, btbn, alto1, bari … */
  readonly id: string;
  readonly name: string;
  readonly abbreviation: string;
  readonly instrument: InstrumentId;
  readonly section: SectionId;
  /** 0 for the first chair of this instrument, 1 for the second … */
  readonly chair: number;
  readonly level: PlayerLevel;
  readonly mute: MuteId;
  /** What the player can sound at all: instrument's compass cut by the personal range. */
  readonly range: SoundingRange;
  /** What is easy at this player's level. Outside it costs; three semitones outside it is out. */
  readonly easyRange: SoundingRange;
  readonly zones: readonly RegisterZone[];
  /** Where this chair mostly lies. */
  readonly home: SoundingRange;
}

export interface LineUp {
  readonly id: string;
  readonly name: string;
  readonly players: readonly Player[];
}

/** One sine component of a steady note. */
export interface Partial {
  readonly hz: Hertz;
  readonly dbSpl: DbSpl;
}

/** How a note is asked of the timbre model. */
export interface TimbreRequest {
  readonly instrument: InstrumentId;
  readonly sounding: SoundingMidi;
  readonly dynamic: Dynamic;
  readonly mute: MuteId;
  /** Extra level for a stronger or weaker player, 0 unless given. */
  readonly trim?: Db;
}
