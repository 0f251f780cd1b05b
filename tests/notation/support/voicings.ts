import { pitchClass, soundingMidi, type SoundingMidi } from "../../../src/base/index.ts";
import type { InstrumentId, Player, SectionId } from "../../../src/band/index.ts";
import type {
  Chord,
  ChordFamily,
  ChordTone,
  Letter,
  SpelledPitchClass,
  ToneRole,
} from "../../../src/theory/index.ts";
import type { Voicing } from "../../../src/voicing/index.ts";

/*
 * Players, chords and voicings written out by hand, so that these tests fail for notation's faults
 * only.
 */

const CHAIRS: Readonly<Record<string, readonly [string, string, InstrumentId, SectionId]>> = {
  tpt: ["Trumpet", "Tpt", "trumpet", "trumpets"],
  flugel: ["Flugelhorn", "Flg", "flugelhorn", "trumpets"],
  tbn: ["Trombone", "Tbn", "trombone", "trombones"],
  btbn: ["Bass trombone", "B. Tbn", "bass-trombone", "trombones"],
  alto: ["Alto", "Alto", "alto-sax", "saxes"],
  tenor: ["Tenor", "Ten", "tenor-sax", "saxes"],
  bari: ["Baritone", "Bari", "baritone-sax", "saxes"],
  bass: ["Bass", "Bass", "double-bass", "rhythm"],
};

/** Player of an id such as "tpt2" or "bari". */
export function player(id: string): Player {
  const [, kind = "", chair = ""] = /^([a-z]+)(\d*)$/.exec(id) ?? [];
  const row = CHAIRS[kind];
  if (!row) throw new RangeError(`no such player in these tests: ${id}`);
  const [name, abbreviation, instrument, section] = row;
  const range = { low: soundingMidi(30), high: soundingMidi(90) };
  return {
    id,
    name: chair ? `${name} ${chair}` : name,
    abbreviation: chair ? `${abbreviation} ${chair}` : abbreviation,
    instrument,
    section,
    chair: chair ? Number(chair) - 1 : 0,
    level: "pro",
    mute: "open",
    range,
    easyRange: range,
    zones: [],
    home: range,
  };
}

const LETTER_KEYS: Readonly<Record<string, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };

function spelledPitchClass(name: string): SpelledPitchClass {
  const alteration = [...name.slice(1)].reduce((sum, sign) => sum + (sign === "#" ? 1 : -1), 0);
  return { letter: name.charAt(0) as Letter, alteration };
}

function keyOf(name: string): number {
  const { letter, alteration } = spelledPitchClass(name);
  return (LETTER_KEYS[letter] ?? 0) + alteration;
}

/** Sounding pitch of a name such as "Eb4". */
function sounding(name: string): SoundingMidi {
  const [, pitch = "", octave = ""] = /^([A-G][b#]*)(-?\d)$/.exec(name) ?? [];
  return soundingMidi(12 * (Number(octave) + 1) + keyOf(pitch));
}

/** Voicing of a text such as "tpt1=D5 alto1=B4", in the order given. */
export function voicing(text: string): Voicing {
  const placements = text
    .split(/\s+/)
    .filter(Boolean)
    .map((part) => {
      const [id = "", name = ""] = part.split("=");
      return { player: player(id), sounding: sounding(name) };
    });
  return { placements };
}

const ROLES: Readonly<Record<string, ToneRole>> = {
  "1": "root",
  "3": "third",
  "5": "fifth",
  "6": "sixth",
  "7": "seventh",
  "9": "ninth",
  "11": "eleventh",
  "13": "thirteenth",
};

/**
 * A chord of "name degree" pairs, all stated: chord("F13", "dominant", "F 1, A 3, C 5, Eb b7, D 13").
 * The first is the root; `bass` makes it a slash chord.
 */
export function chord(display: string, family: ChordFamily, tones: string, bass?: string): Chord {
  const pairs = tones.split(",").map((pair) => pair.trim().split(" "));
  const [rootName = "C"] = pairs[0] ?? [];
  const rootPitchClass = pitchClass(keyOf(rootName));
  const chordTones = pairs
    .filter((pair) => pair.length === 2)
    .map(([name = "", degree = ""]): ChordTone => ({
      spelled: spelledPitchClass(name),
      name,
      pitchClass: pitchClass(keyOf(name)),
      aboveRoot: pitchClass(keyOf(name) - rootPitchClass),
      degree,
      role: ROLES[degree.replace(/[b#]/g, "")] ?? "root",
      kind: "stated",
      isAltered: false,
      isNaturalTension: false,
    }));
  return {
    written: display,
    symbol: display,
    display,
    family,
    root: spelledPitchClass(rootName),
    rootPitchClass,
    bass: spelledPitchClass(bass ?? rootName),
    bassPitchClass: pitchClass(keyOf(bass ?? rootName)),
    hasSlashBass: bass !== undefined,
    tones: chordTones,
    printedExtras: [],
    choices: [],
  };
}

export const F13 = chord("F13", "dominant", "F 1, G 9, A 3, C 5, D 13, Eb b7");

/** Six notes over 33 semitones for thirteen horns. */
export const WIDE_F13 = voicing(
  "tpt1=D5 tpt2=D5 tpt3=G4 tpt4=C4 tbn1=G4 tbn2=C4 tbn3=A3 btbn=F2 " +
    "alto1=D5 alto2=Eb4 tenor1=G4 tenor2=A3 bari=F2",
);
