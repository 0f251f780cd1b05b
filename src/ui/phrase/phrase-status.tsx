import type { Melody, MelodyProblem } from "../../theory/index.ts";
import { WarnSign } from "../parts/warn-sign.tsx";
import { usePage } from "../store.ts";
import { counted, listed } from "../words/counts.ts";
import { BarsSheet } from "./melody/bars-sheet.tsx";
import { OpenButton } from "./open-button.tsx";
import { freeAll, leavePhrase, stopSearch } from "./phrase-actions.ts";
import { usePhrase } from "./phrase-store.ts";
import { searchOn } from "./solve-phrase.ts";

/** Most problems shown at once. */
const mostShown = 4;

/** How far the search is, and what keeps it from an answer. */
export function PhraseStatus({ melody }: { readonly melody: Melody }) {
  return (
    <div className="phrase-status">
      <div className="row status-row">
        <Progress />
        <Fixed />
        <span className="row push">
          <BarsSheet melody={melody} />
          <OpenButton className="link" />
          <button type="button" className="link" onClick={leavePhrase}>
            Another phrase
          </button>
        </span>
      </div>
      <Problems />
    </div>
  );
}

/** How much is fixed, and a way to let go of it all. */
function Fixed() {
  const locks = usePage((state) => state.history.present.phrase?.question.locks);
  const players = locks?.notes.length ?? 0;
  const moments = locks?.moments.length ?? 0;
  if (players + moments === 0) return null;
  const words = [
    ...(moments > 0 ? [counted(moments, "moment")] : []),
    ...(players > 0 ? [counted(players, "note")] : []),
  ];
  return (
    <button type="button" className="link" onClick={freeAll}>
      Free all that is fixed: {listed(words)}
    </button>
  );
}

/** A melody without a note is a beginning, not a mistake. */
function isEmpty(problems: readonly MelodyProblem[]): boolean {
  return problems[0]?.code === "melody-empty";
}

function Progress() {
  const searching = usePhrase((state) => state.searching);
  const fault = usePhrase((state) => state.fault);
  const view = usePhrase((state) => state.view);
  const question = usePage((state) => state.history.present.phrase?.question);
  const problems = usePhrase((state) => state.problems);
  if (isEmpty(problems))
    return <p className="quiet">Put a first note on the staff, type one, or play one in.</p>;
  if (fault !== null)
    return (
      <p className="row" role="alert">
        <WarnSign /> The search broke off: {fault}.
        <button type="button" className="link" onClick={searchOn}>
          Search again
        </button>
      </p>
    );
  if (searching !== null)
    return (
      <p className="row phrase-progress">
        <progress value={searching.done} max={Math.max(1, searching.all)} aria-label="Search" />
        <span className="quiet">
          {view === null ? "Looking for a first answer" : "Looking for a better answer"}
        </span>
        <button type="button" className="link" onClick={stopSearch}>
          Stop here
        </button>
      </p>
    );
  if (view === null || view.work.question !== question) return <p className="quiet">&nbsp;</p>;
  const { moments } = view.answer;
  const candidates = moments.reduce((sum, moment) => sum + moment.candidates, 0);
  return (
    <p className="row" data-testid="phrase-state" data-whole={view.isWhole}>
      <span className="quiet">
        {view.isWhole
          ? `${counted(moments.length, "moment")}, the best path through ${candidates.toLocaleString("en")} voicings.`
          : "A first answer; a better one was not looked for."}
      </span>
      {!view.isWhole && (
        <button type="button" className="link" onClick={searchOn}>
          Look for a better one
        </button>
      )}
    </p>
  );
}

function Problems() {
  const problems = usePhrase((state) => state.problems);
  if (problems.length === 0 || isEmpty(problems)) return null;
  const isHeld = problems.some(({ code }) => code.startsWith("lock"));
  return (
    <div className="phrase-problems" role="alert">
      {problems.slice(0, mostShown).map(({ message }) => (
        <p key={message} className="row">
          <WarnSign /> {message}
        </p>
      ))}
      {problems.length > mostShown && (
        <p className="quiet">And {problems.length - mostShown} more.</p>
      )}
      {isHeld && (
        <button type="button" className="act" onClick={freeAll}>
          Free everything that is fixed
        </button>
      )}
    </div>
  );
}
