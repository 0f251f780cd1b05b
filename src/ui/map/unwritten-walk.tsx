import { showUnwritten } from "../actions/unwritten.ts";
import { isSamePlace } from "../state/places.ts";
import { usePage } from "../store.ts";

/** Walks to good textures far from the book, with the reason while one of them is in view. */
export function UnwrittenWalk() {
  const unwritten = usePage((state) => state.unwritten);
  const here = usePage((state) => state.view?.report.cell);
  const isWhole = usePage((state) => state.answer?.map.isWhole === true);
  const isHere =
    unwritten !== null &&
    unwritten !== "looking" &&
    here !== undefined &&
    isSamePlace(unwritten.key, here);
  return (
    <div className="row unwritten">
      <button
        type="button"
        className="act"
        disabled={!isWhole || unwritten === "looking"}
        onClick={() => void showUnwritten()}
      >
        {isHere ? "Another I would not have written" : "Show me something I would not have written"}
      </button>
      <p className="quiet">
        {unwritten === "looking"
          ? "Looking …"
          : isHere
            ? unwritten.reason
            : "far from the book, sound in its place"}
      </p>
    </div>
  );
}
