import { dynamics, type Dynamic } from "../../../band/index.ts";
import type { PhraseQuestion } from "../../../phrase/index.ts";
import type { Melody } from "../../../theory/index.ts";
import { PickList } from "../../parts/pick-list.tsx";
import { useState } from "react";
import { askPhrase } from "../phrase-actions.ts";
import { gridBars } from "./turn-grid.ts";

/** Dynamics on the way: from which bar on, how loud. */
export function DynamicsRow(props: { readonly question: PhraseQuestion; readonly melody: Melody }) {
  const { question, melody } = props;
  const [picked, setPicked] = useState("");
  const bars = gridBars(melody).filter(({ from }) => from > 0);
  const marks = question.dynamics;
  const bar = bars.find(({ number }) => String(number) === picked) ?? bars[0];
  const nameOf = (at: number) => bars.find(({ from }) => from === at)?.number;
  const set = (at: typeof melody.length, dynamic: Dynamic | null, step: string) => {
    const others = marks.filter((mark) => mark.at !== at);
    const next = dynamic === null ? others : [...others, { at, dynamic }];
    askPhrase({ dynamics: next.sort((a, b) => a.at - b.at) }, step);
  };
  return (
    <div className="dynamics-row">
      <div className="curve-name">
        <b>Dynamics</b>
      </div>
      <ul className="row dynamics-marks">
        {marks.map(({ at, dynamic }) => (
          <li key={at} className="row">
            <span className="dynamic-sign">{dynamic}</span>
            <span className="quiet">
              {at === 0 ? "from the start" : `from bar ${nameOf(at) ?? "?"}`}
            </span>
            {at > 0 && (
              <button
                type="button"
                className="link"
                aria-label={`Take ${dynamic} from bar ${nameOf(at) ?? "?"} away`}
                onClick={() => set(at, null, "take a dynamic away")}
              >
                Take away
              </button>
            )}
          </li>
        ))}
        {bar !== undefined && (
          <li className="row">
            <PickList
              label="From bar"
              rows={bars.map(({ number }) => ({ id: String(number), text: String(number) }))}
              picked={String(bar.number)}
              onPick={setPicked}
            />
            <PickList
              label="play"
              rows={dynamics.map((id) => ({ id, text: id }))}
              picked={marks.find(({ at }) => at === bar.from)?.dynamic ?? ""}
              onPick={(id) => set(bar.from, id as Dynamic, `${id} from bar ${bar.number}`)}
            >
              {marks.find(({ at }) => at === bar.from)?.dynamic ?? "as before"}
            </PickList>
          </li>
        )}
      </ul>
    </div>
  );
}
