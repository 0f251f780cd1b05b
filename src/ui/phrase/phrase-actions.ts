import type { SoundingMidi } from "../../base/index.ts";
import type { PhraseWork } from "../../explore/index.ts";
import { writeAbc } from "../../files/index.ts";
import {
  lockLine as lineLocks,
  lockMoment as momentLock,
  type ArticulationMark,
  type MomentLock,
  type NoteChoice,
  type NoteLock,
  type PhraseLocks,
  type PhraseQuestion,
} from "../../phrase/index.ts";
import type { Melody } from "../../theory/index.ts";
import { take } from "../actions/steps.ts";
import { session } from "../store.ts";
import { stopWorker } from "./phrase-client.ts";
import { phraseStore, type PhrasePlace } from "./phrase-store.ts";
import { withMelody } from "./with-melody.ts";

/**
 * Goes to a player at a moment, or to a whole moment.
 * @param place - where; null to leave
 */
export function goTo(place: PhrasePlace | null): void {
  phraseStore.setState({ place });
}

/** Begins a phrase; what was there is a step back. */
export function beginPhrase(question: PhraseQuestion, step: string): void {
  const { melody } = question;
  const typed = melody.notes.length === 0 ? "" : writeAbc(melody);
  phraseStore.setState({ place: null, view: null, alternatives: null, problems: [] });
  take({ ...session(), phrase: { typed, question, articulations: {}, alternative: 0 }, step });
}

/** Lets the phrase go, so that another can be begun. */
export function leavePhrase(): void {
  take({ ...session(), phrase: null, step: "put the phrase aside" });
}

/** Changes the phrase as one step; keystrokes in one field are one step. */
export function changeWork(
  change: Partial<PhraseWork>,
  step: string,
  typing: string | null = null,
): void {
  const now = session();
  if (now.phrase === null) return;
  take({ ...now, phrase: { ...now.phrase, ...change }, step }, typing);
}

/** Asks something else of the phrase as one step. */
export function askPhrase(
  change: Partial<PhraseQuestion>,
  step: string,
  typing: string | null = null,
): void {
  const { phrase } = session();
  if (phrase === null) return;
  changeWork({ question: { ...phrase.question, ...change }, alternative: 0 }, step, typing);
}

/** Gives the melody to one player wherever the player reaches it; null: to anyone. */
export function askLead(playerId: string | null): void {
  const { phrase } = session();
  if (phrase === null) return;
  const others = Object.fromEntries(
    Object.entries(phrase.question).filter(([key]) => key !== "leadPlayer"),
  ) as unknown as PhraseQuestion;
  const question = playerId === null ? others : { ...others, leadPlayer: playerId };
  changeWork(
    { question, alternative: 0 },
    playerId === null ? "melody to anyone" : "melody to one",
  );
}

/** Another melody, from the staff or the fields above it: the text is written anew. */
export function askMelody(melody: Melody, step: string, typing: string | null = null): void {
  const { phrase } = session();
  if (phrase === null) return;
  const typed = melody.notes.length === 0 ? "" : writeAbc(melody);
  changeWork({ ...withMelody(phrase, melody), typed }, step, typing);
}

/** What the user decides for one note; null leaves everything to the machine again. */
export function setChoice(noteId: string, choice: NoteChoice | null, step: string): void {
  const { phrase } = session();
  if (phrase === null) return;
  const others = without(phrase.question.choices, noteId);
  const isEmpty = choice === null || Object.keys(choice).length === 0;
  askPhrase({ choices: isEmpty ? others : { ...others, [noteId]: choice } }, step);
}

/** Marks of one note, set by hand; null gives them back to the rules. */
export function setMarks(noteId: string, marks: readonly ArticulationMark[] | null): void {
  const { phrase } = session();
  if (phrase === null) return;
  const others = without(phrase.articulations, noteId);
  const articulations = marks === null ? others : { ...others, [noteId]: marks };
  changeWork({ articulations }, marks === null ? "marks by the rules" : "marks of a note");
}

function without<T>(byNote: Readonly<Record<string, T>>, noteId: string): Record<string, T> {
  return Object.fromEntries(Object.entries(byNote).filter(([id]) => id !== noteId));
}

function askLocks(locks: Partial<PhraseLocks>, step: string): void {
  const { phrase } = session();
  if (phrase !== null) askPhrase({ locks: { ...phrase.question.locks, ...locks } }, step);
}

function locksNow(): PhraseLocks {
  return session().phrase?.question.locks ?? { notes: [], moments: [] };
}

/** Holds a player to a pitch or to silence at one moment. */
export function lockNote(momentId: string, playerId: string, at: SoundingMidi | "rest"): void {
  const notes = withoutNote(locksNow().notes, momentId, playerId);
  askLocks({ notes: [...notes, { momentId, playerId, sounding: at }] }, "fix a player");
}

/** Lets a player go at one moment. */
export function freeNote(momentId: string, playerId: string): void {
  askLocks({ notes: withoutNote(locksNow().notes, momentId, playerId) }, "free a player");
}

function withoutNote(
  notes: readonly NoteLock[],
  momentId: string,
  playerId: string,
): readonly NoteLock[] {
  return notes.filter((lock) => lock.momentId !== momentId || lock.playerId !== playerId);
}

/** Holds a player's whole line as it is. */
export function lockLine(playerId: string): void {
  const { view } = phraseStore.getState();
  if (view === null) return;
  const others = locksNow().notes.filter((lock) => lock.playerId !== playerId);
  const line = lineLocks(view.phrase, view.answer, playerId);
  askLocks({ notes: [...others, ...line] }, "fix a line");
}

/** Lets a player go everywhere. */
export function freeLine(playerId: string): void {
  askLocks({ notes: locksNow().notes.filter((lock) => lock.playerId !== playerId) }, "free a line");
}

/** Holds the whole voicing of a moment: as it is, or another one for it. */
export function lockMoment(momentId: string, pitches?: MomentLock["pitches"]): void {
  const { view } = phraseStore.getState();
  if (view === null) return;
  const lock = pitches ? { momentId, pitches } : momentLock(view.phrase, view.answer, momentId);
  if (lock === undefined) return;
  const { moments, notes } = locksNow();
  askLocks(
    {
      moments: [...moments.filter((one) => one.momentId !== momentId), lock],
      notes: notes.filter((one) => one.momentId !== momentId),
    },
    "fix a moment",
  );
}

/** Lets go of everything held at a moment. */
export function freeMoment(momentId: string): void {
  const { moments, notes } = locksNow();
  askLocks(
    {
      moments: moments.filter((one) => one.momentId !== momentId),
      notes: notes.filter((one) => one.momentId !== momentId),
    },
    "free a moment",
  );
}

/** Lets go of everything that is held. */
export function freeAll(): void {
  askLocks({ notes: [], moments: [] }, "free everything");
}

/** Ends the search; the answer found so far stays. */
export function stopSearch(): void {
  stopWorker();
  phraseStore.setState({ searching: null });
}
