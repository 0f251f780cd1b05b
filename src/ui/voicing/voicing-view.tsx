import { useState } from "react";
import { techniqueTexts } from "../../voicing/index.ts";
import { showBest } from "../actions/edit.ts";
import { fixMoved } from "../actions/roles.ts";
import { takeBack } from "../actions/steps.ts";
import { HearBar } from "../hear/hear-bar.tsx";
import { Choice } from "../parts/choice.tsx";
import { useMedia } from "../parts/use-size.ts";
import type { Answer, InView } from "../state/page-state.ts";
import { usePage } from "../store.ts";
import { withSigns } from "../words/signs.ts";
import { BrokenList } from "./broken-list.tsx";
import { LadderRoom } from "./ladder-room.tsx";
import { NextChordDoor } from "../next-chord/next-chord-door.tsx";
import { NextFewPick } from "./next-few.tsx";
import { PartsView } from "./parts-view.tsx";
import { ReasonWords } from "./reason-words.tsx";
import { TypeVoicing } from "./type-voicing.tsx";

type Shown = "ladder" | "grand" | "parts";

/** The voicing: what it is, why, and where everybody is. */
export function VoicingView() {
  const answer = usePage((state) => state.answer);
  const view = usePage((state) => state.view);
  const [shown, setShown] = useState<Shown>("ladder");
  const [isTyping, setTyping] = useState(false);
  const isNarrow = useMedia("(max-width: 767px)");
  const options = [
    { value: "ladder" as const, text: "Ladder" },
    ...(isNarrow ? [{ value: "grand" as const, text: "Staff" }] : []),
    { value: "parts" as const, text: "Staves" },
  ];
  return (
    <main className="voicing" aria-labelledby="voicing-title">
      {answer === null || view === null ? (
        <h2 id="voicing-title">Voicing</h2>
      ) : (
        <>
          <VoicingHead answer={answer} view={view} hasUndo={!isNarrow} />
          <div className="voicing-words">
            <ReasonWords key={view.report.stack.join(" ")} view={view} />
            <BrokenList view={view} />
            <Remarks answer={answer} />
            <div className="row voicing-tools">
              {!isNarrow && <VoicingSteps view={view} isTyping={isTyping} onType={setTyping} />}
              <span className="push">
                <Choice
                  label="Picture of the voicing"
                  options={options}
                  value={shown}
                  onChange={setShown}
                />
              </span>
            </div>
          </div>
          {isTyping && <TypeVoicing onClose={() => setTyping(false)} />}
          {shown === "ladder" && <LadderRoom answer={answer} view={view} isNarrow={isNarrow} />}
          {shown !== "ladder" && (
            <PartsView answer={answer} view={view} isGrand={shown === "grand"} />
          )}
          {isNarrow && (
            <div className="row voicing-tools">
              <UndoStep />
              <VoicingSteps view={view} isTyping={isTyping} onType={setTyping} />
            </div>
          )}
        </>
      )}
      <HearBar />
    </main>
  );
}

function VoicingHead(props: {
  readonly answer: Answer;
  readonly view: InView;
  readonly hasUndo: boolean;
}) {
  const { answer, view, hasUndo } = props;
  const made = usePage((state) => state.history.present.made);
  const { stack, techniques, isCrossSection } = view.report;
  const names = techniques.map((id) => techniqueTexts.get(id)?.label.toLowerCase() ?? id);
  const title = made === null ? [] : [made.title.toLowerCase()];
  const kinds = isCrossSection ? ["cross-section", ...names] : names;
  const words = [...new Set([...title, ...kinds])];
  return (
    <div className="row voicing-head">
      <h2 id="voicing-title">Voicing</h2>
      <p className="stack-words">
        {stack.map((pitch) => withSigns(answer.asked.nameOf(pitch).name)).join(" ")}
      </p>
      <p className="quiet">{words.join(", ")}</p>
      {hasUndo && <UndoStep />}
    </div>
  );
}

/** Takes the last step back, by its name, while a voicing that was made is in view. */
function UndoStep() {
  const back = usePage((state) => state.history.past.length);
  const step = usePage((state) => state.history.present.step);
  const isMade = usePage((state) => state.history.present.made !== null);
  if (!isMade || back === 0) return null;
  return (
    <button type="button" className="link push" onClick={takeBack}>
      Undo: {step}
    </button>
  );
}

/** Readings the trade is split on, and clashes of melody and chord: said, not hidden. */
function Remarks({ answer }: { readonly answer: Answer }) {
  const { remarks } = answer.asked;
  if (remarks.length === 0) return null;
  return (
    <p className="remarks quiet" data-testid="remarks">
      {remarks.map(withSigns).join(" ")}
    </p>
  );
}

/** Ways on from here: other stacks, one of your own, back to the best, fix what was moved. */
function VoicingSteps(props: {
  readonly view: InView;
  readonly isTyping: boolean;
  readonly onType: (isTyping: boolean) => void;
}) {
  const { view, isTyping, onType } = props;
  const made = usePage((state) => state.history.present.made);
  return (
    <>
      <NextFewPick />
      <NextChordDoor />
      <button
        type="button"
        className="link"
        aria-expanded={isTyping}
        title="Type who sounds what, and see where it falls on the map"
        onClick={() => onType(!isTyping)}
      >
        Type a voicing
      </button>
      {made !== null && view.best !== null && (
        <button type="button" className="link" onClick={showBest}>
          Show the best here
        </button>
      )}
      {made?.by === "hand" && (
        <button
          type="button"
          className="link"
          title="Holds the players you moved where they are and finds the rest anew"
          onClick={fixMoved}
        >
          Fix what I moved, find the rest
        </button>
      )}
    </>
  );
}
