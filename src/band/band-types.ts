import type {
  Cents,
  Count,
  Db,
  DbSpl,
  Hertz,
  Seconds,
  Semitones,
  SoundingMidi,
  WrittenMidi,
} from "../base/index.ts";

/** Sections of the band, as arrangers name them. */
export type SectionId = "trumpets" | "trombones" | "saxes" | "rhythm";

/** Instruments of the table. */
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

/** A chair of the band, with the ranges and costs that go with it. */
export type SeatId =
  | "tpt1"
  | "tpt2"
  | "tpt3"
  | "tpt4"
  | "tbn1"
  | "tbn2"
  | "tbn3"
  | "btbn"
  | "alto1"
  | "alto2"
  | "tenor1"
  | "tenor2"
  | "bari"
  | "flugel1"
  | "sop1"
  | "fl1"
  | "cl1"
  | "bcl1"
  | "hn1"
  | "tuba1"
  | "piano"
  | "bass";

/** Mutes of the table; "open" is none. */
export type MuteId = "open" | "cup" | "straight" | "harmon" | "plunger" | "bucket";

/** Dynamics on paper. */
export type Dynamic = "ppp" | "pp" | "p" | "mp" | "mf" | "f" | "ff" | "fff";

/** How far a player has come; sets the easy range. */
export type PlayerLevel = "school" | "semi-pro" | "pro";

/** Clef of a part. */
export type Clef = "treble" | "bass";

/** Lowest and highest pitch, both included. */
export interface SoundingRange {
  readonly low: SoundingMidi;
  readonly high: SoundingMidi;
}
/** Lowest and highest pitch as read, both included. */
export interface WrittenRange {
  readonly low: WrittenMidi;
  readonly high: WrittenMidi;
}

/** What is added to written pitch to get sounding pitch, as MusicXML 4.0 `<transpose>` states it. */
export interface Transposition {
  /** Steps of the staff, the octave part left out. */
  readonly diatonic: number;
  /** Semitones, the octave part left out. */
  readonly chromatic: Semitones;
  /** Whole octaves; 0 means that the element is left out. */
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

/** An instrument as the whole program knows it. */
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
  readonly midiProgram: Count;
  readonly isBrass: boolean;
  readonly source: string;
}

/** Cost of a register by dynamic; a zone reaches from the one before up to its top, included. */
export interface RegisterZone {
  readonly top: SoundingMidi;
  /** Whole numbers; see the scale of costs in the voicing tables. */
  readonly costAtF: Count;
  readonly costAtMf: Count;
  readonly costAtP: Count;
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
  readonly chair: Count;
  readonly level: PlayerLevel;
  readonly mute: MuteId;
  /** What the player can sound at all: compass, personal range and the end of the level's reach. */
  readonly range: SoundingRange;
  /** What is easy at this player's level. Outside it costs; three semitones outside it is out. */
  readonly easyRange: SoundingRange;
  /** Limits the user gave for this person, kept so that a change of level can start from them. */
  readonly personalRange?: SoundingRange;
  readonly zones: readonly RegisterZone[];
  /** Where this chair mostly lies. */
  readonly home: SoundingRange;
}

/** The players taking part. */
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

/** How a note of an instrument begins, sways, breathes and ends. */
export interface Articulation {
  /** Rise of the level from 10 to 90 %. */
  readonly attackSeconds: Seconds;
  /** Fall of the level by 60 dB after the player stops. */
  readonly releaseSeconds: Seconds;
  /** 0 where the instrument is usually played without vibrato. */
  readonly vibratoHz: Hertz;
  /** Furthest from the middle of the pitch, to either side. */
  readonly vibratoCents: Cents;
  /** How long a held note stays still before the vibrato sets in. */
  readonly vibratoDelaySeconds: Seconds;
  /** Level of breath, reed or bow noise against the level of the tone; below 0. */
  readonly noiseDb: Db;
  /** Time in which a struck or plucked note falls by 60 dB; Infinity while a player blows. */
  readonly decaySeconds: Seconds;
}
