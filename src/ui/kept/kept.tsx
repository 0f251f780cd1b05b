import { useMemo } from "react";
import { keepThis } from "../actions/keep.ts";
import { ExportsDoor } from "../exports/exports-door.tsx";
import { KeptSound } from "../hear/kept-sound.tsx";
import { usePage } from "../store.ts";
import { listed } from "../words/counts.ts";
import { differenceWords } from "./difference.ts";
import { KeptOne } from "./kept-one.tsx";
import { reportedKept, type ReportedKept } from "./reported-kept.ts";
import { useRowDrag, type RowDrag } from "./use-row-drag.ts";

/** Voicings put aside: side by side, with one sentence about how two of them differ. */
export function Kept() {
  const kept = usePage((state) => state.history.present.kept);
  const compared = usePage((state) => state.history.present.compared);
  const hasView = usePage((state) => state.view !== null);
  const reported = useMemo(() => reportedKept(kept), [kept]);
  return (
    <section className="kept" aria-labelledby="kept-title">
      <div className="row">
        <h2 id="kept-title">Kept</h2>
        <p className="quiet">{chosenText(compared)}</p>
        <ExportsDoor isDisabled={!hasView && kept.length === 0} />
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
        <KeptList reported={reported} compared={compared} />
        <Difference reported={reported} compared={compared} />
      </div>
    </section>
  );
}

/** "A and C chosen"; how many where letters would not fit. */
function chosenText(compared: readonly string[]): string {
  if (compared.length === 0) return "";
  return `${compared.length > 4 ? compared.length : listed(compared)} chosen`;
}

interface Shown {
  readonly reported: readonly ReportedKept[];
  readonly compared: readonly string[];
}

function KeptList({ reported, compared }: Shown) {
  const letters = reported.map(({ kept }) => kept.letter);
  const { list, drag, onPointerDown, onKeyDown } = useRowDrag(letters);
  return (
    <ul className="kept-list" ref={list}>
      {reported.map((one, index) => (
        <KeptOne
          key={one.kept.letter}
          one={one}
          isCompared={compared.includes(one.kept.letter)}
          drop={dropAt(drag, index, letters)}
          {...{ onPointerDown, onKeyDown }}
        />
      ))}
    </ul>
  );
}

function dropAt(
  drag: RowDrag | null,
  index: number,
  letters: readonly string[],
): "before" | "after" | "itself" | null {
  if (drag === null) return null;
  const from = letters.indexOf(drag.letter);
  if (index === from) return "itself";
  if (index !== drag.to) return null;
  return drag.to < from ? "before" : "after";
}

/** How the one chosen last differs from the one chosen first. */
function Difference({ reported, compared }: Shown) {
  const of = (letter: string | undefined) => reported.find((one) => one.kept.letter === letter);
  const [first, last] = [of(compared[0]), of(compared[compared.length - 1])];
  if (first === undefined || last === undefined || first === last) return null;
  return (
    <p className="difference" data-testid="difference">
      <b>
        {last.kept.letter} against {first.kept.letter}:
      </b>{" "}
      {differenceWords(last.report, first.report)}
    </p>
  );
}
