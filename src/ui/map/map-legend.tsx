import type { ReferencePoint } from "../../explore/index.ts";
import { showReference } from "../actions/edit.ts";
import { hearView } from "../actions/hear.ts";
import { HexagonSign } from "../parts/hexagon.tsx";
import type { LegendPlan } from "./legend-plan.ts";

/** What the letters mean: in the map's empty corner where it fits, else below the map. */
export function MapLegend(props: {
  readonly points: readonly ReferencePoint[];
  /** Labels broken to the corner's room; null below the map. */
  readonly corner: LegendPlan | null;
}) {
  const { points, corner } = props;
  return (
    <div className={corner === null ? "legend" : "legend legend-inside"}>
      {points.length > 0 && (
        <p>
          <b>By section, by the book</b>
        </p>
      )}
      <ul className="legend-letters">
        {points.map((point, index) => (
          <li key={point.letter}>
            <LegendLetter point={point} lines={corner?.entries[index]?.lines ?? [point.label]} />
          </li>
        ))}
      </ul>
    </div>
  );
}

function LegendLetter(props: {
  readonly point: ReferencePoint;
  readonly lines: readonly string[];
}) {
  const { point, lines } = props;
  const show = () => {
    showReference(point);
    hearView();
  };
  return (
    <button type="button" title={point.note === "" ? undefined : point.note} onClick={show}>
      <HexagonSign letter={point.letter} />
      <span>
        {lines.map((line) => (
          <span key={line} className="legend-line">
            {line}
          </span>
        ))}
      </span>
    </button>
  );
}
