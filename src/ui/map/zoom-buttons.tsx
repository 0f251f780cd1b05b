import { zoomStep, zoomSteps } from "./map-zoom.ts";

/** Draws the map larger or smaller; the keys +, − and 0 do the same on the map. */
export function ZoomButtons(props: {
  readonly zoom: number;
  readonly onZoom: (zoom: number) => void;
}) {
  const { zoom, onZoom } = props;
  const largest = zoomSteps[zoomSteps.length - 1];
  return (
    <div className="row map-zoom" role="group" aria-label="Size of the map">
      <button
        type="button"
        className="link"
        aria-label="Map smaller"
        disabled={zoom === 1}
        onClick={() => onZoom(zoomStep(zoom, -1))}
      >
        −
      </button>
      <span className="quiet" data-testid="zoom">
        {Math.round(100 * zoom)} %
      </span>
      <button
        type="button"
        className="link"
        aria-label="Map larger"
        disabled={zoom === largest}
        onClick={() => onZoom(zoomStep(zoom, 1))}
      >
        +
      </button>
    </div>
  );
}
