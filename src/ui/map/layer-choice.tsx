import type { LayerId } from "../../voicing/index.ts";
import { goToLayer } from "../actions/walk.ts";
import { Choice } from "../parts/choice.tsx";
import { usePage } from "../store.ts";

const layers: readonly { value: LayerId; text: string; meaning: string }[] = [
  { value: "free", text: "Free", meaning: "The best there is, players wherever they serve best." },
  {
    value: "by-section",
    text: "By section",
    meaning: "Every section sounds an unbroken run of the notes.",
  },
  {
    value: "crossed",
    text: "Crossed",
    meaning: "No section sounds two neighbouring notes.",
  },
];

/** Which version of every texture the map shows. */
export function LayerChoice() {
  const layer = usePage((state) => state.history.present.layer);
  return <Choice label="Layer of the map" options={layers} value={layer} onChange={goToLayer} />;
}
