import { lazy, Suspense, useState } from "react";

/** The sheet is loaded when it is first opened. */
const NextChordSheet = lazy(() =>
  import("./next-chord-sheet.tsx").then(({ NextChordSheet: part }) => ({ default: part })),
);

/** The way to the voicing in motion. */
export function NextChordDoor() {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        className="link"
        aria-haspopup="dialog"
        title="Hear this voicing move into a neighbouring chord, with each player’s step"
        onClick={() => setOpen(true)}
      >
        Into the next chord
      </button>
      {isOpen && (
        <Suspense>
          <NextChordSheet onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  );
}
