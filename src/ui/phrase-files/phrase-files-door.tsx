import { lazy, Suspense, useState } from "react";
import { usePhrase } from "../phrase/phrase-store.ts";

/** The sheet is loaded when it is first opened. */
const PhraseFilesSheet = lazy(() =>
  import("./phrase-files-sheet.tsx").then(({ PhraseFilesSheet: part }) => ({ default: part })),
);

/** The way from a voiced phrase to files. */
export function PhraseFilesDoor() {
  const [isOpen, setOpen] = useState(false);
  const view = usePhrase((state) => state.view);
  const isReady = view?.isWhole === true;
  return (
    <>
      <button
        type="button"
        className="link push"
        aria-haspopup="dialog"
        disabled={!isReady}
        title={
          isReady
            ? "Score and parts, MIDI, sound of the whole and of each player"
            : "As soon as the phrase is voiced"
        }
        onClick={() => setOpen(true)}
      >
        Save phrase
      </button>
      {isOpen && view !== null && (
        <Suspense>
          <PhraseFilesSheet view={view} onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  );
}
