import { lazy, Suspense, useState } from "react";

/** The sheet is loaded when it is first opened. */
const ExportsSheet = lazy(() =>
  import("./exports-sheet.tsx").then(({ ExportsSheet: part }) => ({ default: part })),
);

/** The way to files and text. */
export function ExportsDoor({ isDisabled }: { readonly isDisabled: boolean }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        className="link push"
        aria-haspopup="dialog"
        disabled={isDisabled}
        title="As MusicXML, MIDI, sound, picture or text"
        onClick={() => setOpen(true)}
      >
        Save or copy
      </button>
      {isOpen && (
        <Suspense>
          <ExportsSheet onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  );
}
