import { planPhrase, usualCountIn, type PhraseSound } from "../../audio/index.ts";
import { quantity } from "../../base/index.ts";
import { barCount, barStart, type Divisions, type Melody } from "../../theory/index.ts";
import type { PhraseInView } from "../phrase/phrase-store.ts";
import { session } from "../store.ts";
import type { LoopBars, PhraseSoundState } from "./phrase-sound-state.ts";

/** The players beside the horns, as the sound names them. */
export const rhythmPlayers = Object.freeze([
  { id: "bass", name: "Bass" },
  { id: "piano", name: "Piano" },
  { id: "drums", name: "Drums" },
] as const);

/** A loop is planned this long ahead, then begun anew. */
const LOOP_SECONDS = 150;

/** A stretch of the music. */
export interface Stretch {
  readonly from: Divisions;
  readonly to: Divisions;
}

/**
 * Bars as a stretch of time.
 * @param melody - metre, pickup, length
 * @param bars - null for everything; bars that are not there are passed over
 * @returns the stretch, never empty
 */
export function stretchOf(melody: Melody, bars: LoopBars | null): Stretch {
  const whole = { from: quantity<Divisions>(0), to: melody.length };
  if (bars === null) return whole;
  const last = barCount(melody);
  const fromBar = Math.min(bars.fromBar, last);
  const toBar = Math.min(Math.max(bars.toBar, fromBar), last);
  const from = barStart(melody, fromBar);
  const to = quantity<Divisions>(Math.min(melody.length, barStart(melody, toBar + 1)));
  return from < to ? { from, to } : whole;
}

/**
 * Who is left out.
 * @param view - the phrase
 * @param state - who is silent, who is heard alone
 * @returns ids
 */
export function silentOf(
  view: PhraseInView,
  { silentIds, aloneIds }: Pick<PhraseSoundState, "silentIds" | "aloneIds">,
): readonly string[] {
  if (aloneIds.length === 0) return silentIds;
  const all = [...view.phrase.players.map(({ id }) => id), ...rhythmPlayers.map(({ id }) => id)];
  return all.filter((id) => !aloneIds.includes(id) || silentIds.includes(id));
}

/**
 * The sound that a press of play asks for.
 * @param view - the phrase
 * @param state - how it is to be heard
 * @param from - where to begin; from the first bar chosen when null or outside
 * @param isAgain - a loop that goes on: nothing is counted
 * @returns plan and line of time
 */
export function heardSound(
  view: PhraseInView,
  state: PhraseSoundState,
  from: Divisions | null,
  isAgain = false,
): PhraseSound {
  const { phrase } = view;
  const stretch = stretchOf(phrase.melody, state.bars);
  const isInside = from !== null && from > stretch.from && from < stretch.to;
  const start = isInside && !state.isLooped ? from : stretch.from;
  const seconds = ((stretch.to - start) / phrase.melody.division) * (60 / phrase.melody.tempo);
  return planPhrase(phrase, view.performance, {
    from: start,
    to: stretch.to,
    passes: state.isLooped ? Math.max(1, Math.ceil(LOOP_SECONDS / seconds)) : 1,
    countInBars: state.isCounted && !isAgain ? usualCountIn(phrase.melody) : 0,
    silentIds: silentOf(view, state),
    seats: session().seats,
  });
}
