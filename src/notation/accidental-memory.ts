import type { Letter, SpelledPitch } from "../theory/index.ts";

/** Names of accidentals by alteration. Source: W3C MusicXML 4.0, accidental-value. */
const NAMES: Readonly<Record<number, string>> = Object.freeze({
  [-2]: "flat-flat",
  [-1]: "flat",
  0: "natural",
  1: "sharp",
  2: "double-sharp",
});
const ORDER_OF_SHARPS = "FCGDAEB";

/** An accidental in front of a note head. */
export interface ShownAccidental {
  readonly name: string;
  /** Not needed by the rule, shown because the letter was otherwise in this bar or the last. */
  readonly isCourtesy: boolean;
}

/** Says which notes of a part show an accidental; goes with the part from bar to bar. */
export interface AccidentalMemory {
  readonly beginBar: (fifths: number) => void;
  /** The accidental to show; undefined where the staff says it already. */
  readonly shown: (pitch: SpelledPitch) => ShownAccidental | undefined;
}

/**
 * A memory for one part.
 * @returns nothing remembered yet
 * @source an accidental holds for its line or space to the end of the bar; courtesy accidentals in
 *   other octaves and in the next bar: common practice, no single source
 */
export function accidentalMemory(): AccidentalMemory {
  let fifths = 0;
  let shownAt = new Map<string, number>();
  let heard = new Map<Letter, number>();
  let heardBefore = new Map<Letter, number>();
  return {
    beginBar: (signature) => {
      fifths = signature;
      shownAt = new Map();
      heardBefore = heard;
      heard = new Map();
    },
    shown: ({ letter, alteration, octave }) => {
      const place = `${letter}${octave}`;
      const signature = signatureOf(letter, fifths);
      const isNeeded = (shownAt.get(place) ?? signature) !== alteration;
      const last = heard.get(letter) ?? heardBefore.get(letter) ?? signature;
      const isFirstHere = !shownAt.has(place);
      shownAt.set(place, alteration);
      heard.set(letter, alteration);
      if (!isNeeded && (last === alteration || !isFirstHere)) return undefined;
      return { name: NAMES[alteration] ?? "natural", isCourtesy: !isNeeded };
    },
  };
}

function signatureOf(letter: string, fifths: number): number {
  const place = ORDER_OF_SHARPS.indexOf(letter);
  if (fifths > 0) return place < fifths ? 1 : 0;
  return 6 - place < -fifths ? -1 : 0;
}
