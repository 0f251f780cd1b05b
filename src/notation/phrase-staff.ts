import { quantity, type Count } from "../base/index.ts";
import type { Dynamic } from "../band/index.ts";
import { dynamicAt, type ArticulationMark, type PartNote, type Phrase } from "../phrase/index.ts";
import type { Divisions, SpelledPitch } from "../theory/index.ts";
import { accidentalMemory, type AccidentalMemory } from "./accidental-memory.ts";
import { stretchesOf } from "./bar-stretches.ts";
import type { BarShape } from "./bar-shape-types.ts";
import { beamsOf } from "./beams.ts";
import { writtenValues, type WrittenValue } from "./note-values.ts";
import type { PhraseBar, PhraseHead, PhraseStaffBar, PhraseValue } from "./phrase-layout-types.ts";
import type { AccidentalSign } from "./staff-layout-types.ts";

/** A note with whoever plays it. */
export interface StaffHead {
  readonly note: PartNote;
  readonly playerIds: readonly string[];
}

/** What sounds on a staff from one time to another: a note, or a chord. */
export interface StaffStretch {
  readonly from: Divisions;
  readonly to: Divisions;
  /** Low to high. */
  readonly heads: readonly StaffHead[];
}

/** How a staff reads what sounds. */
export interface StaffWriting {
  readonly fifths: Count;
  /** Sounding spelling as it stands on the staff. */
  readonly spell: (note: PartNote) => SpelledPitch;
}

/** Marks that stand at the end of a note that is tied over several values. */
const atTheEnd: readonly ArticulationMark[] = ["fall", "doit"];

const signs: Readonly<Record<string, AccidentalSign>> = Object.freeze({
  "flat-flat": "double-flat",
  flat: "flat",
  natural: "natural",
  sharp: "sharp",
  "double-sharp": "double-sharp",
});

/**
 * A staff through the phrase: bars filled with notes, ties, dots, tuplets, beams and rests, with the
 * accidentals, marks and dynamics each needs.
 * @param stretches - what sounds, in order, none overlapping
 * @param bars - the bars
 * @param phrase - metre, division, dynamics
 * @param writing - key signature and spelling
 * @returns one entry a bar, without chord symbols
 * @source grouping by beats, accidentals to the end of the bar: common practice, no single source
 */
export function staffBars(
  stretches: readonly StaffStretch[],
  bars: readonly PhraseBar[],
  phrase: Phrase,
  writing: StaffWriting,
): readonly Pick<PhraseStaffBar, "values">[] {
  const memory = accidentalMemory();
  const louder = dynamicMemory(phrase);
  return bars.map((bar) => {
    memory.beginBar(writing.fifths);
    const inside = stretches.filter(({ from, to }) => from < bar.end && to > bar.onset);
    return { values: barValues(inside, bar, phrase, { writing, memory, louder }) };
  });
}

interface Tools {
  readonly writing: StaffWriting;
  readonly memory: AccidentalMemory;
  /** The dynamic at a note where it is news. */
  readonly louder: (onset: Divisions) => Dynamic | undefined;
}

function dynamicMemory({ dynamics }: Phrase): Tools["louder"] {
  let shown: Dynamic | undefined;
  return (onset) => {
    const dynamic = dynamicAt(dynamics, onset);
    if (dynamic === shown) return undefined;
    shown = dynamic;
    return dynamic;
  };
}

function barValues(
  inside: readonly StaffStretch[],
  bar: PhraseBar,
  { melody }: Phrase,
  tools: Tools,
): readonly PhraseValue[] {
  if (inside.length === 0) return [];
  const length = bar.end - bar.onset;
  const stretches = stretchesOf(
    inside.map(({ from, to }) => ({
      from: Math.max(0, from - bar.onset),
      to: Math.min(length, to - bar.onset),
    })),
    length,
  );
  const { metre, division } = melody;
  const full = (metre.beats * 4 * division) / metre.beatType;
  const shape: BarShape = { metre, division, offset: bar.number === 0 ? full - length : 0 };
  const sounding = inside.values();
  const owners = stretches.map(({ isRest }) => (isRest ? undefined : sounding.next().value));
  const values = writtenValues(stretches, shape);
  const beams = beamsOf(
    values.map((value) => ({ ...value, isRest: owners[value.stretch] === undefined })),
    shape,
  );
  return values.map((value, index) => ({
    ...placedValue(value, owners[value.stretch], bar, tools),
    beams: beams[index] ?? [],
  }));
}

function placedValue(
  written: WrittenValue,
  owner: StaffStretch | undefined,
  bar: PhraseBar,
  tools: Tools,
): Omit<PhraseValue, "beams"> {
  const { length, value, dots, tuplet, beginsTuplet, endsTuplet } = written;
  const onset = quantity<Divisions>(bar.onset + written.from);
  const base = {
    onset,
    length: quantity<Divisions>(length),
    value,
    dots,
    ...(tuplet ? { tuplet } : {}),
    ...(beginsTuplet ? { beginsTuplet } : {}),
    ...(endsTuplet ? { endsTuplet } : {}),
  };
  const [first] = owner?.heads ?? [];
  if (!owner || !first) return { ...base, heads: [], marks: [] };
  const end = onset + length;
  const isFirst = owner.heads.some(({ note }) => note.onset === onset);
  const isLast = end === owner.to;
  const marks = first.note.marks.filter((mark) => (atTheEnd.includes(mark) ? isLast : isFirst));
  const dynamic = isFirst ? tools.louder(onset) : undefined;
  return {
    ...base,
    heads: owner.heads.map((head) => headAt(head, onset, end, tools)),
    marks,
    ...(dynamic ? { dynamic } : {}),
    momentId: first.note.momentId,
  };
}

function headAt(
  { note, playerIds }: StaffHead,
  onset: number,
  end: number,
  { writing, memory }: Tools,
): PhraseHead {
  const spelled = writing.spell(note);
  const isTiedFrom = note.onset < onset;
  const shown = isTiedFrom ? undefined : memory.shown(spelled);
  return {
    spelled,
    sign: shown ? (signs[shown.name] ?? "none") : "none",
    isCourtesy: shown?.isCourtesy ?? false,
    isTiedFrom,
    isTiedOn: note.onset + note.duration > end,
    playerIds,
  };
}
