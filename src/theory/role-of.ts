import type { AboveRoot, Chord, ChordFamily, ChordPart, ChordTone } from "./chord-types.ts";

const SIXTH_FAMILIES: ReadonlySet<ChordFamily> = new Set(["sixth", "minor-sixth"]);
const FOURTH_FAMILIES: ReadonlySet<ChordFamily> = new Set([
  "suspended-fourth",
  "dominant-suspended",
]);

/**
 * Which part a note plays in a chord, as the cost tables ask for it. A bass that is foreign to the
 * chord above acts as its root; notes that are only avoided count as foreign.
 * @param aboveRoot - semitones above the root, 0 to 11
 * @param chord - the chord
 * @returns R, 3, 5, 7, T (natural tension), A (altered tension) or X (foreign)
 */
export function roleOf(aboveRoot: AboveRoot, chord: Chord): ChordPart {
  const tone = chord.tones.find((one) => one.aboveRoot === aboveRoot);
  if (tone === undefined || tone.kind === "avoid") return "X";
  if (tone.role === "root" || tone.role === "fifth") return tone.role === "root" ? "R" : "5";
  if (tone.role === "bass") return bassPart(tone);
  const isOwn = tone.kind === "stated" || tone.kind === "implied";
  if (isOwn && isThird(tone, chord)) return "3";
  if (isOwn && isSeventh(tone, chord)) return "7";
  return tone.isAltered ? "A" : "T";
}

function bassPart(tone: ChordTone): ChordPart {
  if (tone.isAltered) return "A";
  return tone.degree === "9" || tone.degree === "11" || tone.degree === "13" ? "T" : "R";
}

/** The third, or the second or fourth in its place; not the third on top of a suspended chord. */
function isThird(tone: ChordTone, { family }: Chord): boolean {
  if (FOURTH_FAMILIES.has(family)) return tone.aboveRoot === 5;
  return tone.role === "third" || tone.role === "suspended-second";
}

/** The seventh, or the sixth of a sixth chord; not the major seventh on top of a diminished one. */
function isSeventh(tone: ChordTone, { family }: Chord): boolean {
  if (SIXTH_FAMILIES.has(family)) return tone.degree === "6";
  return tone.role === "seventh" && !(family === "diminished-seventh" && tone.degree === "7");
}
