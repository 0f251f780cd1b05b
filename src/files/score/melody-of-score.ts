import type { Count } from "../../base/index.ts";
import {
  readMelody,
  spelledToMidi,
  type Divisions,
  type Key,
  type Melody,
  type MelodyNote,
  type MelodyProblem,
  type MelodyStyle,
  type QuartersPerMinute,
} from "../../theory/index.ts";
import {
  stretchesOf,
  tupletWindows,
  type BarShape,
  type Stretch,
  type TupletWindow,
} from "../../notation/index.ts";
import { playedScore } from "./played-score.ts";
import { fullLength, placedBars, type PlacedBar } from "./score-times.ts";
import type { ScoreBar, ScoreModel, ScoreNote } from "./score-model.ts";

/** A melody taken out of a score, and what could not be kept. */
export interface MelodyReading {
  readonly melody: Melody;
  readonly remarks: readonly string[];
}

const SLOWEST = 20;
const FASTEST = 400;
const C_MAJOR: Key = { tonic: { letter: "C", alteration: 0 }, mode: "major" };

/** The melody, or everything that keeps the score from being one. */
export type MelodyAnswer =
  | { readonly ok: true; readonly value: MelodyReading }
  | { readonly ok: false; readonly problems: readonly MelodyProblem[] };

/**
 * The melody of a score: the top notes of the first part that has any, with the chord symbols.
 * Where bars are split at a repeat, the repeats are written out and the bars joined.
 * @param score - a score that was read
 * @returns the melody with remarks, or the problems, each naming its bar: "melody-none",
 *   "melody-metre-changes", "bar-short", "bar-long", or those of readMelody
 */
export function melodyOfScore(score: ScoreModel): MelodyAnswer {
  const part = score.parts.find(({ notes }) => notes.length > 0);
  if (part === undefined)
    return refused([{ code: "melody-none", message: "The score holds no note." }]);
  const remarks: string[] = [];
  if (score.parts.length > 1) remarks.push(`Of ${score.parts.length} lines the first is taken.`);
  const isSplit = irregularBars(score).length > 0;
  const linear = isSplit ? joinedBars(playedScore(score)) : score;
  // A fault is told where it stands on paper, not where repeats carry it.
  const whole = isSplit && irregularBars(linear).length > 0 ? score : linear;
  const problems = barProblems(whole);
  if (problems.length > 0) return refused(problems);
  if (isSplit && score.repeats.length > 0) remarks.push("The repeats are written out.");
  const key = linear.bars[0]!.key ?? C_MAJOR;
  const isOther = (bar: ScoreBar): boolean =>
    bar.key !== null && JSON.stringify(bar.key) !== JSON.stringify(key);
  if (linear.bars.some(isOther))
    remarks.push("The key signature changes in the file; the first one is kept.");
  const melody = melodyFrom(linear, key, remarks);
  const read = readMelody(melody);
  return read.ok ? { ok: true, value: { melody, remarks } } : refused(read.problems);
}

const refused = (problems: readonly MelodyProblem[]): MelodyAnswer => ({ ok: false, problems });

/** Bars whose length is not their metre's; a pickup and a short last bar are fine. */
function irregularBars(score: ScoreModel): readonly PlacedBar[] {
  const bars = placedBars(score);
  return bars.filter(({ bar }, index) => {
    const full = fullLength(bar, score.division);
    if (bar.length === full) return false;
    const mayBeShort = bar.isPickup === true || index === bars.length - 1;
    return !(mayBeShort && bar.length < full);
  });
}

function barProblems(score: ScoreModel): readonly MelodyProblem[] {
  const { beats, beatType } = score.bars[0]!.metre;
  const changed = placedBars(score).find(
    ({ bar }) => bar.metre.beats !== beats || bar.metre.beatType !== beatType,
  );
  if (changed !== undefined) {
    const { metre } = changed.bar;
    const message = `Bar ${changed.number}: the metre changes to ${metre.beats}/${metre.beatType}; a melody keeps one metre.`;
    return [{ code: "melody-metre-changes", message, bar: changed.number }];
  }
  return irregularBars(score).map(({ bar, number }) => {
    const full = fullLength(bar, score.division);
    const held = Math.round(((bar.length * beats) / full) * 100) / 100;
    const beatsHeld = `${held} ${held === 1 ? "beat" : "beats"}`;
    const room = `${beats}/${beatType} has room for ${beats}`;
    return bar.length > full
      ? {
          code: "bar-long",
          message: `Bar ${number} holds ${beatsHeld}, but ${room}.`,
          bar: number,
        }
      : {
          code: "bar-short",
          message: `Bar ${number} holds only ${beatsHeld}, but ${room}.`,
          bar: number,
        };
  });
}

/** Two short bars that fill one become that one. */
function joinedBars(score: ScoreModel): ScoreModel {
  const bars: ScoreModel["bars"][number][] = [];
  for (const bar of score.bars) {
    const last = bars.at(-1);
    const full = fullLength(bar, score.division);
    const isRest = last !== undefined && bars.length > 1 && last.length + bar.length === full;
    if (isRest) bars[bars.length - 1] = { ...last, length: full };
    else bars.push(bar);
  }
  return { ...score, bars };
}

function melodyFrom(score: ScoreModel, key: Key, remarks: string[]): Melody {
  const { title, division, tempo, bars, harmonies, repeats } = score;
  const metre = bars[0]!.metre;
  const pickup = bars[0]!.isPickup ? bars[0]!.length : 0;
  const written = bars.reduce((sum, bar) => sum + bar.length, 0);
  const full = fullLength({ metre }, division);
  const length = pickup + Math.ceil((written - pickup) / full) * full;
  const bounded = Math.min(FASTEST, Math.max(SLOWEST, tempo));
  if (bounded !== tempo) remarks.push(`The tempo of ${tempo} was brought to ${bounded}.`);
  return {
    title,
    division,
    metre,
    key,
    tempo: bounded as QuartersPerMinute,
    style: styleOf(score),
    pickup: pickup as Divisions,
    length: length as Divisions,
    notes: melodyNotes(score),
    changes: harmonies.map(({ onset, symbol }) => ({ onset, text: symbol })),
    repeats,
  };
}

function styleOf({ style = "", swing }: ScoreModel): MelodyStyle {
  if (/ballad/i.test(style)) return "ballad";
  if (/latin|bossa|samba|mambo|rumba|cha/i.test(style)) return "latin";
  return swing !== undefined || /swing/i.test(style) ? "swing" : "straight";
}

/** Top notes, tied over bar lines. */
function melodyNotes(score: ScoreModel): readonly MelodyNote[] {
  const part = score.parts.find(({ notes }) => notes.length > 0)!;
  const bars = placedBars(score);
  const notes: MelodyNote[] = [];
  for (const { onset, duration, pitch } of topNotes(part.notes)) {
    const end = onset + duration;
    for (const bar of bars) {
      const from = Math.max(onset, bar.start);
      const to = Math.min(end, bar.end);
      if (to <= from) continue;
      notes.push({
        id: `n${notes.length + 1}`,
        onset: from as Divisions,
        duration: (to - from) as Divisions,
        pitch,
        isTied: to < end,
      });
    }
  }
  return bars.flatMap((bar) => withTuplets(notes, bar, score.division));
}

/** The notes of a bar, told which of them stand in a tuplet. */
function withTuplets(
  notes: readonly MelodyNote[],
  { bar, start, end }: PlacedBar,
  division: Count,
): readonly MelodyNote[] {
  const inside = notes.filter(({ onset }) => onset >= start && onset < end);
  const offset = bar.isPickup ? fullLength(bar, division) - bar.length : 0;
  const stretches = stretchesOf(
    inside.map(({ onset, duration }) => ({
      from: onset - start,
      to: onset - start + duration,
    })),
    bar.length,
  );
  const windows = windowsOf(stretches, { metre: bar.metre, division, offset });
  return inside.map((note) => {
    const from = note.onset - start;
    const window = windows.find((each) => each.from <= from && from + note.duration <= each.to);
    return window === undefined ? note : { ...note, tuplet: window.tuplet };
  });
}

/** A bar divided in a way that no tuplet of ours fits is told without tuplets. */
function windowsOf(stretches: readonly Stretch[], shape: BarShape): readonly TupletWindow[] {
  try {
    return tupletWindows(stretches, shape);
  } catch (fault) {
    if (fault instanceof RangeError) return [];
    throw fault;
  }
}

function topNotes(notes: readonly ScoreNote[]): readonly ScoreNote[] {
  const top = new Map<Count, ScoreNote>();
  for (const note of notes) {
    const before = top.get(note.onset);
    if (before === undefined || spelledToMidi(note.pitch) > spelledToMidi(before.pitch))
      top.set(note.onset, note);
  }
  return [...top.values()];
}
