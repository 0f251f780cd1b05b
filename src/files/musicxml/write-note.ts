import type { SpelledPitch } from "../../theory/index.ts";
import type { ArticulationMark } from "../score/score-model.ts";
import type { AccidentalMemory, Beams } from "../../notation/index.ts";
import { articulationTable } from "./articulation-table.ts";
import type { PlacedValue } from "./bar-notes.ts";
import { xml, xmlText, type XmlOut } from "./xml-writer.ts";

/** Marks that stand at the end of a note that is tied over several values. */
const AT_THE_END: readonly ArticulationMark[] = ["fall", "doit", "breath"];

/**
 * A rest, or the note heads of one written value.
 * @param value - the value
 * @param pitches - as they stand on the staff, low to high; empty for a rest
 * @param memory - which accidentals the bar has shown
 * @param beams - the value's beams
 * @returns one element a note head
 */
export function noteElements(
  value: PlacedValue,
  pitches: readonly SpelledPitch[],
  memory: AccidentalMemory,
  beams: Beams,
): readonly XmlOut[] {
  if (value.group === undefined) return [restElement(value)];
  return pitches.map((pitch, index) => {
    const accidental = value.isTiedFrom ? undefined : memory.shown(pitch);
    return xml(
      "note",
      {},
      index > 0 ? xml("chord", {}) : undefined,
      pitchElement(pitch),
      xmlText("duration", value.length),
      value.isTiedFrom ? xml("tie", { type: "stop" }) : undefined,
      value.isTiedOn ? xml("tie", { type: "start" }) : undefined,
      xmlText("voice", 1),
      ...lengthElements(value),
      accidental &&
        xmlText("accidental", accidental.name, {
          cautionary: accidental.isCourtesy ? "yes" : undefined,
        }),
      timeModification(value),
      ...(index === 0 ? beams.map((beam, n) => xmlText("beam", beam, { number: n + 1 })) : []),
      notations(value, index),
    );
  });
}

/**
 * A rest that fills its bar.
 * @param length - divisions
 * @returns the element
 */
export function barRest(length: number): XmlOut {
  return xml(
    "note",
    {},
    xml("rest", { measure: "yes" }),
    xmlText("duration", length),
    xmlText("voice", 1),
  );
}

function restElement(value: PlacedValue): XmlOut {
  return xml(
    "note",
    {},
    xml("rest", {}),
    xmlText("duration", value.length),
    xmlText("voice", 1),
    ...lengthElements(value),
    timeModification(value),
    notations(value, 0),
  );
}

function pitchElement({ letter, alteration, octave }: SpelledPitch): XmlOut {
  return xml(
    "pitch",
    {},
    xmlText("step", letter),
    alteration === 0 ? undefined : xmlText("alter", alteration),
    xmlText("octave", octave),
  );
}

const lengthElements = ({ value, dots }: PlacedValue): readonly XmlOut[] => [
  xmlText("type", value),
  ...(dots > 0 ? [xml("dot", {})] : []),
];

function timeModification({ tuplet, tupletValue }: PlacedValue): XmlOut | undefined {
  if (tuplet === undefined) return undefined;
  return xml(
    "time-modification",
    {},
    xmlText("actual-notes", tuplet.notes),
    xmlText("normal-notes", tuplet.inTimeOf),
    tupletValue && xmlText("normal-type", tupletValue),
  );
}

function notations(value: PlacedValue, index: number): XmlOut | undefined {
  const isFirstHead = index === 0;
  const { group, isTiedFrom, isTiedOn } = value;
  const found = [
    isTiedFrom && xml("tied", { type: "stop" }),
    isTiedOn && xml("tied", { type: "start" }),
    isFirstHead && group?.endsSlur && !isTiedOn && xml("slur", { type: "stop", number: 1 }),
    isFirstHead && group?.beginsSlur && !isTiedFrom && xml("slur", { type: "start", number: 1 }),
    isFirstHead && value.beginsTuplet && xml("tuplet", { type: "start", number: 1 }),
    isFirstHead && value.endsTuplet && xml("tuplet", { type: "stop", number: 1 }),
    articulations(value, index),
  ].filter((each) => typeof each === "object");
  return found.length === 0 ? undefined : xml("notations", {}, ...found);
}

function articulations({ group, isTiedFrom, isTiedOn }: PlacedValue, index: number) {
  const marks = group?.notes[index]?.marks ?? [];
  const here = articulationTable.filter(([mark]) => {
    const isHere = AT_THE_END.includes(mark) ? !isTiedOn : !isTiedFrom;
    return isHere && marks.includes(mark);
  });
  if (here.length === 0) return undefined;
  return xml("articulations", {}, ...here.map(([, element]) => xml(element, {})));
}
