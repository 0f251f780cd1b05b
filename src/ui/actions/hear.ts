import type { Seconds } from "../../base/index.ts";
import { readInquiry } from "../../explore/index.ts";
import type { Kept } from "../state/session.ts";
import { voicingOf } from "../state/view-of.ts";
import { page, session } from "../store.ts";
import { announce } from "./announce.ts";
import type { Heard, Hearing } from "./heard-plan.ts";
import { changeLevel, pieceOver, startPiece, thisOne } from "./sound-piece.ts";
import type { HeardTurn } from "./sound-piece.ts";
import { everybody, sound, type Backing, type Way, type Who } from "./sound-state.ts";

export { warmSound } from "./sound-door.ts";
export { stopPiece as stopSound } from "./sound-piece.ts";
export type { HeardTurn } from "./sound-piece.ts";

/**
 * Sounds the voicing in view.
 * @param which - a way of hearing; the last way, of whoever is chosen; or just what was heard last
 */
export function hearView(which: Way | "way" | "again" = "way"): void {
  const { last, lastWho, who } = sound.getState();
  const way = which === "again" || which === "way" ? last : which;
  hearHere(way, which === "again" ? lastWho : who);
}

/**
 * Sounds one player of the voicing in view.
 * @param playerId - who
 * @param others - what the others do meanwhile
 */
export function hearPlayer(playerId: string, others: Who["others"] = "silent"): void {
  const { view } = page.getState();
  if (view !== null && view.pitches[playerId] === undefined) return announce("This player rests.");
  hearHere("sustained", { playerIds: [playerId], others }, false);
}

function hearHere(way: Way, who: Who, isLast = true): void {
  const heard = inView();
  if (heard === null) return;
  sound.setState({ lastWho: who, ...(isLast ? { last: way } : {}) });
  const piece = { turns: [{ name: thisOne, ...heard }], hearing: { ...hearingNow(), way, who } };
  void startPiece(piece);
}

/** Sounds the chosen kept voicings and the one in view, one after the other. */
export function hearInTurn(): Promise<number> {
  const { kept, compared } = session();
  const chosen = compared.flatMap((letter) => kept.filter((one) => one.letter === letter));
  const view = inView();
  const turns = [...turnsOf(chosen), ...(view === null ? [] : [{ name: thisOne, ...view }])];
  return startPiece({ turns, hearing: hearingNow() });
}

/** Sounds every kept voicing, one after the other. */
export function hearAllKept(): Promise<number> {
  return hearKept(session().kept);
}

/**
 * Sounds some kept voicings, one after the other.
 * @param kept - in the order in which they are heard
 */
export function hearKept(kept: readonly Kept[]): Promise<number> {
  return startPiece({ turns: turnsOf(kept), hearing: hearingNow() });
}

/**
 * Sounds voicings one into the other, everybody, without silence between.
 * @param turns - in order, each with its length
 */
export function hearJoined(turns: readonly HeardTurn[]): Promise<number> {
  const hearing: Hearing = { ...hearingNow(), way: "sustained", who: everybody };
  return startPiece({ turns, hearing, gap: 0 as Seconds });
}

/** The way in which voicings are heard from now on. */
export function chooseWay(way: Way): void {
  sound.setState({ last: way });
}

/**
 * Sounds voicings one after the other; the sound's state tells whose turn it is.
 * @param turns - what to call each, and what it is
 * @param way - way of hearing
 * @param isMatched - equally loud, or as loud as they are
 * @returns when the last one is over, or something else has taken its place
 */
export async function hearThese(
  turns: readonly HeardTurn[],
  way: Way,
  isMatched: boolean,
): Promise<void> {
  const hearing: Hearing = { ...hearingNow(), way, who: everybody };
  await pieceOver(await startPiece({ turns, hearing }, isMatched));
}

/** Plays voicings at the same loudness, or as loud as they are; at once, also while one sounds. */
export function matchLevels(isMatched: boolean): void {
  sound.setState({ isMatched });
  changeLevel();
}

/** What sounds under the horns from now on. */
export function letSoundUnder(backing: Backing): void {
  sound.setState({ backing });
}

/** Who is heard from now on. */
export function chooseWho(who: Who): void {
  sound.setState({ who, lastWho: who });
}

/**
 * The kept voicings as they can be heard.
 * @param kept - some or all that are kept
 * @returns each under its own question, by its letter
 */
export function turnsOf(kept: readonly Kept[]): readonly HeardTurn[] {
  return kept.flatMap((one) => {
    const reading = readInquiry(one.inquiry);
    if (!reading.ok) return [];
    const { question } = reading;
    return [{ name: one.letter, voicing: voicingOf(one.pitches, question), question }];
  });
}

/** The voicing in view with its question, or null when there is none. */
export function inView(): Heard | null {
  const { view, answer } = page.getState();
  if (view === null || answer === null) return null;
  return { voicing: view.voicing, question: answer.asked.question };
}

/** How voicings are heard as things are set now. */
export function hearingNow(): Hearing {
  const { last, who, backing } = sound.getState();
  return { way: last, who, backing, seats: session().seats };
}
