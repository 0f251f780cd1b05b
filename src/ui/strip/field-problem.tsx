import { useEffect, useState } from "react";
import type { FieldProblem, InquiryField } from "../../explore/index.ts";
import { askChord, askLineUp, askMelody, freePlayers } from "../actions/ask.ts";
import { WarnSign } from "../parts/warn-sign.tsx";
import { isCleared } from "../state/session.ts";
import { usePage } from "../store.ts";
import { chordWithSigns, withSigns } from "../words/signs.ts";

/** How long a problem stands before it is said, ms. */
const settleMs = 350;

/** Id of the sentence about a field, for the field's description. */
export function problemId(field: InquiryField): string {
  return `problem-${field}`;
}

/**
 * Whether a field is to be marked as wrong.
 * @param field - the field
 * @returns false while the whole question is cleared: an empty page is not a mistake
 */
export function useIsWrong(field: InquiryField): boolean {
  return usePage(
    (state) =>
      !isCleared(state.history.present.inquiry) &&
      state.problems.some((problem) => problem.field === field),
  );
}

/** What is wrong with the question: at the field, one sentence, up to three ways on. */
export function FieldProblems() {
  const problems = useSettled(usePage((state) => state.problems));
  const cleared = usePage((state) => isCleared(state.history.present.inquiry));
  if (problems.length === 0 || cleared) return null;
  return (
    <div className="problems" role="alert">
      {problems.map((problem) => (
        <OneProblem key={problem.field + problem.code} problem={problem} />
      ))}
    </div>
  );
}

/** Problems that have stood for a moment: half-typed text is not yet wrong. */
function useSettled(problems: readonly FieldProblem[]): readonly FieldProblem[] {
  const [settled, setSettled] = useState<readonly FieldProblem[]>([]);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(problems), problems.length === 0 ? 0 : settleMs);
    return () => clearTimeout(timer);
  }, [problems]);
  return problems.length === 0 ? problems : settled;
}

function OneProblem({ problem }: { readonly problem: FieldProblem }) {
  const ways = (problem.suggestions ?? []).slice(0, 3);
  return (
    <div className="problem" id={problemId(problem.field)}>
      <WarnSign />
      <p>{withSigns(problem.message)}</p>
      {ways.map((way) => (
        <button key={way} type="button" className="act" onClick={() => takeWay(problem.field, way)}>
          {problem.field === "chord" ? chordWithSigns(way) : withSigns(way)}
        </button>
      ))}
      {problem.field === "locks" && (
        <button type="button" className="act" onClick={() => freePlayers("all", "free everybody")}>
          Free everybody
        </button>
      )}
    </div>
  );
}

function takeWay(field: InquiryField, way: string): void {
  if (field === "chord") askChord(way, false);
  else if (field === "melody") askMelody(way, false);
  else if (field === "line-up") askLineUp(way);
}
