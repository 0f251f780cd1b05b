import { useEffect } from "react";
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

/** The one screen. */
export function App() {
  usePageKeys();
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
