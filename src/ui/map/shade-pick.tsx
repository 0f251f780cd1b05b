import { metrics } from "../../metrics/index.ts";
import { shadeBy } from "../actions/shade.ts";
import { PickList } from "../parts/pick-list.tsx";
import { usePage } from "../store.ts";

/** Which measure shades the map. */
export function ShadePick() {
  const metricId = usePage((state) => state.shading.metricId);
  return (
    <PickList
      className="pick shade-pick push"
      label="Shade by"
      rows={metrics.map(({ id, label, meaning }) => ({
        id,
        text: label.toLowerCase(),
        detail: meaning,
      }))}
      picked={metricId}
      onPick={shadeBy}
    />
  );
}
