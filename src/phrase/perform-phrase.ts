import { quantity, type Count, type Seconds } from "../base/index.ts";
import { accompany, performAccompaniment } from "./accompany.ts";
import type { PlayedRhythmNote, RhythmNote } from "./accompaniment-types.ts";
import { articulate, type Articulated, type ArticulationChoices } from "./articulate.ts";
import { withCaughtBreaths } from "./catch-breath.ts";
import { partsOf, type PlayerPart } from "./parts.ts";
import { performParts, type PlayedNote } from "./perform.ts";
import type { Phrase, PhraseAnswer } from "./phrase-types.ts";
import { clockOf, feelOf, type Feel } from "./swing.ts";

/** How a phrase is played. */
export interface PerformanceOptions {
  readonly articulations?: ArticulationChoices;
  /** Another feel than the style's usual one. */
  readonly feel?: Feel;
  /** Seed of the rhythm section's choices, 1 unless given. */
  readonly seed?: Count;
}

/** A phrase as it is written and as it is played: all that sound and files need. */
export interface PhrasePerformance {
  readonly feel: Feel;
  readonly articulated: readonly Articulated[];
  readonly parts: readonly PlayerPart[];
  readonly rhythm: readonly RhythmNote[];
  readonly played: readonly PlayedNote[];
  readonly playedRhythm: readonly PlayedRhythmNote[];
  /** End of the last bar. */
  readonly seconds: Seconds;
}

/**
 * Parts, articulation, rhythm section and timing of an answer.
 * @param phrase - the phrase
 * @param answer - its voicings
 * @param options - articulation, feel, seed
 * @returns plain data
 */
export function performPhrase(
  phrase: Phrase,
  answer: PhraseAnswer,
  options: PerformanceOptions = {},
): PhrasePerformance {
  const { melody, changes, dynamics } = phrase;
  const notes = phrase.harmonised.map(({ note }) => note);
  const feel = options.feel ?? feelOf(melody.style, melody.tempo);
  const articulated = articulate(melody, notes, options.articulations ?? {});
  const parts = withCaughtBreaths(phrase, partsOf(phrase, answer, articulated));
  const rhythm = accompany(melody, changes, options.seed ?? 1);
  return {
    feel,
    articulated,
    parts,
    rhythm,
    played: performParts(melody, notes, parts, dynamics, feel),
    playedRhythm: performAccompaniment(melody, rhythm, dynamics, feel),
    seconds: quantity<Seconds>(clockOf(melody, feel).rhythm(melody.length)),
  };
}
