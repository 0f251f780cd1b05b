import type { Db, Seconds } from "../../base/index.ts";
import { sendAlong, silenceMidi } from "../midi/midi-out.ts";
import { announce } from "./announce.ts";
import { headphoneCaution, rememberCaution } from "./caution.ts";
import { followPlan } from "./follow-plan.ts";
import { inTurn, matchPlanOf, planOf, type Heard, type Hearing } from "./heard-plan.ts";
import type { PlannedTurns } from "./heard-plan.ts";
import { matchedGain, onSoundOver, playback, stopPlayback } from "./sound-door.ts";
import { sound } from "./sound-state.ts";

/** One of several voicings heard in turn. */
export interface HeardTurn extends Heard {
  readonly name: string;
}

/** Voicings to be heard, and how. */
export interface Piece {
  readonly turns: readonly HeardTurn[];
  readonly hearing: Hearing;
  /** Silence between the turns; what parts them well unless given. */
  readonly gap?: Seconds;
}

/** A piece as it sounds, with what level-matching does to each turn, or null as played. */
export interface ScoredPiece extends PlannedTurns {
  readonly piece: Piece;
  readonly gains: readonly Db[] | null;
}

/** Name of the voicing in view among others. */
export const thisOne = "this";

/** Counts calls, so that one overtaken by another gives up. */
let call = 0;
/** What sounds, while the level may be switched under it. */
let now: Piece | null = null;
let gainsNow: readonly Db[] | null = null;
let unfollow: () => void = () => undefined;

onSoundOver(quiet);

/**
 * Works out what a piece sounds like.
 * @param piece - voicings and how to hear them
 * @param isMatched - equally loud, or as loud as they are
 * @returns its plan, with who has nothing to play left out
 */
export async function scored(piece: Piece, isMatched: boolean): Promise<ScoredPiece> {
  const { hearing } = piece;
  const all = piece.turns.map((turn) => ({ turn, plan: planOf(turn, hearing) }));
  const some = all.filter(({ plan }) => plan.events.length > 0);
  const gains = isMatched
    ? await Promise.all(some.map(({ turn }) => matchedGain(matchPlanOf(turn, hearing))))
    : null;
  const plans = some.map(({ plan }) => plan);
  const turns = some.map(({ turn }) => turn);
  return { ...inTurn(plans, gains ?? [], piece.gap), gains, piece: { ...piece, turns } };
}

/**
 * Sounds a piece in place of what sounds now.
 * @param piece - voicings and how to hear them
 * @param isMatched - equally loud, or as loud as they are
 * @returns the number of the call, for `pieceOver`, once it sounds or it is known why not
 */
export async function startPiece(
  piece: Piece,
  isMatched = sound.getState().isMatched,
): Promise<number> {
  const mine = (call += 1);
  await begin(piece, isMatched, mine);
  return mine;
}

async function begin(piece: Piece, isMatched: boolean, mine: number): Promise<void> {
  now = piece;
  unfollow();
  sound.setState({ phase: "starting", turn: null });
  const player = await playback();
  if (mine !== call) return;
  const score = await scored(piece, isMatched);
  if (mine !== call) return;
  if (score.plan.events.length === 0) {
    quiet();
    return announce("None of the players chosen to be heard sounds here.");
  }
  const started = await player.play({ kind: "plan", plan: score.plan });
  if (mine !== call) return;
  if (!started.ok) {
    quiet();
    sound.setState({ blocked: started.problem.message });
    return announce(started.problem.message);
  }
  if (!sound.getState().isCautioned) announce(headphoneCaution);
  sound.setState({ phase: "sounding", blocked: null, hasSounded: true });
  unfollow = follow(score);
}

/** Stops whatever sounds, here and at the MIDI output. */
export function stopPiece(): void {
  call += 1;
  stopPlayback();
  quiet();
}

/** Brings what sounds to the level that is now chosen, while it sounds. */
export function changeLevel(): void {
  const { phase } = sound.getState();
  if (now === null || phase === "silent") return sound.setState({ matchedBy: null });
  if (phase === "starting") return void startPiece(now);
  void exchange(now);
}

/** Puts the same sound at the other level in the place of what sounds, without a seam. */
async function exchange(piece: Piece): Promise<void> {
  const mine = call;
  const score = await scored(piece, sound.getState().isMatched);
  const player = await playback();
  if (mine !== call || sound.getState().phase !== "sounding") return;
  const at = turnNow(score);
  const swapped = await player.swap({ kind: "plan", plan: score.plan });
  if (mine !== call || !swapped.ok) return;
  gainsNow = score.gains;
  sound.setState({ matchedBy: score.gains?.[at] ?? null });
}

function turnNow({ piece }: ScoredPiece): number {
  const { turn } = sound.getState();
  return Math.max(
    0,
    piece.turns.findIndex(({ name }) => name === turn),
  );
}

/** Tells whose turn it is, and who sounds where the voicing in view has its turn. */
function follow({ plan, starts, piece, gains }: ScoredPiece): () => void {
  const { turns } = piece;
  gainsNow = gains;
  const tell = (index: number) => {
    const name = turns[index]?.name ?? null;
    const isThisAlone = turns.length === 1 && name === thisOne;
    sound.setState({ matchedBy: gainsNow?.[index] ?? null, turn: isThisAlone ? null : name });
  };
  tell(0);
  const timers = starts
    .slice(1)
    .map((at, index) => setTimeout(() => tell(index + 1), Math.round(1000 * at)));
  const shown = turns.findIndex(({ name }) => name === thisOne);
  const from = starts[shown] ?? Infinity;
  const to = starts[shown + 1] ?? Infinity;
  const events = plan.events.filter(({ onset }) => from <= onset && onset < to);
  const ends = [
    followPlan({ ...plan, events }, (sounding) => sound.setState({ sounding })),
    sendAlong(plan),
    () => timers.forEach(clearTimeout),
  ];
  return () => ends.forEach((end) => end());
}

function quiet(): void {
  unfollow();
  unfollow = () => undefined;
  silenceMidi();
  now = null;
  const { hasSounded, isCautioned } = sound.getState();
  if (hasSounded && !isCautioned) rememberCaution();
  sound.setState({
    phase: "silent",
    sounding: [],
    turn: null,
    isCautioned: isCautioned || hasSounded,
  });
}

/**
 * Waits for an end.
 * @param mine - number of a call
 * @returns when its sound is over or another has taken its place
 */
export function pieceOver(mine: number): Promise<void> {
  return new Promise((resolve) => {
    const check = () => {
      if (mine === call && sound.getState().phase !== "silent") return;
      stopListening();
      resolve();
    };
    const stopListening = sound.subscribe(check);
    check();
  });
}
