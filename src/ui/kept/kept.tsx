import { useMemo, useState } from "react";
import { readInquiry, reportOn, textOf, type VoicingReport } from "../../explore/index.ts";
import type { Question } from "../../voicing/index.ts";
import { announce } from "../actions/announce.ts";
import { compare, keepThis, letGo, nameKept, showKept } from "../actions/keep.ts";
import { endTyping } from "../actions/steps.ts";
import { KeptSound } from "../hear/kept-sound.tsx";
import type { Kept as KeptVoicing } from "../state/session.ts";
import { voicingOf } from "../state/view-of.ts";
import { page, usePage } from "../store.ts";
import { counted, listed } from "../words/counts.ts";
import { spanText } from "../words/interval-words.ts";
import { differenceWords } from "./difference.ts";
import { SmallLadder } from "./small-ladder.tsx";

/** A kept voicing with what is said about it under its own question. */
interface ReportedKept {
  readonly kept: KeptVoicing;
  readonly report: VoicingReport;
  readonly question: Question;
}

/** Voicings put aside: side by side, with one sentence about how two of them differ. */
export function Kept() {
  const kept = usePage((state) => state.history.present.kept);
  const compared = usePage((state) => state.history.present.compared);
  const hasView = usePage((state) => state.view !== null);
  const reported = useMemo(() => kept.flatMap(reportedKept), [kept]);
  const [left, right] = compared.map((letter) =>
    reported.find((one) => one.kept.letter === letter),
  );
  return (
    <section className="kept" aria-labelledby="kept-title">
      <div className="row">
        <h2 id="kept-title">Kept</h2>
        <p className="quiet">{compared.length > 0 ? `${listed(compared)} chosen` : ""}</p>
        <button type="button" className="link push" disabled={!hasView} onClick={copyThis}>
          Copy as text
        </button>
        <button type="button" className="link" disabled={!hasView} onClick={keepThis}>
          Keep this one
        </button>
      </div>
      {kept.length === 0 && (
        <p className="quiet kept-none">
          Nothing kept yet. What you keep stands here side by side, to compare and to play in turn.
        </p>
      )}
      <KeptSound />
      <div className="kept-body">
        <ul className="kept-list">
          {reported.map((one) => (
            <KeptOne
              key={one.kept.letter}
              one={one}
              isCompared={compared.includes(one.kept.letter)}
            />
          ))}
        </ul>
        {left !== undefined && right !== undefined && (
          <p className="difference" data-testid="difference">
            <b>
              {right.kept.letter} against {left.kept.letter}:
            </b>{" "}
            {differenceWords(right.report, left.report)}
          </p>
        )}
      </div>
    </section>
  );
}

function reportedKept(kept: KeptVoicing): readonly ReportedKept[] {
  const reading = readInquiry(kept.inquiry);
  if (!reading.ok) return [];
  const { question } = reading;
  return [{ kept, question, report: reportOn(voicingOf(kept.pitches, question), question) }];
}

/** Puts the voicing in view on the clipboard as plain text. */
function copyThis(): void {
  const { view, answer } = page.getState();
  if (view === null || answer === null) return;
  navigator.clipboard.writeText(textOf(view.report, answer.asked.question)).then(
    () => announce("Copied as text."),
    () => announce("The browser refused the clipboard."),
  );
}

function KeptOne({
  one,
  isCompared,
}: {
  readonly one: ReportedKept;
  readonly isCompared: boolean;
}) {
  const { kept, report, question } = one;
  const { letter, name } = kept;
  const { cell } = report;
  const words = `${name}, ${spanText(cell.span)}, ${counted(cell.notes, "note")}`;
  return (
    <li className={isCompared ? "kept-item kept-compared" : "kept-item"}>
      <button
        type="button"
        className="kept-one"
        aria-pressed={isCompared}
        aria-label={`Compare ${letter}: ${words}`}
        onClick={() => compare(letter)}
      >
        <SmallLadder voicing={report.voicing} />
        <span className="letter loud">{letter}</span>
      </button>
      <div className="kept-words">
        <NameField kept={kept} />
        <span className="quiet">
          {question.chord.display}, {spanText(cell.span, "brief")}
        </span>
        <span className="quiet">{counted(cell.notes, "note")}</span>
        <span className="row kept-acts">
          <button
            type="button"
            className="link"
            aria-label={`Show ${letter}`}
            onClick={() => showKept(kept)}
          >
            Show
          </button>
          <button
            type="button"
            className="link"
            aria-label={`Let ${letter} go`}
            onClick={() => letGo(letter)}
          >
            Let go
          </button>
        </span>
      </div>
    </li>
  );
}

/** The kept voicing's name, to be changed in place. */
function NameField({ kept }: { readonly kept: KeptVoicing }) {
  const [text, setText] = useState<string | null>(null);
  const settle = () => {
    const name = text?.trim() ?? "";
    setText(null);
    if (name !== "" && name !== kept.name) nameKept(kept.letter, name);
    endTyping();
  };
  return (
    <input
      className="kept-name"
      aria-label={`Name of ${kept.letter}`}
      value={text ?? kept.name}
      maxLength={40}
      onChange={(event) => setText(event.target.value)}
      onBlur={settle}
      onKeyDown={(event) => {
        if (event.key === "Enter") event.currentTarget.blur();
      }}
    />
  );
}
