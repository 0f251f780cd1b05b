import type { Db, Seconds } from "../../base/index.ts";
import { levelMatchGain, planVoicing, type SoundPlan } from "../../audio/index.ts";
import { readInquiry } from "../../explore/index.ts";
import type { Playback } from "../../playback/index.ts";
import type { Question, Voicing } from "../../voicing/index.ts";
import { voicingOf } from "../state/view-of.ts";
import { page, session } from "../store.ts";
import { announce } from "./announce.ts";
import { followPlan } from "./follow-plan.ts";
import { sound, type Way } from "./sound-state.ts";

/** Length of each way of hearing, s: long enough to judge, short enough to compare. */
const lengths: Readonly<Record<Way, number>> = {
  hit: 1,
  sustained: 3,
  "rolled-from-bottom": 3.5,
  "section-by-section": 6,
};
/** Level-matching goes by the three-second sustained sound. */
const matchSeconds = 3 as Seconds;
/** Silence between two voicings that are played in turn, ms. */
const betweenMs = 350;

/** What is heard: a voicing under its own question. */
interface Heard {
  readonly voicing: Voicing;
  readonly question: Question;
}

/** One of several voicings heard in turn. */
export interface HeardTurn extends Heard {
  readonly name: string;
}

let loading: Promise<Playback> | undefined;
/** Counts calls, so that one overtaken by another gives up. */
let call = 0;
let unfollow: () => void = () => undefined;
const gains = new Map<string, Db>();

/** Loads the sound ahead of the first press, so that it starts at once. */
export function warmSound(): void {
  void playback().then((player) => player.warmUp());
}

function playback(): Promise<Playback> {
  loading ??= import("../../playback/index.ts").then(({ createPlayback }) => {
    const player = createPlayback();
    player.onEnd((reason) => {
      if (reason !== "replaced") quiet();
    });
    return player;
  });
  return loading;
}

/**
 * Sounds the voicing in view.
 * @param which - a way of hearing, or the last one again
 */
export function hearView(which: Way | "again" = "again"): void {
  const heard = inView();
  if (heard === null) return;
  const way = which === "again" ? sound.getState().last : which;
  call += 1;
  sound.setState({ last: way, turn: null });
  void hear(heard, way, call);
}

/** Sounds one player of the voicing in view, alone. */
export function hearPlayer(playerId: string): void {
  const heard = inView();
  if (heard === null) return;
  const placements = heard.voicing.placements.filter(({ player }) => player.id === playerId);
  if (placements.length === 0) return announce("This player rests.");
  call += 1;
  sound.setState({ turn: null });
  void hear({ ...heard, voicing: { placements } }, "sustained", call);
}

/** Sounds the chosen kept voicings and the one in view, one after the other. */
export async function hearInTurn(): Promise<void> {
  const way = sound.getState().last;
  const { kept, compared } = session();
  const chosen = compared.flatMap((letter) => kept.filter((one) => one.letter === letter));
  const turns = chosen.flatMap((one) => {
    const reading = readInquiry(one.inquiry);
    if (!reading.ok) return [];
    const { question } = reading;
    return [{ name: one.letter, voicing: voicingOf(one.pitches, question), question }];
  });
  const here = inView();
  if (here !== null) turns.push({ name: "this", ...here });
  await hearThese(turns, way, sound.getState().isMatched);
}

/**
 * Sounds voicings one after the other; the sound's state tells whose turn it is.
 * @param turns - what to call each, and what it is
 * @param way - way of hearing
 * @param isMatched - equally loud, or as loud as they are
 */
export async function hearThese(
  turns: readonly HeardTurn[],
  way: Way,
  isMatched: boolean,
): Promise<void> {
  const mine = (call += 1);
  for (const { name, ...heard } of turns) {
    sound.setState({ turn: name });
    await hear(heard, way, mine, isMatched);
    await silence(mine);
    if (mine !== call) return;
  }
  sound.setState({ turn: null });
}

/** Stops whatever sounds. */
export function stopSound(): void {
  call += 1;
  sound.setState({ turn: null });
  void loading?.then((player) => player.stop());
  quiet();
}

/** Plays voicings at the same loudness, or as loud as they are. */
export function matchLevels(isMatched: boolean): void {
  sound.setState({ isMatched, matchedBy: null });
}

/** Lets the bass sound under the horns, or not. */
export function letBassSound(withBass: boolean): void {
  sound.setState({ withBass });
}

function inView(): Heard | null {
  const { view, answer } = page.getState();
  if (view === null || answer === null) return null;
  return { voicing: view.voicing, question: answer.asked.question };
}

function quiet(): void {
  unfollow();
  sound.setState({ phase: "silent", sounding: [] });
}

function planOf({ voicing, question }: Heard, way: Way, seconds: Seconds): SoundPlan {
  const { chord, dynamic } = question;
  const { withBass } = sound.getState();
  return planVoicing(voicing, { dynamic, manner: way, seconds, chord, withBass });
}

async function hear(
  heard: Heard,
  way: Way,
  mine: number,
  isMatched = sound.getState().isMatched,
): Promise<void> {
  sound.setState({ phase: "starting" });
  const player = await playback();
  if (mine !== call) return;
  const gain = isMatched ? await matchedGain(player, heard) : null;
  if (mine !== call) return;
  const plan = planOf(heard, way, lengths[way] as Seconds);
  const started = await player.play({ kind: "plan", plan }, gain === null ? {} : { gain });
  if (mine !== call) return;
  if (!started.ok) {
    sound.setState({ phase: "silent", blocked: started.problem.message });
    return announce(started.problem.message);
  }
  sound.setState({ phase: "sounding", blocked: null, hasSounded: true, matchedBy: gain });
  unfollow();
  unfollow = followPlan(plan, (sounding) => sound.setState({ sounding }));
}

/** The level change that makes voicings equally loud; measured once a voicing. */
async function matchedGain(player: Playback, heard: Heard): Promise<Db> {
  const plan = planOf(heard, "sustained", matchSeconds);
  const key = JSON.stringify([
    plan.events.map((event) => [event.playerId, event.sound, event.curve]),
  ]);
  const known = gains.get(key);
  if (known !== undefined) return known;
  // Opens the output inside the press that asked for it; measuring takes a moment.
  const nothing = new Float32Array(1);
  void player.play({ kind: "samples", samples: { left: nothing, right: nothing } });
  const measured = await player.measure(plan);
  const gain = measured.ok ? levelMatchGain(measured.value) : (0 as Db);
  gains.set(key, gain);
  return gain;
}

/** Waits until the sound of a turn is over, and a moment more. */
function silence(mine: number): Promise<void> {
  return new Promise((resolve) => {
    const over = () => {
      stopListening();
      setTimeout(resolve, mine === call ? betweenMs : 0);
    };
    const check = () => {
      if (mine !== call || sound.getState().phase === "silent") over();
    };
    const stopListening = sound.subscribe(check);
    check();
  });
}
