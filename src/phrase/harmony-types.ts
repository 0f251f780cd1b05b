import type { Chord, Divisions, HeardNote } from "../theory/index.ts";

/** Ways to harmonise a short note that steps into the next. */
export type ApproachTechnique = "chromatic" | "diatonic" | "parallel" | "dominant" | "diminished";

/** What a melody note is in its chord and key. */
export type NoteKind = "chord-tone" | "tension" | "scale-tone" | "outside";

/** How many notes stand under a melody note: harmony, or everyone on the melody. */
export type NoteTexture = "harmony" | "unison" | "octaves";

/** What the user decided for one note; what is left out is chosen automatically. */
export interface NoteChoice {
  readonly role?: "target" | "approach";
  readonly technique?: ApproachTechnique;
  readonly texture?: NoteTexture;
  /** A chord of its own for this note, as typed. */
  readonly chordText?: string;
  /** Whether the note takes the chord that follows. */
  readonly takesComing?: boolean;
}

/** Choices by note id. */
export type NoteChoices = Readonly<Record<string, NoteChoice>>;

/** Why a note is what it is, for people. */
export interface Harmonised {
  readonly note: HeardNote;
  readonly role: "target" | "approach";
  readonly texture: NoteTexture;
  /** What sounds under the note. */
  readonly chord: Chord;
  /** What the song has there. */
  readonly main: Chord;
  readonly kind: NoteKind;
  /** Of approach notes only. */
  readonly technique?: ApproachTechnique;
  /** The note takes the chord that begins at this time. */
  readonly anticipates?: Divisions;
  /** One sentence: why this chord. */
  readonly reason: string;
}
