import { useMemo } from "react";
import type { ReferencePoint } from "../../explore/index.ts";
import { metrics } from "../../metrics/index.ts";
import { showReference } from "../actions/edit.ts";
import { hearView } from "../actions/hear.ts";
import { HexagonSign } from "../parts/hexagon.tsx";
import type { Answer } from "../state/page-state.ts";
import { usePage } from "../store.ts";
import { legendPlan } from "./legend-plan.ts";
import type { MapPlan } from "./map-plan.ts";
import { shadeEnds } from "./shade-step.ts";

/** What shades and letters mean: in the map's empty corner where it fits, else below the map. */
export function MapLegend(props: {
  readonly answer: Answer;
  readonly plan: MapPlan;
  readonly players: number;
  readonly isInside: boolean;
}) {
  const { answer, plan, players, isInside } = props;
  const { cells } = answer.map;
  const points = useMemo(
    () => answer.references.filter((point) => point.report.cell.players === players),
    [answer.references, players],
  );
  const corner = useMemo(
    () => (isInside ? legendPlan(cells, plan, points) : null),
    [isInside, cells, plan, points],
  );
  return (
    <div className={corner === null ? "legend" : "legend legend-inside"}>
      {points.length > 0 && (
        <div>
          <p>
            <b>By section, by the book</b>
          </p>
          <ul className="legend-letters">
            {points.map((point, index) => (
              <li key={point.letter}>
                <LegendLetter
                  point={point}
                  lines={corner?.entries[index]?.lines ?? [point.label]}
                />
              </li>
            ))}
          </ul>
        </div>
      )}
      <Ramp />
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

/** The five shades of the chosen measure with their upper ends. */
function Ramp() {
  const metricId = usePage((state) => state.shading.metricId);
  const metric = metrics.find((candidate) => candidate.id === metricId);
  if (metric === undefined) return null;
  return (
    <div className="legend-ramp" title={`${metric.meaning} In ${metric.unit}.`}>
      <p>
        <b>{metric.label}</b>, shade and bar
      </p>
      <ol className="ramp">
        {shadeEnds(metric.axis).map((end, step) => (
          <li key={end}>
            <i data-shade={step} />
            {step === 0 ? `to ${end}` : end}
          </li>
        ))}
      </ol>
    </div>
  );
}
