/**
 * The listening examples of the README, two by two. Source: our own synthesis of our own answers;
 * the scenario, a made-up rehearsal that tries one long chord in twelve ways, is ours too. Nothing
 * is recorded, nothing is by others.
 */
import type { Count } from "../base/index.ts";
import type { Dynamic } from "../band/index.ts";

/** A way of choosing two voicings; sample-finders.ts says how each goes about it. */
export type FinderId =
  | "narrow and wide"
  | "few and many players"
  | "few and many notes"
  | "by section and across"
  | "low and higher ninth"
  | "covered and heard flute";

/** Two recordings that differ in one thing. */
export interface SamplePair {
  /** Names of the files without their ending, in the order in which they are best heard. */
  readonly names: readonly [first: string, second: string];
  readonly find: FinderId;
  readonly chord: string;
  /** Sounding, with its octave. */
  readonly melody: string;
  readonly dynamic: Dynamic;
  /** Different notes in both, where the finder asks for a number. */
  readonly notes?: Count;
  /** Span of both in semitones, where the finder asks for one. */
  readonly span?: Count;
  /** How the two were found, for SOURCES.md. */
  readonly foundBy: string;
  /** Measures that must be equal in both, by id. */
  readonly equal: readonly string[];
  /** The measure that tells them apart, by id, and by how much at least. */
  readonly differs: { readonly id: string; readonly atLeast: number };
}

/** Every pair, in the order in which they are best heard. */
export const samplePairs: readonly SamplePair[] = Object.freeze([
  {
    names: ["tight", "wide"],
    find: "narrow and wide",
    chord: "F13",
    melody: "D5",
    dynamic: "f",
    notes: 7,
    foundBy: "of all textures of seven notes for the whole band, the narrowest and the widest",
    equal: ["players", "notes", "weight"],
    differs: { id: "span", atLeast: 12 },
  },
  {
    names: ["light", "heavy"],
    find: "few and many players",
    chord: "Ebmaj9",
    melody: "Bb4",
    dynamic: "f",
    notes: 5,
    span: 19,
    foundBy:
      "of all textures of five notes from E♭3 up, the two with the very same notes whose numbers of players lie furthest apart",
    equal: ["span", "notes", "density"],
    differs: { id: "weight", atLeast: 20 },
  },
  {
    names: ["sparse", "dense"],
    find: "few and many notes",
    chord: "Gm9",
    melody: "D5",
    dynamic: "f",
    foundBy:
      "of all textures for the whole band, the two of one span whose numbers of different notes lie furthest apart",
    equal: ["players", "span", "weight"],
    differs: { id: "density", atLeast: 1.5 },
  },
  {
    names: ["by-section", "across-sections"],
    find: "by section and across",
    chord: "F13",
    melody: "D5",
    dynamic: "f",
    notes: 7,
    foundBy:
      "of all textures of seven notes for the whole band whose best voicings by section and crossed have the very same notes, the one where they interlock most",
    equal: ["players", "span", "notes", "weight"],
    differs: { id: "interleaving", atLeast: 0.4 },
  },
  {
    names: ["low-mud", "clear"],
    find: "low and higher ninth",
    chord: "C9",
    melody: "D3",
    dynamic: "mf",
    foundBy:
      "the dominant ninth for four trombones, root to ninth, in the key where it is muddiest low down; then an octave higher",
    equal: ["players", "span", "notes"],
    differs: { id: "mud", atLeast: 0.3 },
  },
  {
    names: ["covered-flute", "heard-flute"],
    find: "covered and heard flute",
    chord: "C6",
    melody: "G4",
    dynamic: "mf",
    foundBy:
      "three trumpets stay as they are; of the chord's tones within two octaves from the lead up, the flute takes the one where it is heard least, and the one where it is heard best",
    equal: ["players", "weight"],
    differs: { id: "heard", atLeast: 1 },
  },
]);
