import type { Continuation } from "../../phrase/index.ts";
import { Choice } from "../parts/choice.tsx";
import { usePage } from "../store.ts";
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
  const { label, span, notes, players, awkward } = one;
  const held = usePage((state) => state.view?.pitches);
  const ids = usePage((state) => state.answer?.asked.question.players);
  const sizes = (ids ?? []).flatMap(({ id }, index) => {
    const [from, to] = [held?.[id] ?? 0, one.pitches[index] ?? 0];
    return from === 0 || to === 0 || from === to ? [] : [Math.abs(to - from)];
  });
  const awkwardText = awkward.length === 0 ? "" : `, ${awkward.length} awkward`;
  return (
    <>
      <b>{label}</b>
      <span>
        {spanText(span, "brief")}, {counted(notes, "note")}, {counted(players, "player")}
      </span>
      <span>
        {counted(sizes.length, "moves", "move")}
        {sizes.length === 0 ? "" : `, widest ${Math.max(...sizes)}`}
        {awkwardText}
      </span>
    </>
  );
}
