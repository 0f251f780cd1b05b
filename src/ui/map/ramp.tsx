import { metrics } from "../../metrics/index.ts";
import { usePage } from "../store.ts";
import { shadeEnds } from "./shade-step.ts";

/** The five shades of the chosen measure with their upper ends, and its unit. */
export function Ramp() {
  const metricId = usePage((state) => state.shading.metricId);
  const metric = metrics.find((candidate) => candidate.id === metricId);
  if (metric === undefined) return null;
  return (
    <div className="row ramp-row" title={metric.meaning}>
      <span>shade and bar, {metric.unit}</span>
      <ol className="ramp" aria-label={`Shades of ${metric.label}`}>
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
