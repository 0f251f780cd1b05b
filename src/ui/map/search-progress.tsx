import { stopHere } from "../actions/answer.ts";
import { searchOn } from "../actions/walk.ts";
import { WarnSign } from "../parts/warn-sign.tsx";
import { usePage } from "../store.ts";
import { counted } from "../words/counts.ts";
import { Ramp } from "./ramp.tsx";

/** The line above the map: the shades, or how far a search has come that takes its time. */
export function ProgressOrRamp() {
  const searching = usePage((state) => state.searching);
  const map = usePage((state) => state.answer?.map);
  const fault = usePage((state) => state.fault);
  if (fault !== null)
    return (
      <p className="row progress" role="alert">
        <WarnSign /> The search failed: {fault}
      </p>
    );
  if (searching?.isSlow === true) {
    const { groupsDone, groups, cells } = searching;
    return (
      <div className="row progress">
        <p role="status">
          <b>
            {groupsDone} of {groups} parts done.
          </b>{" "}
          {counted(cells.length, "texture")} so far.
        </p>
        <progress max={Math.max(1, groups)} value={groupsDone} aria-label="Search" />
        <button type="button" className="act" onClick={stopHere}>
          Stop here
        </button>
      </div>
    );
  }
  if (map !== undefined && !map.isWhole && searching === null)
    return (
      <div className="row progress">
        <p>
          <b>Stopped early.</b> {counted(map.cells.length, "texture")} found.
        </p>
        <button type="button" className="act push" onClick={searchOn}>
          Search on
        </button>
      </div>
    );
  return <Ramp />;
}
