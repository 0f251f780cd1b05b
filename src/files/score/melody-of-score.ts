import { fail, ok, type Count, type Result } from "../../base/index.ts";
import {
  readMelody,
  spelledToMidi,
  type Divisions,
  type Key,
  type Melody,
  type MelodyNote,
  type MelodyStyle,
  type QuartersPerMinute,
} from "../../theory/index.ts";
import { playedScore } from "./played-score.ts";
import { fullLength, placedBars, type PlacedBar } from "./score-times.ts";
import type { ScoreModel, ScoreNote } from "./score-model.ts";

/** A melody taken out of a score, and what could not be kept. */
export interface MelodyReading {
  readonly melody: Melody;
  readonly remarks: readonly string[];
}

const SLOWEST = 20;
const FASTEST = 400;
const C_MAJOR: Key = { tonic: { letter: "C", alteration: 0 }, mode: "major" };

/**
 * The melody of a score: the top notes of the first part that has any, with the chord symbols.
 * Where bars are split at a repeat, the repeats are written out and the bars joined.
 * @param score - a score that was read
 * @returns the melody with remarks, or a problem that names the bar: "melody-none",
 *   "melody-metre-changes", "melody-bar-short", "melody-bar-long", or those of readMelody
 */
export function melodyOfScore(score: ScoreModel): Result<MelodyReading> {
  const part = score.parts.find(({ notes }) => notes.length > 0);
  if (part === undefined) return fail("melody-none", "The score holds no note.");
  const remarks: string[] = [];
  if (score.parts.length > 1) remarks.push(`Of ${score.parts.length} lines the first is taken.`);
  const isSplit = irregularBar(score) !== undefined;
  const linear = isSplit ? joinedBars(playedScore(score)) : score;
  if (isSplit && score.repeats.length > 0) remarks.push("The repeats are written out.");
  const metre = linear.bars[0]!.metre;
  const changed = placedBars(linear).find(
    ({ bar }) => bar.metre.beats !== metre.beats || bar.metre.beatType !== metre.beatType,
  );
  if (changed !== undefined)
    return fail(
      "melody-metre-changes",
      `Bar ${changed.number}: the metre changes to ${changed.bar.metre.beats}/${changed.bar.metre.beatType}; a melody keeps one metre.`,
    );
  const odd = irregularBar(linear);
  if (odd !== undefined) return barProblem(odd, linear);
  const key = linear.bars[0]!.key ?? C_MAJOR;
  if (
    linear.bars.some((bar) => bar.key !== null && JSON.stringify(bar.key) !== JSON.stringify(key))
  )
    remarks.push("The key signature changes in the file; the first one is kept.");
  const melody = melodyFrom(linear, key, remarks);
  const read = readMelody(melody);
  if (!read.ok) return { ok: false, problem: read.problems[0]! };
  return ok({ melody, remarks });
}

/** The first bar whose length is not its metre's; a pickup and a short last bar are fine. */
function irregularBar(score: ScoreModel): PlacedBar | undefined {
  const bars = placedBars(score);
  return bars.find(({ bar }, index) => {
    const full = fullLength(bar, score.division);
    if (bar.length === full) return false;
    const mayBeShort = bar.isPickup === true || index === bars.length - 1;
    return !(mayBeShort && bar.length < full);
  });
}

function barProblem({ bar, number }: PlacedBar, { division }: ScoreModel): Result<never> {
  const { beats, beatType } = bar.metre;
  const held = Math.round(((bar.length * beats) / fullLength(bar, division)) * 100) / 100;
  const room = `${beats}/${beatType} has room for ${beats}`;
  return bar.length > fullLength(bar, division)
    ? fail("melody-bar-long", `Bar ${number} holds ${held} beats, but ${room}.`)
    : fail("melody-bar-short", `Bar ${number} holds only ${held} beats, but ${room}.`);
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
  return notes;
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
