/** A MusicXML chord kind. */
export interface ChordKindRow {
  readonly kind: string;
  /** Its degrees, counted as in a chord symbol, ASCII. */
  readonly degrees: readonly string[];
  /** The symbol that people write for it, without the root; undefined where there is none. */
  readonly suffix?: string;
}

const row = (kind: string, degrees: string, suffix?: string): ChordKindRow =>
  Object.freeze({
    kind,
    degrees: degrees === "" ? [] : degrees.split(" "),
    ...(suffix === undefined ? {} : { suffix }),
  });

/**
 * Chord kinds with their degrees.
 * Source: W3C MusicXML 4.0, kind-value: each kind as its text there spells it out.
 */
export const chordKinds: readonly ChordKindRow[] = Object.freeze([
  row("major", "1 3 5", ""),
  row("minor", "1 b3 5", "m"),
  row("augmented", "1 3 #5", "+"),
  row("diminished", "1 b3 b5", "dim"),
  row("dominant", "1 3 5 b7", "7"),
  row("major-seventh", "1 3 5 7", "maj7"),
  row("minor-seventh", "1 b3 5 b7", "m7"),
  row("diminished-seventh", "1 b3 b5 bb7", "dim7"),
  row("augmented-seventh", "1 3 #5 b7", "7(#5)"),
  row("half-diminished", "1 b3 b5 b7", "m7(b5)"),
  row("major-minor", "1 b3 5 7", "m(maj7)"),
  row("major-sixth", "1 3 5 6", "6"),
  row("minor-sixth", "1 b3 5 6", "m6"),
  row("dominant-ninth", "1 3 5 b7 9", "9"),
  row("major-ninth", "1 3 5 7 9", "maj9"),
  row("minor-ninth", "1 b3 5 b7 9", "m9"),
  row("dominant-11th", "1 3 5 b7 9 11", "11"),
  row("major-11th", "1 3 5 7 9 11", "maj11"),
  row("minor-11th", "1 b3 5 b7 9 11", "m11"),
  row("dominant-13th", "1 3 5 b7 9 11 13", "13"),
  row("major-13th", "1 3 5 7 9 11 13", "maj13"),
  row("minor-13th", "1 b3 5 b7 9 11 13", "m13"),
  row("suspended-second", "1 2 5", "sus2"),
  row("suspended-fourth", "1 4 5", "sus4"),
  row("power", "1 5", "5"),
  row("pedal", "1"),
  row("other", "1"),
  row("none", "", "N.C."),
]);

/**
 * The kind that a symbol's first part is written as; what it lacks or has too much is told by
 * degrees. Suspended sevenths are kinds of the suspension with the seventh added.
 * Source: W3C MusicXML 4.0, kind and degree; the choice of the nearest kind is judgement.
 */
export const kindOfBasic: Readonly<Record<string, string>> = Object.freeze({
  "": "major",
  "5": "power",
  "6": "major-sixth",
  "69": "major-sixth",
  "7": "dominant",
  "7alt": "dominant",
  "9": "dominant-ninth",
  "11": "dominant-11th",
  "13": "dominant-13th",
  maj7: "major-seventh",
  maj9: "major-ninth",
  maj11: "major-11th",
  maj13: "major-13th",
  m: "minor",
  m6: "minor-sixth",
  m69: "minor-sixth",
  m7: "minor-seventh",
  m9: "minor-ninth",
  m11: "minor-11th",
  m13: "minor-13th",
  "m(maj7)": "major-minor",
  "m(maj9)": "major-minor",
  "m(maj11)": "major-minor",
  "m(maj13)": "major-minor",
  dim: "diminished",
  dim7: "diminished-seventh",
  dim9: "diminished-seventh",
  dim11: "diminished-seventh",
  dim13: "diminished-seventh",
  "dim(maj7)": "diminished",
  "dim(maj9)": "diminished",
  "+": "augmented",
});
