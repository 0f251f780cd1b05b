import { fail, ok, type Count, type Result } from "../../base/index.ts";
import { instrumentOf } from "../../band/index.ts";
import type { Divisions, QuartersPerMinute } from "../../theory/index.ts";
import type {
  PartDirection,
  ScoreBar,
  ScoreHarmony,
  ScoreModel,
  ScorePart,
} from "../score/score-model.ts";
import { linesOf } from "./heard-parts.ts";
import { partList, type ListedPart } from "./part-list.ts";
import { readPart } from "./read-part.ts";
import { repeatsOf } from "./read-repeats.ts";
import { ScoreFault, type FileBar, type FilePart, type TempoMark } from "./reading-types.ts";
import {
  childOf,
  childrenOf,
  readXml,
  textOfChild,
  wholeOfChild,
  type XmlElement,
} from "./xml-reader.ts";

/** A score from a file, and what could not be kept of it. */
export interface ScoreReading {
  readonly score: ScoreModel;
  /** One sentence each: what was left out or read in another way. */
  readonly remarks: readonly string[];
}

const MOST_PARTS: Count = 200;
const MOST_BARS: Count = 5000;
const MOST_NOTES: Count = 400_000;
const MOST_DIVISION: Count = 100_000;
const MOST_REMARKS: Count = 50;

/**
 * Reads a MusicXML score. Every voice of a part becomes a part of its own; ties are joined; written
 * pitch becomes sounding pitch.
 * @param text - the document
 * @returns the score with remarks on what was left out, or the problem: those of readXml, and
 *   "musicxml-root", "musicxml-timewise", "musicxml-empty", "musicxml-too-large",
 *   "musicxml-division", "musicxml-duration", "musicxml-pitch", "musicxml-backup"
 * @source W3C MusicXML 4.0; files of earlier versions are read alike
 */
export function readMusicXml(text: string): Result<ScoreReading> {
  const document = readXml(text);
  if (!document.ok) return document;
  const root = document.value;
  if (root.name === "score-timewise")
    return fail(
      "musicxml-timewise",
      "This score is ordered by time, not by part; save it as a partwise MusicXML score.",
    );
  if (root.name !== "score-partwise")
    return fail(
      "musicxml-root",
      `This is XML, but not a MusicXML score: it begins with <${root.name.slice(0, 40)}>.`,
    );
  try {
    return readScore(root);
  } catch (fault) {
    if (fault instanceof ScoreFault) return fail(fault.code, fault.message);
    throw fault;
  }
}

function readScore(root: XmlElement): Result<ScoreReading> {
  const elements = childrenOf(root, "part");
  const sizes = elements.map((part) => childrenOf(part, "measure"));
  const bars = Math.max(0, ...sizes.map((measures) => measures.length));
  if (bars === 0) return fail("musicxml-empty", "The score holds no bar.");
  const notes = sizes.flat().reduce((sum, measure) => sum + measure.children.length, 0);
  if (elements.length > MOST_PARTS || bars > MOST_BARS || notes > MOST_NOTES)
    return fail("musicxml-too-large", "The score is too large: take fewer parts or bars.");
  const remarks = new Set<string>();
  const division = commonDivision(sizes.flat());
  const listed = partList(root);
  const parts = elements.map((element, index) => {
    const id = element.attributes.get("id") ?? "";
    const name = listed.get(id)?.name ?? `part ${index + 1}`;
    return readPart(element, name, division, (remark) => remarks.add(remark));
  });
  const score = assembled(root, parts, listed, division, remarks);
  return ok({ score, remarks: [...remarks].slice(0, MOST_REMARKS) });
}

/** The least number of parts of a quarter in which every length of the file is whole. */
function commonDivision(measures: readonly XmlElement[]): Count {
  let common = 1;
  for (const measure of measures)
    for (const attributes of childrenOf(measure, "attributes")) {
      const divisions = wholeOfChild(attributes, "divisions") ?? 1;
      if (divisions > 0) common = (common * divisions) / greatestCommon(common, divisions);
      if (common > MOST_DIVISION)
        throw new ScoreFault(
          "musicxml-division",
          "The score divides its quarter notes more finely than can be read.",
        );
    }
  return common;
}

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}

function assembled(
  root: XmlElement,
  parts: readonly FilePart[],
  listed: ReadonlyMap<string, ListedPart>,
  division: Count,
  remarks: Set<string>,
): ScoreModel {
  // Parts at concert pitch tell key and chords without a detour.
  const plainFirst = [...parts].sort((a, b) => Number(isMoved(a)) - Number(isMoved(b)));
  const bars = scoreBars(parts, plainFirst, division);
  const starts: number[] = [];
  bars.reduce((start, bar) => {
    starts.push(start);
    return start + bar.length;
  }, 0);
  const composer = composerOf(root);
  return {
    title: titleOf(root),
    ...(composer === undefined ? {} : { composer }),
    division,
    ...tempoOf(parts, remarks),
    bars,
    harmonies: harmoniesOf(plainFirst, starts),
    repeats: repeatsOf(
      parts.find((part) => part.bars.some(hasRepeatMark))?.bars ?? [],
      bars[0]?.isPickup ? 0 : 1,
    ),
    parts: scoreParts(parts, listed, starts),
  };
}

const isMoved = ({ transposition }: FilePart): boolean => transposition.chromatic !== 0;
const hasRepeatMark = (bar: FileBar): boolean =>
  bar.repeatTimes !== undefined || bar.beginsRepeat || bar.endings.length > 0;

function titleOf(root: XmlElement): string {
  const work = childOf(root, "work");
  return (work && textOfChild(work, "work-title")) || textOfChild(root, "movement-title") || "";
}

function composerOf(root: XmlElement): string | undefined {
  const identification = childOf(root, "identification");
  const creators = identification ? childrenOf(identification, "creator") : [];
  return creators.find(({ attributes }) => attributes.get("type") === "composer")?.text.trim();
}

function scoreBars(
  parts: readonly FilePart[],
  plainFirst: readonly FilePart[],
  division: Count,
): readonly ScoreBar[] {
  const count = Math.max(...parts.map(({ bars }) => bars.length));
  return Array.from({ length: count }, (_, index) => {
    const here = parts.flatMap(({ bars }) => bars[index] ?? []);
    const { metre } = here[0]!;
    const full = (metre.beats * 4 * division) / metre.beatType;
    const reach = Math.max(...here.map((bar) => bar.reach));
    const length = reach === 0 ? Math.max(1, Math.round(full)) : reach;
    const isShortFirst = index === 0 && count > 1 && length < full;
    const key = plainFirst.map(({ bars }) => bars[index]?.key).find((each) => each !== undefined);
    const over = here.flatMap(({ directions }) => directions.map(({ what }) => what));
    const rehearsal = over.find((what) => "rehearsal" in what)?.rehearsal;
    const words = over.find((what) => "wordsOverScore" in what)?.wordsOverScore;
    return {
      length: length as Divisions,
      metre,
      key: key ?? null,
      ...(isShortFirst ? { isPickup: true as const } : {}),
      ...(rehearsal === undefined ? {} : { rehearsal }),
      ...(words === undefined ? {} : { words }),
    };
  });
}

/** Tempo, style and swing of the first marks; later changes are not kept. */
function tempoOf(
  parts: readonly FilePart[],
  remarks: Set<string>,
): Pick<ScoreModel, "tempo" | "style" | "swing"> {
  const marks = parts
    .flatMap(({ bars }) => bars.flatMap(({ directions }) => directions.map(({ what }) => what)))
    .filter((what): what is TempoMark => "tempo" in what || "swing" in what);
  const first = marks.find(({ tempo }) => tempo !== undefined);
  const swing = marks.find((mark) => mark.swing !== undefined)?.swing;
  if (marks.some(({ tempo }) => tempo !== undefined && tempo !== first?.tempo))
    remarks.add("The tempo changes in the file; the first tempo holds throughout.");
  return {
    tempo: Math.min(1000, first?.tempo ?? 120) as QuartersPerMinute,
    ...(first?.style === undefined ? {} : { style: first.style }),
    ...(swing === undefined ? {} : { swing }),
  };
}

/** Chords of all parts, each time once; a symbol that only says again what holds is kept. */
function harmoniesOf(
  parts: readonly FilePart[],
  starts: readonly number[],
): readonly ScoreHarmony[] {
  const byOnset = new Map<number, string>();
  for (const { bars } of parts)
    bars.forEach((bar, index) => {
      for (const { at, symbol } of bar.harmonies) {
        const onset = starts[index]! + at;
        if (!byOnset.has(onset)) byOnset.set(onset, symbol);
      }
    });
  return [...byOnset]
    .sort(([a], [b]) => a - b)
    .map(([onset, symbol]) => ({ onset: onset as Divisions, symbol }));
}

function scoreParts(
  parts: readonly FilePart[],
  listed: ReadonlyMap<string, ListedPart>,
  starts: readonly number[],
): readonly ScorePart[] {
  const taken = new Set<string>();
  return parts.flatMap((part, index) => {
    const own = listed.get(part.id);
    const id = freshId(/^[A-Za-z][\w.-]{0,40}$/.test(part.id) ? part.id : `P${index + 1}`, taken);
    const instrument = knownInstrument(part, own);
    return linesOf(part, starts).map((notes, line) => ({
      id: line === 0 ? id : freshId(`${id}-${line + 1}`, taken),
      name: (own?.name ?? id) + (line === 0 ? "" : ` (${line + 1})`),
      abbreviation: own?.abbreviation ?? "",
      instrument,
      transposition: part.transposition,
      clef: part.clef,
      notes,
      directions: line === 0 ? directionsOf(part, starts) : [],
    }));
  });
}

function freshId(wanted: string, taken: Set<string>): string {
  let id = wanted;
  for (let number = 2; taken.has(id); number += 1) id = `${wanted}.${number}`;
  taken.add(id);
  return id;
}

/** An instrument counts as known where it transposes as ours does. */
function knownInstrument(part: FilePart, own: ListedPart | undefined): ScorePart["instrument"] {
  if (own === undefined || own.instrument === null) return null;
  const { transposition } = instrumentOf(own.instrument);
  const total = ({ chromatic, octaveChange }: FilePart["transposition"]): number =>
    chromatic + 12 * octaveChange;
  return total(transposition) === total(part.transposition) ? own.instrument : null;
}

function directionsOf(part: FilePart, starts: readonly number[]): readonly PartDirection[] {
  return part.bars.flatMap(({ directions }, index) =>
    directions.flatMap(({ at, what }): PartDirection[] => {
      const onset = (starts[index]! + at) as Divisions;
      if ("dynamic" in what) return [{ onset, dynamic: what.dynamic }];
      return "words" in what ? [{ onset, words: what.words }] : [];
    }),
  );
}
