import { lazy, Suspense, useState } from "react";

/** Lessons and quiz are loaded when they are first opened. */
const Teaching = lazy(() =>
  import("./teaching.tsx").then(({ Teaching: part }) => ({ default: part })),
);

/** The way into the lessons. */
export function TeachingDoor() {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        className="link"
        aria-haspopup="dialog"
        title="Hear what span, weight, density and interleaving are, and test your ear"
        onClick={() => setOpen(true)}
      >
        Lesson
      </button>
      {isOpen && (
        <Suspense>
          <Teaching onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  );
}
