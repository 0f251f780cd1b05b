import type { Count } from "../../base/index.ts";
import type { SpelledPitch } from "../../theory/index.ts";
import {
  accidentalMemory,
  beamsOf,
  concertClef,
  type AccidentalMemory,
} from "../../notation/index.ts";
import { spelledToMidi } from "../../theory/index.ts";
import type { Clef, Transposition } from "../../band/index.ts";
import { fullLength, placedBars, type PlacedBar } from "../score/score-times.ts";
import type { ScoreModel, ScorePart } from "../score/score-model.ts";
import { barValues, noteGroups, type NoteGroup, type PlacedValue } from "./bar-notes.ts";
import type { PlacedChord, ScorePitch, StaffReading } from "./staff-reading.ts";
import { leftBarline, rightBarline } from "./write-barlines.ts";
import {
  partDirection,
  rehearsalDirection,
  tempoDirection,
  wordsOverScore,
} from "./write-directions.ts";
import { harmonyElement } from "./write-harmony.ts";
import { barRest, noteElements } from "./write-note.ts";
import { xml, xmlText, type XmlOut } from "./xml-writer.ts";

/** Everything that is known while one part is written. */
export interface PartWork {
  readonly score: ScoreModel;
  readonly part: ScorePart;
  readonly pitch: ScorePitch;
  readonly reading: StaffReading;
  /** Chords that this part shows. */
  readonly chords: readonly PlacedChord[];
  /** The part over which tempo, rehearsal marks and words stand. */
  readonly isTop: boolean;
}

/**
 * One part, bar by bar.
 * @param work - score, part and how it is read
 * @returns the part element
 */
export function partElement(work: PartWork): XmlOut {
  const { score, part } = work;
  const bars = placedBars(score);
  const groups = noteGroups(part);
  const memory = accidentalMemory();
  const measures = bars.map((placed, index) =>
    xml(
      "measure",
      { number: placed.number, implicit: placed.bar.isPickup ? "yes" : undefined },
      leftBarline(placed.number, score.repeats),
      attributes(work, placed, bars[index - 1]),
      ...overTheBar(work, placed),
      ...barContent(work, placed, groups, memory),
      ...(index === bars.length - 1 ? standingOver(work, placed, placed.end, Infinity) : []),
      rightBarline(placed.number, score.repeats, index === bars.length - 1),
    ),
  );
  return xml("part", { id: part.id }, ...measures);
}

function attributes(
  work: PartWork,
  { bar }: PlacedBar,
  before: PlacedBar | undefined,
): XmlOut | undefined {
  const { score, reading } = work;
  const isFirst = before === undefined;
  const isSameMetre =
    before?.bar.metre.beats === bar.metre.beats && before.bar.metre.beatType === bar.metre.beatType;
  const isSameKey = !isFirst && JSON.stringify(before.bar.key) === JSON.stringify(bar.key);
  if (isSameMetre && isSameKey) return undefined;
  const { key, metre } = bar;
  const keyElement = xml(
    "key",
    {},
    xmlText("fifths", key === null ? 0 : reading.fifths(key)),
    xmlText("mode", key === null ? "none" : key.mode),
  );
  return xml(
    "attributes",
    {},
    isFirst ? xmlText("divisions", score.division) : undefined,
    isSameKey ? undefined : keyElement,
    isSameMetre
      ? undefined
      : xml("time", {}, xmlText("beats", metre.beats), xmlText("beat-type", metre.beatType)),
    ...(isFirst ? [clefElement("clef", staffClef(work)), ...transposition(work)] : []),
  );
}

/** Clef of the staff: the part's own, or what fits the lowest note at concert pitch. */
function staffClef({ part, pitch, reading }: PartWork): Clef {
  const { notes, clef, transposition: own } = part;
  if (pitch === "written" || notes.length === 0) return clef;
  const lowest = notes.reduce((low, note) =>
    spelledToMidi(note.pitch) < spelledToMidi(low.pitch) ? note : low,
  );
  return concertClef(reading.pitch(lowest.pitch, lowest.onset, null), clef, own);
}

function clefElement(name: "clef" | "part-clef", clef: Clef): XmlOut {
  const [sign, line] = clef === "bass" ? ["F", 4] : ["G", 2];
  return xml(name, {}, xmlText("sign", sign!), xmlText("line", line!));
}

/** A concert score keeps the part's interval for the day the parts are drawn out of it. */
function transposition({ part, pitch }: PartWork): readonly XmlOut[] {
  const { transposition: own, clef } = part;
  if (own.chromatic === 0 && own.octaveChange === 0) return [];
  if (pitch === "written" || own.chromatic === 0)
    return [xml("transpose", {}, ...intervalElements(own))];
  return [
    xml(
      "for-part",
      {},
      clefElement("part-clef", clef),
      xml("part-transpose", {}, ...intervalElements(own)),
    ),
  ];
}

const intervalElements = ({
  diatonic,
  chromatic,
  octaveChange,
}: Transposition): readonly (XmlOut | undefined)[] => [
  xmlText("diatonic", diatonic),
  xmlText("chromatic", chromatic),
  octaveChange === 0 ? undefined : xmlText("octave-change", octaveChange),
];

function overTheBar(work: PartWork, { bar, start }: PlacedBar): readonly XmlOut[] {
  if (!work.isTop) return [];
  return [
    ...(start === 0 ? [tempoDirection(work.score)] : []),
    ...(bar.rehearsal === undefined ? [] : [rehearsalDirection(bar.rehearsal)]),
    ...(bar.words === undefined ? [] : [wordsOverScore(bar.words)]),
  ];
}

function barContent(
  work: PartWork,
  placed: PlacedBar,
  groups: readonly NoteGroup[],
  memory: AccidentalMemory,
): readonly XmlOut[] {
  const { bar, start, end } = placed;
  const { reading, score } = work;
  memory.beginBar(bar.key === null ? 0 : reading.fifths(bar.key));
  const values = barValues(groups, placed, score.division);
  if (values.length === 0) return [...standingOver(work, placed, start, end), barRest(bar.length)];
  const offset = bar.isPickup ? fullLength(bar, score.division) - bar.length : 0;
  const shape = { metre: bar.metre, division: score.division, offset };
  const beams = beamsOf(
    values.map((value) => ({ ...value, from: value.onset - start, isRest: !value.group })),
    shape,
  );
  return values.flatMap((value, index) => [
    ...standingOver(work, placed, value.onset, value.onset + value.length),
    ...noteElements(value, pitchesOf(work, placed, value), memory, beams[index] ?? []),
  ]);
}

function pitchesOf(
  { reading }: PartWork,
  { bar }: PlacedBar,
  { group }: PlacedValue,
): readonly SpelledPitch[] {
  return (group?.notes ?? []).map(({ pitch }) => reading.pitch(pitch, group!.onset, bar.key));
}

/** Chord symbols and directions that fall into a written value, before it. */
function standingOver(
  { reading, chords, part }: PartWork,
  { bar }: PlacedBar,
  from: Count,
  to: Count,
): readonly XmlOut[] {
  const falls = ({ onset }: { readonly onset: Count }): boolean => onset >= from && onset < to;
  return [
    ...chords.filter(falls).map(({ onset, chord }) =>
      harmonyElement({
        chord,
        root: reading.root(chord.root, chord, bar.key),
        bass: reading.root(chord.bass, chord, bar.key),
        offset: onset - from,
      }),
    ),
    ...part.directions.filter(falls).map((each) => partDirection(each, each.onset - from)),
  ];
}
