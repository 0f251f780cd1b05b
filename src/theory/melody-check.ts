import { fail, ok, quantity, type Result } from "../base/index.ts";
import { LETTER_SEMITONES } from "./letter-table.ts";
import { heardNotes } from "./melody-heard.ts";
import { barCount, barLength, placeOf, placeText } from "./melody-place.ts";
import type {
  Checked,
  Divisions,
  Melody,
  MelodyNote,
  MelodyProblem,
  ReadChange,
  ReadMelody,
} from "./melody-types.ts";
import { readChord } from "./read-chord.ts";
import { formatPitch } from "./spelled-pitch.ts";

/** More than these are refused: a phrase, not a symphony. */
const mostNotes = 2000;
const mostDivision = 100_000;
const tempoRange = [20, 400] as const;

/**
 * Checks a melody and reads its chord symbols. Everything wrong is told at once.
 * @param melody - the melody
 * @returns notes and chords; or problems in order of time, each naming its bar and the reason.
 *   Codes: `melody-metre`, `melody-division`, `melody-tempo`, `melody-pickup`, `melody-repeat`,
 *   `melody-empty`, `melody-long`, `note-length`, `note-overlap`, `note-outside`, `note-pitch`,
 *   `note-twice`, `tie-pitch`, `tie-gap`, `change-outside`, `change-twice`, and those of chord symbols
 */
export function readMelody(melody: Melody): Checked<ReadMelody> {
  const frame = frameProblems(melody);
  if (frame.length > 0) return { ok: false, problems: frame };
  const changes = readChanges(melody);
  const found = [...noteProblems(melody), ...changes.problems];
  if (found.length > 0) return { ok: false, problems: [...found].sort(byBar) };
  return { ok: true, value: { notes: heardNotes(melody), changes: changes.changes } };
}

const byBar = (a: MelodyProblem, b: MelodyProblem): number => (a.bar ?? 0) - (b.bar ?? 0);

const whole = (value: number, from: number, to: number): boolean =>
  Number.isInteger(value) && value >= from && value <= to;

function frameProblems(melody: Melody): MelodyProblem[] {
  const { metre, division, tempo, notes } = melody;
  const problem = (code: string, message: string): MelodyProblem[] => [{ code, message }];
  if (!whole(metre.beats, 1, 32) || ![1, 2, 4, 8, 16, 32].includes(metre.beatType))
    return problem("melody-metre", `${metre.beats}/${metre.beatType} is not a metre.`);
  if (!whole(division, 1, mostDivision) || !Number.isInteger(barLength(melody)))
    return problem(
      "melody-division",
      `A quarter note in ${division} parts does not fill a bar of ${metre.beats}/${metre.beatType} exactly.`,
    );
  const [slowest, fastest] = tempoRange;
  if (!(tempo >= slowest && tempo <= fastest))
    return problem(
      "melody-tempo",
      `The tempo is ${tempo}; it must lie between ${slowest} and ${fastest} quarter notes a minute.`,
    );
  if (!whole(melody.pickup, 0, barLength(melody) - 1))
    return problem("melody-pickup", "The pickup must be shorter than a full bar.");
  if (notes.length === 0)
    return problem("melody-empty", "There is no note yet: enter at least one.");
  if (notes.length > mostNotes)
    return problem(
      "melody-long",
      `The melody has ${notes.length} notes; ${mostNotes} is the most.`,
    );
  return repeatProblems(melody);
}

function repeatProblems(melody: Melody): MelodyProblem[] {
  const bars = barCount(melody);
  return melody.repeats.flatMap(({ fromBar, toBar, times }, index) => {
    const before = melody.repeats[index - 1];
    const isFine =
      whole(fromBar, 0, bars) &&
      whole(toBar, fromBar, bars) &&
      whole(times, 2, 16) &&
      (!before || before.toBar < fromBar);
    if (isFine) return [];
    const message = `Bar ${fromBar}: the repeat to bar ${toBar}, ${times} times, does not fit into ${bars} bars in order.`;
    return [{ code: "melody-repeat", message, bar: fromBar }];
  });
}

function noteProblems(melody: Melody): MelodyProblem[] {
  const seen = new Set<string>();
  return melody.notes.flatMap((note, index) => {
    const at = (code: string, message: string): MelodyProblem => ({
      code,
      message: `${capital(placeText(melody, note.onset))}: ${message}`,
      bar: placeOf(melody, note.onset).bar,
      noteId: note.id,
    });
    const isTwice = seen.has(note.id);
    seen.add(note.id);
    if (isTwice) return [at("note-twice", `two notes have the name “${note.id}”.`)];
    return [
      ...lengthProblems(melody, note, at),
      ...followingProblems(note, melody.notes[index + 1], at),
    ];
  });
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
type At = (code: string, message: string) => MelodyProblem;

function lengthProblems(melody: Melody, note: MelodyNote, at: At): MelodyProblem[] {
  const { onset, duration, pitch } = note;
  if (!Number.isInteger(onset) || !Number.isInteger(duration) || duration <= 0)
    return [
      at("note-length", "a note must last longer than nothing, in whole parts of a quarter."),
    ];
  if (onset < 0 || onset + duration > melody.length)
    return [at("note-outside", "this note reaches past the end of the melody.")];
  const semitones = LETTER_SEMITONES[pitch.letter] + pitch.alteration;
  const midi = 12 * (pitch.octave + 1) + semitones;
  if (midi < 0 || midi > 127)
    return [at("note-pitch", `${nameOf(note)} lies outside the notes that can be sounded.`)];
  return [];
}

const nameOf = ({ pitch }: MelodyNote): string => formatPitch(pitch, { signs: "unicode" });

function followingProblems(
  note: MelodyNote,
  next: MelodyNote | undefined,
  at: At,
): MelodyProblem[] {
  const end = note.onset + note.duration;
  if (next && next.onset < end)
    return [
      at(
        "note-overlap",
        `${nameOf(note)} still sounds when ${nameOf(next)} begins; a melody has one note at a time.`,
      ),
    ];
  if (!note.isTied) return [];
  if (!next || next.onset > end)
    return [at("tie-gap", `${nameOf(note)} is tied, but no note follows it at once.`)];
  const isSame = formatPitch(note.pitch) === formatPitch(next.pitch);
  return isSame
    ? []
    : [
        at(
          "tie-pitch",
          `${nameOf(note)} is tied to ${nameOf(next)}; a tie joins two notes of the same pitch.`,
        ),
      ];
}

function readChanges(melody: Melody): {
  readonly changes: readonly ReadChange[];
  readonly problems: readonly MelodyProblem[];
} {
  const problems: MelodyProblem[] = [];
  const changes: ReadChange[] = [];
  melody.changes.forEach(({ onset, text }, index) => {
    const read = readPlaced(melody, index);
    const next = melody.changes[index + 1]?.onset ?? melody.length;
    if (read.ok) changes.push({ onset, end: quantity<Divisions>(next), chord: read.value });
    else {
      const { bar } = placeOf(melody, onset);
      const where = capital(placeText(melody, onset));
      const message = `${where}, chord “${text}”: ${read.problem.message}`;
      problems.push({ ...read.problem, message, bar });
    }
  });
  return { changes, problems };
}

function readPlaced(melody: Melody, index: number): Result<ReadChange["chord"]> {
  const change = melody.changes[index];
  const next = melody.changes[index + 1];
  if (!change) throw new RangeError(`there is no chord ${index}`);
  const { onset } = change;
  if (!Number.isInteger(onset) || onset < 0 || onset >= melody.length)
    return fail("change-outside", "it lies outside the melody.");
  if (next && next.onset <= onset)
    return fail("change-twice", "the chord after it does not come later.");
  const chord = readChord(change.text);
  return chord.ok ? ok(chord.value) : chord;
}
