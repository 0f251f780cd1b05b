import { metrics } from "../../metrics/index.ts";
import { usePage } from "../store.ts";
import { SectionSign } from "../parts/section-mark.tsx";
import { draftSections } from "./draft.ts";
import { shadeEnds } from "./shade-step.ts";

/** How to read a swatch: its columns, and the five shades of the chosen measure with its unit. */
export function Ramp() {
  const metricId = usePage((state) => state.shading.metricId);
  const metric = metrics.find((candidate) => candidate.id === metricId);
  if (metric === undefined) return null;
  return (
    <div className="row ramp-row" title={metric.meaning}>
      <span className="row swatch-key" title="How to read a swatch">
        {draftSections.map((section) => (
          <SectionSign key={section} section={section} />
        ))}
        across, notes down
      </span>
      <span>shade: {metric.unit}</span>
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
