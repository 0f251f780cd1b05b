/*
 * What the parsing library gives for a tune, as far as it is used here. Its own types leave out chord
 * symbols and tuplets, so the form is stated here and every field is taken as possibly missing.
 */

/** A note head; `pitch` counts letter steps from middle C. */
export interface AbcPitch {
  readonly pitch: number;
  readonly accidental?: string;
  readonly startTie?: object;
  readonly endTie?: boolean;
}

/** One element of a line of music. */
export interface AbcElement {
  readonly el_type: string;
  readonly startChar?: number;
  /** Kind of bar line. */
  readonly type?: string;
  /** Whole notes, a tuplet's shortening left out. */
  readonly duration?: number;
  readonly pitches?: readonly AbcPitch[];
  readonly rest?: { readonly type: string; readonly text?: number };
  readonly chord?: readonly { readonly name: string; readonly position?: string }[];
  readonly startTriplet?: number;
  readonly tripletMultiplier?: number;
  readonly endTriplet?: boolean;
  readonly gracenotes?: readonly object[];
  readonly startEnding?: string;
  readonly endEnding?: boolean;
  /** Of a key element. */
  readonly accidentals?: readonly AbcAccidental[];
}

/** An accidental of a key signature; the letter may be small. */
export interface AbcAccidental {
  readonly acc: string;
  readonly note: string;
}

/** A tune. */
export interface AbcTune {
  readonly lines: readonly {
    readonly staff?: readonly { readonly voices?: readonly (readonly AbcElement[])[] }[];
  }[];
  readonly metaText: {
    readonly title?: string;
    readonly composer?: string | readonly unknown[];
    readonly rhythm?: string;
    readonly tempo?: {
      readonly duration?: readonly number[];
      readonly bpm?: number;
      readonly preString?: string;
    };
  };
  readonly warnings?: readonly string[];
  readonly getMeter: () => {
    readonly type: string;
    readonly value?: readonly { readonly num: string; readonly den?: string }[];
  };
  readonly getKeySignature: () => {
    readonly accidentals?: readonly AbcAccidental[];
    readonly mode?: string;
  };
}
