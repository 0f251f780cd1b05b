import type { Continuation } from "../../phrase/index.ts";
import { Choice } from "../parts/choice.tsx";
import { counted } from "../words/counts.ts";
import { spanText } from "../words/interval-words.ts";
import { pickContinuation } from "./next-chord-actions.ts";
import { useNextChord } from "./next-chord-store.ts";

/** What was found, to pick from. */
export function Continuations() {
  const found = useNextChord((state) => state.found);
  const picked = useNextChord((state) => state.picked);
  if (found.length === 0) return <div className="next-found" />;
  return (
    <div className="next-found">
      <h2>Ways on</h2>
      <Choice
        label="Ways on"
        className="next-list"
        options={found.map((one) => ({ value: one.id, text: <Words one={one} /> }))}
        value={picked}
        onChange={pickContinuation}
      />
      <p className="quiet next-foot">
        Each is the best of its kind: least cost of the voicing and of every player’s step.
      </p>
    </div>
  );
}

function Words({ one }: { readonly one: Continuation }) {
  const { label, span, notes, players, cost, awkward } = one;
  const moves = awkward.length === 0 ? "" : `, ${counted(awkward.length, "awkward move")}`;
  return (
    <>
      <b>{label}</b>
      <span>
        {spanText(span, "brief")}, {counted(notes, "note")}, {counted(players, "player")}
      </span>
      <span>
        steps cost {cost.lines}
        {moves}
      </span>
    </>
  );
}
