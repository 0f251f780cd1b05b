import { hearAllKept } from "../actions/hear.ts";
import { CompareDoor } from "../kept/compare/compare-door.tsx";
import { usePage } from "../store.ts";

/** All kept voicings one after the other: to hear; the chosen ones to compare. */
export function KeptSound() {
  const count = usePage((state) => state.history.present.kept.length);
  const chosen = usePage((state) => state.history.present.compared.length);
  if (count === 0) return null;
  return (
    <div className="row kept-sound">
      <button type="button" className="link link-sound" onClick={() => void hearAllKept()}>
        {count === 1 ? "Hear it" : `Hear all ${count} in turn`}
      </button>
      <CompareDoor chosen={chosen} />
    </div>
  );
}
