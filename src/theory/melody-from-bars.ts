import { quantity, type Count } from "../base/index.ts";
import { barLength } from "./melody-place.ts";
import type {
  ChordChange,
  Checked,
  MelodyProblem,
  Divisions,
  Melody,
  MelodyNote,
  Tuplet,
} from "./melody-types.ts";
import type { SpelledPitch } from "./spelled-pitch-types.ts";

/** A fraction of a quarter note: [3, 2] is a dotted quarter, [1, 3] a triplet eighth. */
export type NoteLength = readonly [numerator: Count, denominator: Count];

/** A note or rest as it stands in its bar. */
export interface WrittenItem {
  readonly length: NoteLength;
  /** Left out for a rest. */
  readonly pitch?: SpelledPitch;
  readonly isTied?: boolean;
  readonly tuplet?: Tuplet;
  /** A chord symbol that begins here. */
  readonly chord?: string;
}

/** Notes and rests in order. */
export type WrittenBar = readonly WrittenItem[];

/** What a melody has beside its notes. */
export type MelodyHead = Pick<Melody, "title" | "metre" | "key" | "tempo" | "style"> & {
  readonly repeats?: Melody["repeats"];
};

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}

/**
 * Puts bars one behind the other. A first bar that is too short is the pickup; a last one may be
 * short too and is filled with a rest. Note ids are "n1", "n2" … in order.
 * @param head - title, metre, key, tempo, style
 * @param bars - notes and rests of each bar
 * @returns the melody; or the problems, each naming its bar: `bar-long`, `bar-short`, `bar-length`
 */
export function melodyFromBars(head: MelodyHead, bars: readonly WrittenBar[]): Checked<Melody> {
  const broken = bars.flatMap((bar, index) =>
    bar.every(({ length: [n, d] }) => Number.isInteger(n) && Number.isInteger(d) && n > 0 && d > 0)
      ? []
      : [
          {
            code: "bar-length",
            message: `Bar ${index + 1} holds a note without a length.`,
            bar: index + 1,
          },
        ],
  );
  if (broken.length > 0) return { ok: false, problems: broken };
  const division = divisionFor(head, bars);
  const full = barLength({ division, metre: head.metre, pickup: quantity(0) });
  const lengths = bars.map((bar) =>
    bar.reduce((sum, item) => sum + inDivisions(item, division), 0),
  );
  const first = lengths[0] ?? 0;
  const pickup = bars.length > 1 && first < full ? first : 0;
  const problems = barProblems(head, lengths, full, pickup > 0);
  if (problems.length > 0) return { ok: false, problems };
  const fullBars = bars.length - (pickup > 0 ? 1 : 0);
  const placed = placeItems(bars, division);
  return {
    ok: true,
    value: {
      ...head,
      division,
      pickup: quantity<Divisions>(pickup),
      length: quantity<Divisions>(pickup + fullBars * full),
      ...placed,
      repeats: head.repeats ?? [],
    },
  };
}

const inDivisions = ({ length: [n, d] }: WrittenItem, division: number): number =>
  (n * division) / d;

/** The coarsest division in which every note and every beat is whole. */
function divisionFor(head: MelodyHead, bars: readonly WrittenBar[]): Count {
  const denominators = bars
    .flat()
    .map(({ length }) => length[1] / greatestCommon(length[0], length[1]));
  const all = [Math.max(1, head.metre.beatType / 4), 2, ...denominators];
  return all.reduce((found, next) => (found * next) / greatestCommon(found, next), 1);
}

function barProblems(
  head: MelodyHead,
  lengths: readonly number[],
  full: number,
  hasPickup: boolean,
): readonly MelodyProblem[] {
  const { beats, beatType } = head.metre;
  return lengths.flatMap((length, index) => {
    const bar = index + (hasPickup ? 0 : 1);
    const held = Math.round(((length * beats) / full) * 100) / 100;
    const room = `${beats}/${beatType} has room for ${beats}`;
    if (length > full)
      return [{ code: "bar-long", message: `Bar ${bar} holds ${held} beats, but ${room}.`, bar }];
    const mayBeShort = (index === 0 && hasPickup) || index === lengths.length - 1;
    if (length === full || mayBeShort) return [];
    return [
      { code: "bar-short", message: `Bar ${bar} holds only ${held} beats, but ${room}.`, bar },
    ];
  });
}

function placeItems(
  bars: readonly WrittenBar[],
  division: Count,
): { readonly notes: readonly MelodyNote[]; readonly changes: readonly ChordChange[] } {
  const notes: MelodyNote[] = [];
  const changes: ChordChange[] = [];
  let at = 0;
  for (const item of bars.flat()) {
    const onset = quantity<Divisions>(at);
    const duration = quantity<Divisions>(inDivisions(item, division));
    if (item.chord !== undefined) changes.push({ onset, text: item.chord });
    if (item.pitch)
      notes.push({
        id: `n${notes.length + 1}`,
        onset,
        duration,
        pitch: item.pitch,
        isTied: item.isTied ?? false,
        ...(item.tuplet ? { tuplet: item.tuplet } : {}),
      });
    at += duration;
  }
  return { notes, changes };
}
