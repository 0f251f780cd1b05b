import { readChord } from "../../../src/theory/read-chord.ts";
import type { Chord } from "../../../src/theory/index.ts";
import type { Problem } from "../../../src/base/index.ts";

/** A chord that must be readable. */
export function chord(symbol: string): Chord {
  const read = readChord(symbol);
  if (!read.ok) throw new Error(`${symbol}: ${read.problem.message}`);
  return read.value;
}

/** The problem of a symbol that must be refused. */
export function refused(symbol: string): Problem {
  const read = readChord(symbol);
  if (read.ok) throw new Error(`${symbol} was read as ${read.value.symbol}`);
  return read.problem;
}

/** Tones that the symbol states or implies, without a slash bass foreign to the chord. */
export const plainTones = ({ tones }: Chord) =>
  tones.filter(({ kind, role }) => (kind === "stated" || kind === "implied") && role !== "bass");

/** Degrees of those tones, from the root upwards within the octave: "1 3 5 b7". */
export const degrees = (symbol: string) =>
  plainTones(chord(symbol))
    .map((tone) => tone.degree)
    .join(" ");

/** Names of those tones. */
export const names = (symbol: string) =>
  plainTones(chord(symbol))
    .map((tone) => tone.name)
    .join(" ");

/** Degrees of one kind. */
export const degreesOfKind = (symbol: string, kind: string) =>
  chord(symbol)
    .tones.filter((tone) => tone.kind === kind)
    .map((tone) => tone.degree)
    .join(" ");

/** Pieces from which symbols are put together at random; not every mixture can be read. */
export const qualities = [
  "",
  "m",
  "-",
  "maj",
  "M",
  "Δ",
  "dim",
  "°",
  "ø",
  "+",
  "aug",
  "m(maj7)",
] as const;
export const numbers = ["", "2", "5", "6", "69", "7", "9", "11", "13", "6/9"] as const;
export const tails = [
  "",
  "sus",
  "sus4",
  "sus2",
  "alt",
  "b5",
  "#5",
  "b9",
  "(#9)",
  "(b9,b13)",
  "#11",
  "(b9,#9)",
  "(add9)",
  "add11",
  "(addb13)",
  "no3",
  "(no5)",
  "+",
] as const;
export const roots = ["C", "Db", "F#", "Bb", "Ab", "E", "G#", "Cb", "B#", "Ebb", "F##"] as const;
export const basses = ["", "", "", "/E", "/Bb", "/F#", "/C"] as const;
