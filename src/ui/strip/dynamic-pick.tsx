import { dynamics, type Dynamic } from "../../band/index.ts";
import { askDynamic } from "../actions/ask.ts";
import { PickList } from "../parts/pick-list.tsx";
import { usePage } from "../store.ts";

const meanings: Readonly<Record<Dynamic, string>> = {
  ppp: "as soft as can be",
  pp: "very soft",
  p: "soft",
  mp: "rather soft",
  mf: "rather loud",
  f: "loud",
  ff: "very loud",
  fff: "as loud as can be",
};

/** How loud the players play: it decides registers, low-interval limits and the sound. */
export function DynamicPick() {
  const dynamic = usePage((state) => state.history.present.inquiry.dynamic);
  return (
    <PickList
      className="field field-dynamic"
      label="Dynamic"
      rows={dynamics.map((id) => ({ id, text: id, detail: meanings[id] }))}
      picked={dynamic}
      onPick={(id) => askDynamic(id as Dynamic)}
    >
      <span className="dynamic-sign">{dynamic}</span>
    </PickList>
  );
}
