import { stopHere } from "../actions/answer.ts";
import { usePage } from "../store.ts";
import { counted } from "../words/counts.ts";

/** How far a search has come; shown only when it takes its time. */
export function SearchProgress() {
  const searching = usePage((state) => state.searching);
  if (searching === null || !searching.isSlow) return null;
  const { groupsDone, groups, cells } = searching;
  return (
    <div className="progress">
      <p role="status">
        <b>
          {groupsDone} of {groups} parts done.
        </b>{" "}
        {counted(cells.length, "texture")} so far.
      </p>
      <div className="row">
        <progress max={Math.max(1, groups)} value={groupsDone} aria-label="Search" />
        <button type="button" className="act" onClick={stopHere}>
          Stop here
        </button>
      </div>
    </div>
  );
}
