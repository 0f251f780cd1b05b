import { lazy, Suspense, useEffect } from "react";
import { warmSound } from "./actions/hear.ts";
import { usePageKeys } from "./page-keys.ts";
import { Kept } from "./kept/kept.tsx";
import { MapColumn } from "./map/map-column.tsx";
import { Measures } from "./measures/measures.tsx";
import { LiveRegion } from "./parts/live-region.tsx";
import { EmptyQuestion } from "./strip/empty-question.tsx";
import { QuestionStrip } from "./strip/question-strip.tsx";
import { isCleared } from "./state/session.ts";
import { usePage } from "./store.ts";
import { VoicingView } from "./voicing/voicing-view.tsx";

/** The phrase is loaded when it is first opened. */
const PhraseView = lazy(() =>
  import("./phrase/phrase-view.tsx").then(({ PhraseView: view }) => ({ default: view })),
);

/** The one screen: one chord, or a phrase. */
export function App() {
  usePageKeys();
  const pane = usePage((state) => state.pane);
  if (pane === "chord") return <ChordView />;
  return (
    <Suspense>
      <PhraseView />
    </Suspense>
  );
}

function ChordView() {
  const isAnswered = usePage((state) => state.view !== null);
  useEffect(() => {
    if (isAnswered) warmSound();
  }, [isAnswered]);
  const isEmpty = usePage((state) => isCleared(state.history.present.inquiry));
  return (
    <div className="page">
      <QuestionStrip />
      {isEmpty ? (
        <EmptyQuestion />
      ) : (
        <>
          <div className="side">
            <MapColumn />
            <Kept />
          </div>
          <VoicingView />
          <Measures />
        </>
      )}
      <LiveRegion />
    </div>
  );
}
