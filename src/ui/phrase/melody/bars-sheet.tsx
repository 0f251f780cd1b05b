import { useState } from "react";
import { quantity } from "../../../base/index.ts";
import {
  barCount,
  barLength,
  beatLength,
  type Divisions,
  type Melody,
} from "../../../theory/index.ts";
import { PickList } from "../../parts/pick-list.tsx";
import { Sheet } from "../../parts/sheet.tsx";
import { counted } from "../../words/counts.ts";
import { withBars, withPickup } from "../melody-frame.ts";
import { askMelody } from "../phrase-actions.ts";
import { countedFinely } from "./melody-edit.ts";

/** Most bars a phrase is given here. */
const mostBars = 64;

const numbers = (from: number, to: number) =>
  Array.from({ length: Math.max(0, to - from + 1) }, (_, at) => String(from + at));
const rowsOf = (all: readonly string[]) => all.map((id) => ({ id, text: id }));

/** Length, pickup and repeats. */
export function BarsSheet({ melody }: { readonly melody: Melody }) {
  const bars = barCount(melody);
  const beat = beatLength(melody);
  const full = barLength(melody) / beat;
  const picks = numbers(0, 2 * full - 1).map((half) => {
    const beats = Number(half) / 2;
    return { id: half, text: beats === 0 ? "none" : counted(beats, "beat") };
  });
  return (
    <Sheet title="Bars, pickup, repeats" control={counted(bars, "bar")}>
      <div className="bars-fields">
        <PickList
          label="Bars"
          rows={rowsOf(numbers(1, Math.max(mostBars, bars)))}
          picked={String(bars)}
          onPick={(id) => askMelody(withBars(melody, Number(id)), counted(Number(id), "bar"))}
        />
        <PickList
          label="Pickup"
          rows={picks}
          picked={String(Math.round((2 * melody.pickup) / beat))}
          onPick={(id) => {
            const fine = countedFinely(melody);
            const length = (Number(id) * beatLength(fine)) / 2;
            askMelody(withPickup(fine, quantity<Divisions>(length)), "pickup");
          }}
        />
      </div>
      <h3 className="sheet-part">Repeats</h3>
      <Repeats melody={melody} bars={bars} />
    </Sheet>
  );
}

function Repeats({ melody, bars }: { readonly melody: Melody; readonly bars: number }) {
  const [from, setFrom] = useState("1");
  const [to, setTo] = useState(String(Math.min(4, bars)));
  const first = Number(from);
  const last = Math.min(bars, Math.max(first, Number(to)));
  const overlaps = melody.repeats.some((one) => one.fromBar <= last && one.toBar >= first);
  const add = () => {
    const repeats = [...melody.repeats, { fromBar: first, toBar: last, times: 2 }];
    askMelody(
      { ...melody, repeats: repeats.sort((a, b) => a.fromBar - b.fromBar) },
      `repeat bars ${first} to ${last}`,
    );
  };
  return (
    <>
      <ul className="repeat-list">
        {melody.repeats.map((repeat) => (
          <li key={repeat.fromBar} className="row">
            <span>
              Bars {repeat.fromBar} to {repeat.toBar}, {repeat.times} times
              {repeat.endings === undefined ? "" : ", with endings"}
            </span>
            <button
              type="button"
              className="link"
              onClick={() =>
                askMelody(
                  { ...melody, repeats: melody.repeats.filter((one) => one !== repeat) },
                  "take a repeat away",
                )
              }
            >
              Take away
            </button>
          </li>
        ))}
      </ul>
      <div className="bars-fields">
        <PickList label="From bar" rows={rowsOf(numbers(1, bars))} picked={from} onPick={setFrom} />
        <PickList
          label="to bar"
          rows={rowsOf(numbers(first, bars))}
          picked={String(last)}
          onPick={setTo}
        />
        <button type="button" className="act" disabled={overlaps} onClick={add}>
          Play twice
        </button>
      </div>
      {overlaps && <p className="quiet">These bars are repeated already.</p>}
    </>
  );
}
