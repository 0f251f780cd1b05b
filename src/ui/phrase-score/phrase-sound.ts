import { positionIn, type PhraseSound } from "../../audio/index.ts";
import type { Db, Result } from "../../base/index.ts";
import type { EndReason, Playback } from "../../playback/index.ts";
import type { Divisions } from "../../theory/index.ts";
import { announce } from "../actions/announce.ts";
import { headphoneCaution } from "../actions/caution.ts";
import { matchedGain, onSoundOver, playback, stopPlayback } from "../actions/sound-door.ts";
import { stopPiece } from "../actions/sound-piece.ts";
import { sound } from "../actions/sound-state.ts";
import { sendAlong, silenceMidi } from "../midi/midi-out.ts";
import { phraseStore, type PhraseInView } from "../phrase/phrase-store.ts";
import { phraseSound, tellCursor, type PhraseSoundState } from "./phrase-sound-state.ts";
import { heardSound } from "./sound-plan.ts";

/** Counts presses, so that one overtaken by another gives up. */
let call = 0;
/** What sounds, and what is needed to follow or change it. */
let now: {
  readonly sound: PhraseSound;
  readonly player: Playback;
  readonly from: Divisions | null;
} | null = null;
let frame = 0;
let endMidi: () => void = () => undefined;

onSoundOver(over);
// Another sound of the page has begun: the phrase gives way.
sound.subscribe(({ phase }, before) => {
  if (phase === "starting" && before.phase !== "starting" && now !== null) fallSilent();
});
// Another answer to the same melody takes over without a seam; another melody ends the sound.
phraseStore.subscribe(({ view }, { view: before }) => {
  if (now === null || view === before) return;
  if (view !== null && before !== null && isSameTime(view, before)) void exchange(view, now);
  else stopPhrase();
});

function isSameTime({ phrase: { melody } }: PhraseInView, { phrase }: PhraseInView): boolean {
  const other = phrase.melody;
  return (
    melody.length === other.length &&
    melody.tempo === other.tempo &&
    melody.style === other.style &&
    melody.pickup === other.pickup
  );
}

/** Plays from where the user is, or from the start. */
export function playPhrase(where: "place" | "start" = "place"): void {
  const { view, place } = phraseStore.getState();
  if (view === null) return;
  const moment = view.phrase.moments.find(({ moment: { id } }) => id === place?.momentId);
  void begin(view, where === "place" ? (moment?.moment.onset ?? null) : null, false);
}

/** Silence. */
export function stopPhrase(): void {
  call += 1;
  stopPlayback();
  fallSilent();
}

/** Plays, or stops what plays. */
export function playOrStop(): void {
  if (phraseSound.getState().phase === "silent") playPhrase();
  else stopPhrase();
}

/**
 * Hears the phrase in another way from now on; what sounds changes with it, without a seam where it
 * may.
 * @param change - who is heard, what is looped, how loud
 */
export function hearOtherwise(change: Partial<PhraseSoundState>): void {
  const before = phraseSound.getState();
  phraseSound.setState(change);
  const { view } = phraseStore.getState();
  if (now === null || view === null || before.phase !== "sounding") return;
  if ("isCounted" in change) return;
  if (!("bars" in change) && !("isLooped" in change)) void exchange(view, now);
  else void begin(view, null, true);
}

async function begin(view: PhraseInView, from: Divisions | null, isAgain: boolean): Promise<void> {
  const mine = (call += 1);
  if (sound.getState().phase !== "silent") stopPiece();
  cancelAnimationFrame(frame);
  endMidi();
  phraseSound.setState({ phase: "starting" });
  const player = await playback();
  if (mine !== call) return;
  const state = phraseSound.getState();
  const heard = heardSound(view, state, from, isAgain);
  if (heard.plan.events.length === 0) {
    fallSilent();
    return announce("None of the players chosen to be heard plays here.");
  }
  const gain = await gainFor(view, state);
  if (mine !== call) return;
  const started = await player.play({ kind: "plan", plan: heard.plan }, { gain });
  if (mine !== call) return;
  if (!started.ok) return refused(started);
  if (!sound.getState().isCautioned) announce(headphoneCaution);
  sound.setState({ hasSounded: true });
  now = { sound: heard, player, from };
  phraseSound.setState({ phase: "sounding", blocked: null, ...matchedBy(state, gain) });
  endMidi = sendAlong(heard.plan);
  follow();
}

function refused(problem: Extract<Result<void>, { readonly ok: false }>): void {
  fallSilent();
  phraseSound.setState({ blocked: problem.problem.message });
  announce(problem.problem.message);
}

/** Puts the same music, heard otherwise, in the place of what sounds. */
async function exchange(view: PhraseInView, old: NonNullable<typeof now>): Promise<void> {
  const mine = call;
  const state = phraseSound.getState();
  const isAgain = old.sound.timeline.leadSeconds === 0;
  const heard = heardSound(view, state, old.from, isAgain);
  if (heard.plan.events.length === 0) {
    stopPhrase();
    return announce("None of the players chosen to be heard plays here.");
  }
  const gain = await gainFor(view, state);
  if (mine !== call || now !== old) return;
  const swapped = await old.player.swap({ kind: "plan", plan: heard.plan }, { gain });
  if (mine !== call || !swapped.ok || now !== old) return;
  now = { ...old, sound: heard };
  phraseSound.setState(matchedBy(state, gain));
}

/** The gain that makes this answer as loud as any other, whoever is heard of it. */
async function gainFor(view: PhraseInView, { isMatched }: PhraseSoundState): Promise<Db> {
  if (!isMatched) return 0 as Db;
  const everybody = { silentIds: [], aloneIds: [], isCounted: false, isLooped: false, bars: null };
  return matchedGain(heardSound(view, { ...phraseSound.getState(), ...everybody }, null).plan);
}

const matchedBy = ({ isMatched }: PhraseSoundState, gain: Db): Partial<PhraseSoundState> => ({
  matchedBy: isMatched ? gain : null,
});

/** Follows the sound by the clock of the output, a look a frame. */
function follow(): void {
  cancelAnimationFrame(frame);
  const isStill = matchMedia("(prefers-reduced-motion: reduce)").matches;
  const look = (): void => {
    if (now === null) return;
    frame = requestAnimationFrame(look);
    const seconds = now.player.position();
    const { view } = phraseStore.getState();
    if (seconds === undefined || view === null) return;
    const { at } = positionIn(now.sound.timeline, seconds);
    const moment = at === null ? undefined : momentAt(view, at);
    const momentId = moment?.id ?? null;
    const { momentId: before, isCounting } = phraseSound.getState();
    if (momentId !== before || isCounting !== (at === null))
      phraseSound.setState({ momentId, isCounting: at === null });
    tellCursor(isStill ? (moment?.onset ?? at) : at);
  };
  frame = requestAnimationFrame(look);
}

function momentAt(view: PhraseInView, at: Divisions) {
  return view.phrase.moments.find(
    ({ moment: { onset, duration } }) => onset <= at && at < onset + duration,
  )?.moment;
}

/** The sound has come to its end: a loop begins anew. */
function over(reason: EndReason): void {
  if (now === null) return;
  const { view } = phraseStore.getState();
  if (reason === "finished" && phraseSound.getState().isLooped && view !== null)
    void begin(view, null, true);
  else fallSilent();
}

function fallSilent(): void {
  now = null;
  cancelAnimationFrame(frame);
  endMidi();
  endMidi = () => undefined;
  silenceMidi();
  phraseSound.setState({ phase: "silent", momentId: null, isCounting: false });
  tellCursor(null);
}
