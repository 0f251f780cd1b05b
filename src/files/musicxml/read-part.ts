import { quantity, type Count, type Semitones } from "../../base/index.ts";
import type { Transposition } from "../../band/index.ts";
import type { Reading } from "../../notation/index.ts";
import type { Metre } from "../../theory/index.ts";
import { concertKey, readAttributes } from "./read-attributes.ts";
import { jumps, readDirection, readSound } from "./read-directions.ts";
import { readHarmony } from "./read-harmony.ts";
import { readNote } from "./read-note.ts";
import type { FileBar, FilePart } from "./reading-types.ts";
import { durationOf, moveBy, where, type Gathering, type Walk } from "./walk.ts";
import { childOf, childrenOf, wholeOfChild, type XmlElement } from "./xml-reader.ts";

/** Unless a file says otherwise. */
const FOUR_FOUR: Metre = Object.freeze({ beats: 4, beatType: 4 });
const NO_TRANSPOSITION: Transposition = Object.freeze({
  diatonic: 0,
  chromatic: quantity<Semitones>(0),
  octaveChange: 0,
});
const AS_IT_STANDS: Reading = { steps: quantity(0), semitones: quantity(0) };

/**
 * Walks through a part.
 * @param element - the part element
 * @param name - how the part is named in messages
 * @param division - the score's parts of a quarter note, a multiple of all the file's divisions
 * @param remark - told what was left out
 * @returns its bars at sounding pitch
 * @throws ScoreFault where the part cannot be taken, naming bar and reason
 * @source W3C MusicXML 4.0, part, note, backup, forward, attributes
 */
export function readPart(
  element: XmlElement,
  name: string,
  division: Count,
  remark: (text: string) => void,
): FilePart {
  const walk: Walk = {
    scale: division,
    division,
    metre: FOUR_FOUR,
    fifths: undefined,
    transposition: NO_TRANSPOSITION,
    toSounding: AS_IT_STANDS,
    clef: undefined,
    remark,
    name,
    slurs: new Set(),
  };
  const bars = childrenOf(element, "measure").map((measure, index) =>
    readBar(measure, index, walk),
  );
  const id = element.attributes.get("id") ?? "";
  return { id, bars, transposition: walk.transposition, clef: walk.clef ?? "treble" };
}

function readBar(measure: XmlElement, index: Count, walk: Walk): FileBar {
  const label = measure.attributes.get("number")?.trim() || String(index + 1);
  const bar: Gathering = {
    label,
    at: 0,
    reach: 0,
    chordAt: 0,
    notes: [],
    harmonies: [],
    directions: [],
    endings: [],
    beginsRepeat: false,
    repeatTimes: undefined,
  };
  for (const child of measure.children) readChild(child, walk, bar);
  const { metre, fifths } = walk;
  return {
    ...bar,
    isImplicit: measure.attributes.get("implicit") === "yes",
    metre,
    key: fifths === undefined ? undefined : concertKey(walk),
  };
}

function readChild(child: XmlElement, walk: Walk, bar: Gathering): void {
  switch (child.name) {
    case "attributes":
      return readAttributes(child, walk, bar);
    case "note":
      return readNote(child, walk, bar);
    case "backup":
      return moveBy(-durationOf(child, walk, bar), walk, bar);
    case "forward":
      return moveBy(durationOf(child, walk, bar), walk, bar);
    case "harmony":
      return takeHarmony(child, walk, bar);
    case "direction":
      return takeDirection(child, walk, bar);
    case "sound":
      return takeSound(child, walk, bar);
    case "barline":
      return readBarline(child, bar);
  }
}

function offsetOf(element: XmlElement, { scale }: Walk): number {
  return Math.round((wholeOfChild(element, "offset") ?? 0) * scale);
}

function takeHarmony(element: XmlElement, walk: Walk, bar: Gathering): void {
  const read = readHarmony(element, walk.toSounding);
  if (read === undefined)
    return walk.remark(`${where(walk, bar)}: a chord symbol could not be read and was left out.`);
  if (!read.isExact)
    walk.remark(`${where(walk, bar)}: a chord symbol was read as ${read.chord.display}; check it.`);
  const at = Math.max(0, bar.at + offsetOf(element, walk));
  bar.harmonies.push({ at, symbol: read.chord.symbol });
}

function takeDirection(element: XmlElement, walk: Walk, bar: Gathering): void {
  if (jumps(element)) walk.remark(`${where(walk, bar)}: jumps such as D.C. are not followed.`);
  const at = Math.max(0, bar.at + offsetOf(element, walk));
  for (const what of readDirection(element)) bar.directions.push({ at, what });
}

function takeSound(element: XmlElement, walk: Walk, bar: Gathering): void {
  if (jumps(element)) walk.remark(`${where(walk, bar)}: jumps such as D.C. are not followed.`);
  const what = readSound(element);
  if (what !== undefined) bar.directions.push({ at: bar.at, what });
}

function readBarline(element: XmlElement, bar: Gathering): void {
  const repeat = childOf(element, "repeat");
  const direction = repeat?.attributes.get("direction");
  if (direction === "forward") bar.beginsRepeat = true;
  if (direction === "backward") {
    const times = Number(repeat?.attributes.get("times") ?? 2);
    bar.repeatTimes = Number.isInteger(times) && times >= 2 && times <= 16 ? times : 2;
  }
  const ending = childOf(element, "ending");
  if (ending === undefined) return;
  const passes = (ending.attributes.get("number") ?? "")
    .split(",")
    .map(Number)
    .filter((pass) => Number.isInteger(pass) && pass >= 1 && pass <= 16);
  if (passes.length > 0)
    bar.endings.push({ passes, isStart: ending.attributes.get("type") === "start" });
}
