import { quantity } from "../../base/index.ts";
import type { Transposition } from "../../band/index.ts";
import type { Reading } from "../../notation/index.ts";
import type { Key } from "../../theory/index.ts";
import { keyOfFifths } from "./key-of-fifths.ts";
import { where, type Gathering, type Walk } from "./walk.ts";
import { childOf, textOfChild, wholeOfChild, type XmlElement } from "./xml-reader.ts";

/**
 * Takes divisions, key, metre, clef and transposition into the walk.
 * @param element - the attributes element
 * @param walk - changed
 * @param bar - the bar it stands in
 */
export function readAttributes(element: XmlElement, walk: Walk, bar: Gathering): void {
  const divisions = wholeOfChild(element, "divisions");
  if (divisions !== undefined && divisions > 0) walk.scale = walk.division / divisions;
  const key = childOf(element, "key");
  if (key !== undefined) readKey(key, walk, bar);
  const time = childOf(element, "time");
  if (time !== undefined) readTime(time, walk, bar);
  const clef = childOf(element, "clef");
  if (clef !== undefined) walk.clef ??= textOfChild(clef, "sign") === "F" ? "bass" : "treble";
  const transpose = childOf(element, "transpose");
  const forPart = childOf(element, "for-part");
  const partTranspose = forPart && childOf(forPart, "part-transpose");
  if (transpose !== undefined) {
    walk.transposition = readTransposition(transpose);
    walk.toSounding = readingFrom(walk.transposition);
  } else if (partTranspose !== undefined) walk.transposition = readTransposition(partTranspose);
  const partClef = forPart && childOf(forPart, "part-clef");
  if (partClef !== undefined) walk.clef = textOfChild(partClef, "sign") === "F" ? "bass" : "treble";
}

function readKey(key: XmlElement, walk: Walk, bar: Gathering): void {
  const count = wholeOfChild(key, "fifths");
  if (count === undefined || Math.abs(count) > 7)
    return walk.remark(`${where(walk, bar)}: an unusual key signature was left out.`);
  walk.fifths = { count, mode: textOfChild(key, "mode") ?? "major" };
}

function readTime(time: XmlElement, walk: Walk, bar: Gathering): void {
  const beats = (textOfChild(time, "beats") ?? "")
    .split("+")
    .reduce((sum, part) => sum + Number(part), 0);
  const beatType = wholeOfChild(time, "beat-type") ?? 0;
  const isUsual = Number.isInteger(beats) && beats >= 1 && beats <= 32;
  if (!isUsual || ![1, 2, 4, 8, 16, 32].includes(beatType))
    return walk.remark(`${where(walk, bar)}: a time signature that cannot be used was left out.`);
  walk.metre = { beats, beatType };
}

function readTransposition(element: XmlElement): Transposition {
  const chromatic = bounded(wholeOfChild(element, "chromatic") ?? 0);
  const octaveChange = bounded(wholeOfChild(element, "octave-change") ?? 0);
  const diatonic = bounded(wholeOfChild(element, "diatonic") ?? Math.round((chromatic * 7) / 12));
  return { diatonic, chromatic: quantity(chromatic), octaveChange };
}

const bounded = (value: number): number => Math.max(-48, Math.min(48, value));

const readingFrom = ({ diatonic, chromatic, octaveChange }: Transposition): Reading => ({
  steps: quantity(diatonic + 7 * octaveChange),
  semitones: quantity(chromatic + 12 * octaveChange),
});

/**
 * The key that holds now, at concert pitch.
 * @param walk - the walk
 * @returns null without a signature
 */
export function concertKey({ fifths, toSounding }: Walk): Key | null {
  if (fifths === undefined || fifths.mode === "none") return null;
  const added = 7 * toSounding.semitones - 12 * toSounding.steps;
  const count = fifths.count + added;
  // A part in more than six signs is written enharmonically, so its concert key is so too.
  const isEnharmonic = added !== 0 && Math.abs(count) > 6;
  return keyOfFifths(isEnharmonic ? count - 12 * Math.sign(count) : count, fifths.mode);
}
