import { bySectionVoicings, type Question } from "../voicing/index.ts";
import { reportOn, type VoicingReport } from "./report.ts";

/** A by-section textbook answer, placed in the same space as everything else. */
export interface ReferencePoint {
  /** A, B, C … in the order of the list. */
  readonly letter: string;
  readonly label: string;
  /** What had to be changed to fit these players; empty when nothing. */
  readonly note: string;
  readonly report: VoicingReport;
}

/**
 * What a writer gets by voicing each section on its own by the textbook. Never filtered: the rules
 * they break are named in their reports.
 * @param question - the question
 * @returns the constructions that these players can form
 */
export function referencePoints(question: Question): readonly ReferencePoint[] {
  const { chord, lead, players, ticked, dynamic } = question;
  return bySectionVoicings(chord, lead, players, { ticked, dynamic }).map((found, index) => ({
    letter: String.fromCharCode(65 + index),
    label: found.label,
    note: found.note,
    report: reportOn(found.voicing, question),
  }));
}
