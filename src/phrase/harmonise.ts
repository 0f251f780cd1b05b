import type { Result } from "../base/index.ts";
import {
  beatLength,
  degreeOf,
  displayDegree,
  formatPitchClass,
  placeOf,
  placeText,
  readChord,
  type Chord,
  type Checked,
  type HeardNote,
  type Melody,
  type MelodyProblem,
  type ReadChange,
  type ReadMelody,
} from "../theory/index.ts";
import { anticipatedChange } from "./anticipation.ts";
import { approachChord, type Approach } from "./approach-chord.ts";
import { approachLimits } from "./approach-table.ts";
import { chooseApproach, noChord } from "./choose-approach.ts";
import { noteKind } from "./note-kind.ts";
import type { Harmonised, NoteChoice, NoteChoices } from "./harmony-types.ts";

interface Work {
  readonly melody: Melody;
  readonly read: ReadMelody;
  readonly choices: NoteChoices;
  readonly problems: MelodyProblem[];
  readonly silence: Chord;
}

/** A note with the chord it would have as a target. */
interface Placed {
  readonly note: HeardNote;
  readonly choice: NoteChoice;
  readonly main: Chord;
  readonly chord: Chord;
  readonly anticipated: ReadChange | undefined;
}

/**
 * Gives every note its chord. Long, accented and structural notes and all chord tones have chord
 * sound; short notes outside the chord that step on are approach notes. Approach notes are solved
 * backwards from the note they go into. Choices made by hand win.
 * @param melody - the melody, repeats written out
 * @param read - the same, read
 * @param choices - what the user decided, by note id
 * @returns one entry for each heard note; or a problem for each choice that is not possible:
 *   `approach-last`, `choice-chord`, and those of approachChord
 * @source T. Pease & K. Pullig, Modern Jazz Voicings (target and approach notes); last notes never
 *   approach: value from memory
 */
export function harmonise(
  melody: Melody,
  read: ReadMelody,
  choices: NoteChoices,
): Checked<readonly Harmonised[]> {
  const work: Work = { melody, read, choices, problems: [], silence: noChord() };
  const placed = read.notes.map((_, index) => place(work, index));
  const found = new Array<Harmonised>(placed.length);
  let inRow = 0;
  for (let index = placed.length - 1; index >= 0; index--) {
    const next = found[index + 1];
    const one = harmoniseOne(work, placed, index, next, inRow);
    inRow = one.role === "approach" ? inRow + 1 : 0;
    found[index] = one;
  }
  if (work.problems.length > 0) return { ok: false, problems: [...work.problems].reverse() };
  return { ok: true, value: found };
}

function place(work: Work, index: number): Placed {
  const { melody, read, choices, silence } = work;
  const note = read.notes[index];
  if (!note) throw new RangeError(`there is no note ${index}`);
  const choice = choices[note.id] ?? {};
  const holding = read.changes.filter(({ onset }) => onset <= note.onset).at(-1);
  const coming = read.changes.find(({ onset }) => onset > note.onset);
  const automatic = anticipatedChange(
    note,
    read.notes[index + 1],
    read.changes,
    beatLength(melody),
  );
  const wanted = choice.takesComing === undefined ? automatic : coming;
  const anticipated = choice.takesComing === false ? undefined : wanted;
  const main = anticipated?.chord ?? holding?.chord ?? silence;
  return { note, choice, main, chord: ownChord(work, note, choice) ?? main, anticipated };
}

function ownChord(work: Work, note: HeardNote, { chordText }: NoteChoice): Chord | undefined {
  if (chordText === undefined) return undefined;
  const own = readChord(chordText);
  if (own.ok) return own.value;
  work.problems.push(problemAt(work, note, "choice-chord", own.problem.message));
  return undefined;
}

function problemAt(work: Work, note: HeardNote, code: string, message: string): MelodyProblem {
  const where = placeText(work.melody, note.onset);
  const { bar } = placeOf(work.melody, note.onset);
  const sentence = `${where.charAt(0).toUpperCase()}${where.slice(1)}: ${message}`;
  return { code, message: sentence, bar, noteId: note.id };
}

function harmoniseOne(
  work: Work,
  placed: readonly Placed[],
  index: number,
  next: Harmonised | undefined,
  inRow: number,
): Harmonised {
  const one = placed[index];
  if (!one) throw new RangeError(`there is no note ${index}`);
  const { note, choice, main, chord, anticipated } = one;
  const kind = noteKind(note.sounding, main, work.melody.key);
  const texture = choice.texture ?? (chord.family === "no-chord" ? "octaves" : "harmony");
  const base = { note, texture, main, kind };
  if (isApproach(work, one, kind, texture, next, inRow)) {
    const found = approachOf(work, one, next);
    if (found) return { ...base, role: "approach", ...found };
  }
  const early = anticipated && anticipated !== work.read.changes[0];
  return {
    ...base,
    role: "target",
    chord,
    ...(early ? { anticipates: anticipated.onset } : {}),
    reason: targetReason(one, texture, early === true),
  };
}

function isApproach(
  work: Work,
  { note, choice, anticipated }: Placed,
  kind: Harmonised["kind"],
  texture: Harmonised["texture"],
  next: Harmonised | undefined,
  inRow: number,
): boolean {
  if (choice.role !== undefined) return choice.role === "approach";
  if (choice.technique !== undefined) return true;
  const isPlain = texture === "harmony" && choice.chordText === undefined && !anticipated;
  if (!next || !isPlain || next.chord.family === "no-chord") return false;
  if (kind === "chord-tone" || inRow >= approachLimits.mostInRow) return false;
  const step = Math.abs(next.note.sounding - note.sounding);
  const beat = beatLength(work.melody);
  const goesOn = next.note.onset === note.onset + note.duration;
  if (!goesOn || note.duration >= beat || step < 1 || step > approachLimits.widestStep)
    return false;
  const isOnBeat = placeOf(work.melody, note.onset).part[0] === 0;
  return kind !== "tension" || !isOnBeat;
}

function approachOf(
  work: Work,
  { note, choice }: Placed,
  next: Harmonised | undefined,
): Pick<Harmonised, "chord" | "technique" | "reason"> | undefined {
  if (!next) {
    const message = "the last note has nothing to approach; it takes the chord itself.";
    work.problems.push(problemAt(work, note, "approach-last", message));
    return undefined;
  }
  const { key } = work.melody;
  const approach: Approach = { from: note.pitch, into: next.note.pitch, target: next.chord, key };
  const into = nameOf(next.note);
  if (choice.technique === undefined) {
    if (next.chord.family === "no-chord") return undefined;
    const { technique, chord, words } = chooseApproach(approach);
    const reason = `${nameOf(note)} is short and steps into ${into}: ${words}, so ${technique}.`;
    return { technique, chord, reason };
  }
  const chord: Result<Chord> = approachChord(choice.technique, approach);
  if (!chord.ok) {
    work.problems.push(problemAt(work, note, chord.problem.code, chord.problem.message));
    return undefined;
  }
  const reason = `${nameOf(note)} goes into ${into}: ${choice.technique}, as you chose.`;
  return { technique: choice.technique, chord: chord.value, reason };
}

const nameOf = ({ pitch }: HeardNote): string => formatPitchClass(pitch, { signs: "unicode" });

function targetReason(
  { note, choice, chord }: Placed,
  texture: Harmonised["texture"],
  early: boolean,
): string {
  const name = nameOf(note);
  if (texture !== "harmony")
    return texture === "unison" ? `${name} is played in unison.` : `${name} is played in octaves.`;
  const degree = displayDegree(degreeOf(note.sounding, chord));
  const as = `${name} is the ${degree} of ${chord.display}`;
  if (choice.chordText !== undefined) return `${as}, as you chose.`;
  return early ? `${as}, the chord it goes into.` : `${as}.`;
}
