import type { Count } from "../base/index.ts";
import type { ArticulationChoices, PhraseQuestion } from "../phrase/index.ts";

/**
 * A phrase being worked on, as plain data that is saved, shared and undone. Its voicings are not in
 * it: the same question gives the same answer again.
 */
export interface PhraseWork {
  /** The melody as the user typed it; stays as typed even while it cannot be read. */
  readonly typed: string;
  /** The last question that could be read. */
  readonly question: PhraseQuestion;
  /** Marks set by hand, by note id. */
  readonly articulations: ArticulationChoices;
  /** Which answer is in view: 0 is the best, 1 and up the alternatives in their order. */
  readonly alternative: Count;
}
