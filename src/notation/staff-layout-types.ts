import type { Count, Quantity, SoundingMidi } from "../base/index.ts";
import type { SpelledPitch } from "../theory/index.ts";
import type { Clef, SectionId } from "../band/index.ts";

/** `grand`: every note once on treble and bass staff. `by-player`: one staff a player. */
export type StaffView = "grand" | "by-player";

/** `concert`: as it sounds. `written`: as each player reads it. */
export type StaffPitch = "concert" | "written";

/** Half-spaces above the bottom line of a five-line staff: 0 bottom line, 8 top line. */
export type StaffStep = Quantity<"half-spaces above the bottom line">;

/** Letter steps; a second is 1, an octave 7. */
export type DiatonicSteps = Quantity<"letter steps">;

/** Sign in front of a note head. There is no key signature, so what is altered shows its sign. */
export type AccidentalSign = "none" | "natural" | "flat" | "sharp" | "double-flat" | "double-sharp";

/** A player as a staff or a note names one. */
export interface StaffPlayer {
  readonly id: string;
  readonly name: string;
  readonly abbreviation: string;
  readonly section: SectionId;
}

/** One note head. */
export interface StaffNote {
  /** As it stands on this staff: written spelling on a written staff. */
  readonly spelled: SpelledPitch;
  readonly sounding: SoundingMidi;
  readonly step: StaffStep;
  /** Ledger lines the head needs, above or below the staff. */
  readonly ledgerLines: Count;
  /** Head widths to the right of the chord's own place: 0, or 1 and more where seconds crowd. */
  readonly column: Count;
  readonly sign: AccidentalSign;
  /** Pitch as on this staff, for people: "E♭4". */
  readonly name: string;
  /** What the note is in the chord, ASCII: "b7". */
  readonly degree: string;
  /** The same for people: "♭7". */
  readonly degreeText: string;
  /** Who sounds it, trumpets, trombones, saxes, rhythm; inside a section in line-up order. */
  readonly players: readonly StaffPlayer[];
}

/** One staff with its notes, low to high; empty when nobody sounds there. */
export interface Staff {
  /** "treble" and "bass" on the grand staff, the player's id otherwise. */
  readonly id: string;
  /** Whose staff it is; absent on the grand staff. */
  readonly player?: StaffPlayer;
  readonly clef: Clef;
  /** Chord symbol for whoever reads this staff, with ♭ and ♯. */
  readonly chordSymbol: string;
  readonly notes: readonly StaffNote[];
}

/** A voicing ready to be drawn: nothing here depends on a screen. */
export interface StaffLayout {
  readonly view: StaffView;
  readonly pitch: StaffPitch;
  /** Concert chord symbol, with ♭ and ♯. */
  readonly chordSymbol: string;
  /** Top to bottom: treble and bass, or the players in score order. */
  readonly staves: readonly Staff[];
  /** A few words: "F13, grand staff, concert pitch". */
  readonly title: string;
  /** The whole voicing in words, for those who do not see the drawing. */
  readonly description: string;
}
