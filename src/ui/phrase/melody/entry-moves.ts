import { quantity } from "../../../base/index.ts";
import {
  formatPitch,
  placeText,
  type Divisions,
  type Melody,
  type MelodyNote,
  type SpelledPitch,
  type Tuplet,
} from "../../../theory/index.ts";
import { announce } from "../../actions/announce.ts";
import { session } from "../../store.ts";
import { withSigns } from "../../words/signs.ts";
import { askMelody, goTo } from "../phrase-actions.ts";
import { entry, entryLength, type Value } from "./entry-state.ts";
import {
  chainOf,
  countedFinely,
  placed,
  relengthed,
  repitched,
  tied,
  without,
} from "./melody-edit.ts";
import { isInReach, midiOf, nearest, pitchAtSteps, spelledInKey, stepsOf } from "./staff-steps.ts";

const triplet: Tuplet = Object.freeze({ notes: 3, inTimeOf: 2 });

/** The melody being written, counted finely. */
function melodyNow(): Melody | undefined {
  const melody = session().phrase?.question.melody;
  return melody === undefined ? undefined : countedFinely(melody);
}

function atOf({ division }: Melody): Divisions {
  return quantity<Divisions>(Math.round(entry.getState().at * division));
}

/** The note that sounds at the cursor. */
export function noteHere(melody: Melody, at: number): MelodyNote | undefined {
  return melody.notes.find(({ onset, duration }) => onset <= at && at < onset + duration);
}

function noteAtCursor(melody: Melody): MelodyNote | undefined {
  return noteHere(melody, atOf(melody));
}

const nameOf = (pitch: SpelledPitch): string => withSigns(formatPitch(pitch));

/** Takes the cursor to a time, and the rest of the view to the note there. */
export function moveTo(melody: Melody, at: number, isSaid = true): void {
  const to = Math.max(0, Math.min(melody.length, at));
  entry.setState({ at: to / melody.division, chordAt: null });
  const note = noteHere(melody, to);
  const id = note === undefined ? undefined : chainOf(melody, note.id)[0];
  if (id !== undefined) goTo({ momentId: id, playerId: null });
  if (!isSaid) return;
  const where = placeText(melody, quantity<Divisions>(to));
  announce(`${where}: ${note === undefined ? "free" : nameOf(note.pitch)}`);
}

function change(melody: Melody, step: string): void {
  askMelody(melody, step);
}

function lengthNow(melody: Melody): Divisions {
  return quantity<Divisions>(Math.round(entryLength(entry.getState()) * melody.division));
}

/** Puts a note at the cursor, or gives the note there this pitch, and goes on. */
export function enterPitch(pitch: SpelledPitch): void {
  const melody = melodyNow();
  if (melody === undefined || !isInReach(pitch)) return;
  const here = noteAtCursor(melody);
  if (here !== undefined) {
    change(repitched(melody, here.id, pitch), `note ${nameOf(pitch)}`);
    return moveTo(melody, endOfChain(melody, here), false);
  }
  putAt(melody, atOf(melody), pitch);
}

function endOfChain(melody: Melody, note: MelodyNote): number {
  const last = melody.notes.find(({ id }) => id === chainOf(melody, note.id).at(-1)) ?? note;
  return last.onset + last.duration;
}

function putAt(melody: Melody, at: Divisions, pitch: SpelledPitch): void {
  const duration = lengthNow(melody);
  const tuplet = entry.getState().isTriplet ? { tuplet: triplet } : {};
  const next = placed(melody, { at, duration, pitch, ...tuplet });
  change(next, `note ${nameOf(pitch)}`);
  announce(nameOf(pitch));
  moveTo(next, at + duration, false);
}

/** Puts a note where the pointer is; the cursor goes on behind it. */
export function enterAt(at: Divisions, scale: number, steps: number): void {
  const melody = melodyNow();
  if (melody === undefined) return;
  const pitch = pitchAtSteps(steps, melody.key);
  if (!isInReach(pitch)) return;
  putAt(melody, quantity<Divisions>(Math.round((at / scale) * melody.division)), pitch);
}

/** Puts the note of a letter, as the key has it, nearest to the note before. */
export function enterLetter(letter: string): void {
  const melody = melodyNow();
  if (melody === undefined) return;
  const at = atOf(melody);
  const here = noteAtCursor(melody);
  const before = melody.notes.filter(({ onset }) => onset < at).at(-1);
  enterPitch(nearest(letter, here?.pitch ?? before?.pitch, melody.key));
}

/** Puts the note of a key of a MIDI keyboard. */
export function enterMidi(midi: number): void {
  const melody = melodyNow();
  if (melody !== undefined) enterPitch(spelledInKey(midi, melody.key));
}

/** A rest at the cursor: the note there goes, the cursor goes on. */
export function enterRest(): void {
  const melody = melodyNow();
  if (melody === undefined) return;
  const here = noteAtCursor(melody);
  if (here !== undefined) change(without(melody, here.id), "rest");
  const at = here?.onset ?? atOf(melody);
  moveTo(melody, at + (here?.duration ?? lengthNow(melody)), false);
}

/** Takes the note at the cursor away; with `isBack` the one before it. */
export function removeNote(isBack: boolean): void {
  const melody = melodyNow();
  if (melody === undefined) return;
  const at = atOf(melody);
  const before = melody.notes.filter(({ onset }) => onset < at).at(-1);
  const note = isBack ? before : noteAtCursor(melody);
  if (note === undefined) return;
  change(without(melody, note.id), `take ${nameOf(note.pitch)} away`);
  announce(`${nameOf(note.pitch)} is gone`);
  if (isBack) moveTo(melody, note.onset, false);
}

/** Ties the note at the cursor to the next; in a gap, holds the note before it on. */
export function enterTie(): void {
  const melody = melodyNow();
  if (melody === undefined) return;
  const here = noteAtCursor(melody);
  if (here !== undefined) return change(tied(melody, here.id), "tie");
  const at = atOf(melody);
  const before = melody.notes.find(({ onset, duration }) => onset + duration === at);
  if (before === undefined) return announce("There is no note before this to hold on.");
  const next = placed(melody, { at, duration: lengthNow(melody), pitch: before.pitch });
  change(tied(next, before.id), "tie");
  moveTo(next, at + lengthNow(melody), false);
}

/** Moves the note at the cursor, or the one just before it, by letter steps. */
export function stepPitch(by: number): void {
  withNote((melody, note) => pitchAtSteps(stepsOf(note.pitch) + by, melody.key));
}

/** Moves the note by an octave; its sign stays. */
export function stepOctave(by: 1 | -1): void {
  withNote((_, { pitch }) => ({ ...pitch, octave: pitch.octave + by }));
}

/** Sharpens or flattens the note, or takes its sign away (0). */
export function alter(by: 1 | -1 | 0): void {
  withNote((_, { pitch }) => {
    const alteration = by === 0 ? 0 : Math.max(-2, Math.min(2, pitch.alteration + by));
    return { ...pitch, alteration };
  });
}

function withNote(to: (melody: Melody, note: MelodyNote) => SpelledPitch): void {
  const melody = melodyNow();
  if (melody === undefined) return;
  const at = atOf(melody);
  const before = melody.notes.find(({ onset, duration }) => onset + duration === at);
  const note = noteAtCursor(melody) ?? before;
  if (note === undefined) return announce("There is no note here to change.");
  setPitch(note.id, to(melody, note));
}

/** Gives a note another pitch. */
export function setPitch(noteId: string, pitch: SpelledPitch): void {
  const melody = melodyNow();
  if (melody === undefined || !isInReach(pitch)) return;
  const before = melody.notes.find(({ id }) => id === noteId);
  if (before === undefined || midiSame(before.pitch, pitch)) return;
  change(repitched(melody, noteId, pitch), `note ${nameOf(pitch)}`);
  announce(nameOf(pitch));
}

function midiSame(one: SpelledPitch, other: SpelledPitch): boolean {
  return midiOf(one) === midiOf(other) && one.letter === other.letter;
}

/** Takes another length for what follows; the note at the cursor gets it at once. */
export function chooseLength(
  next: Partial<{ value: Value; isDotted: boolean; isTriplet: boolean }>,
): void {
  entry.setState(next);
  const melody = melodyNow();
  if (melody === undefined) return;
  const here = noteAtCursor(melody);
  if (here === undefined) return;
  const tuplet = entry.getState().isTriplet ? triplet : undefined;
  change(relengthed(melody, here.id, lengthNow(melody), tuplet), "length of a note");
}

/** Goes to the note, rest or grid place before or after. */
export function stepCursor(by: 1 | -1): void {
  const melody = melodyNow();
  if (melody === undefined) return;
  const at = atOf(melody);
  const length = lengthNow(melody);
  const starts = melody.notes.map(({ onset }) => onset as number);
  if (by > 0) {
    const here = noteAtCursor(melody);
    const next = starts.find((start) => start > at) ?? melody.length;
    return moveTo(melody, here ? here.onset + here.duration : Math.min(next, at + length));
  }
  const before = melody.notes.filter(({ onset }) => onset < at).at(-1);
  const end = before === undefined ? 0 : before.onset + before.duration;
  const to = before !== undefined && end >= at ? before.onset : Math.max(end, at - length);
  moveTo(melody, to);
}

/** Goes to the first place, or behind the last note. */
export function cursorToEnd(by: 1 | -1): void {
  const melody = melodyNow();
  if (melody === undefined) return;
  const last = melody.notes.at(-1);
  moveTo(melody, by < 0 || last === undefined ? 0 : last.onset + last.duration);
}
