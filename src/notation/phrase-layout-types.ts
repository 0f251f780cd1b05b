import type { Count } from "../base/index.ts";
import type { Clef, Dynamic, SectionId } from "../band/index.ts";
import type { ArticulationMark } from "../phrase/index.ts";
import type { Divisions, Metre, QuartersPerMinute, SpelledPitch, Tuplet } from "../theory/index.ts";
import type { Beams } from "./beams.ts";
import type { NoteValueName } from "./note-value-table.ts";
import type { AccidentalSign, StaffPitch, StaffPlayer } from "./staff-layout-types.ts";

/** One note head of a phrase. */
export interface PhraseHead {
  /** As it stands on this staff: written spelling on a written staff. */
  readonly spelled: SpelledPitch;
  readonly sign: AccidentalSign;
  /** The sign is not needed by the rule: shown in brackets. */
  readonly isCourtesy: boolean;
  readonly isTiedFrom: boolean;
  readonly isTiedOn: boolean;
  /** Whose note it is; several on a staff that shows a section. */
  readonly playerIds: readonly string[];
}

/** A note, chord or rest of one value. */
export interface PhraseValue {
  /** From the start of the phrase. */
  readonly onset: Divisions;
  readonly length: Divisions;
  readonly value: NoteValueName;
  readonly dots: 0 | 1;
  readonly tuplet?: Tuplet;
  readonly beginsTuplet?: true;
  readonly endsTuplet?: true;
  /** Low to high; empty for a rest. */
  readonly heads: readonly PhraseHead[];
  readonly beams: Beams;
  /** Marks that stand at this value; of tied notes at the first, falls and doits at the last. */
  readonly marks: readonly ArticulationMark[];
  /** Set where the dynamic is news for this staff. */
  readonly dynamic?: Dynamic;
  /** The moment it belongs to; undefined for a rest. */
  readonly momentId?: string;
}

/** A chord symbol over a staff. */
export interface PlacedSymbol {
  readonly onset: Divisions;
  /** For whoever reads this staff, with ♭ and ♯. */
  readonly text: string;
}

/** One bar of one staff. */
export interface PhraseStaffBar {
  /** In order; they fill the bar exactly. Empty: a rest of the whole bar. */
  readonly values: readonly PhraseValue[];
  readonly symbols: readonly PlacedSymbol[];
}

/** One staff through the phrase. */
export interface PhraseStaff {
  /** The player's id, or the name of a group. */
  readonly id: string;
  readonly name: string;
  readonly abbreviation: string;
  readonly section: SectionId;
  readonly players: readonly StaffPlayer[];
  readonly clef: Clef;
  /** Key signature: sharps above 0, flats below. */
  readonly fifths: Count;
  /** One for each bar of the phrase. */
  readonly bars: readonly PhraseStaffBar[];
}

/** A bar of the phrase, the same for every staff. */
export interface PhraseBar {
  /** 0 for the pickup, else from 1. */
  readonly number: Count;
  readonly onset: Divisions;
  readonly end: Divisions;
}

/** A phrase ready to be drawn: nothing here depends on a screen. */
export interface PhraseLayout {
  readonly title: string;
  readonly pitch: StaffPitch;
  /** Word of the style: "Swing". */
  readonly style: string;
  readonly tempo: QuartersPerMinute;
  readonly metre: Metre;
  readonly division: Count;
  readonly bars: readonly PhraseBar[];
  /** Top to bottom, in score order. */
  readonly staves: readonly PhraseStaff[];
}
