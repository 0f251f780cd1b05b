import { readInquiry, reportOn, type VoicingReport } from "../../explore/index.ts";
import type { Question } from "../../voicing/index.ts";
import type { Kept, Pitches } from "../state/session.ts";
import { voicingOf } from "../state/view-of.ts";
import type { Inquiry } from "../../explore/index.ts";

/** A kept voicing with what is said about it under its own question. */
export interface ReportedKept {
  readonly kept: Kept;
  readonly report: VoicingReport;
  readonly question: Question;
}

type Said = Omit<ReportedKept, "kept"> & { readonly inquiry: Inquiry };

/** Naming and moving leave the pitches as they are: what is said of them need not be worked out. */
const known = new WeakMap<Pitches, Said>();

/**
 * What is said about kept voicings.
 * @param kept - some or all that are kept
 * @returns those whose question can be read, in the same order
 */
export function reportedKept(kept: readonly Kept[]): readonly ReportedKept[] {
  return kept.flatMap((one) => {
    const said = saidOf(one);
    return said === undefined ? [] : [{ kept: one, report: said.report, question: said.question }];
  });
}

function saidOf({ pitches, inquiry }: Kept): Said | undefined {
  const before = known.get(pitches);
  if (before?.inquiry === inquiry) return before;
  const reading = readInquiry(inquiry);
  if (!reading.ok) return undefined;
  const { question } = reading;
  const said = { inquiry, question, report: reportOn(voicingOf(pitches, question), question) };
  known.set(pitches, said);
  return said;
}
