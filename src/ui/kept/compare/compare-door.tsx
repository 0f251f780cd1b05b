import { lazy, Suspense, useState } from "react";

/** The sheet is loaded when it is first opened. */
const CompareSheet = lazy(() =>
  import("./compare-sheet.tsx").then(({ CompareSheet: part }) => ({ default: part })),
);

/** The way to the chosen voicings side by side. */
export function CompareDoor({ chosen }: { readonly chosen: number }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        className="link"
        aria-haspopup="dialog"
        disabled={chosen < 2}
        title={
          chosen < 2
            ? "Choose two or more by their letters first"
            : "The chosen ones side by side: ladder, staff, measures, differences"
        }
        onClick={() => setOpen(true)}
      >
        Side by side
      </button>
      {isOpen && (
        <Suspense>
          <CompareSheet onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  );
}
