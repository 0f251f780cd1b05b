import { useEffect, useRef, useState, type KeyboardEvent } from "react";
import type { Player } from "../../../band/index.ts";
import { playsAt, type PhraseQuestion } from "../../../phrase/index.ts";
import type { Melody } from "../../../theory/index.ts";
import { SectionSign } from "../../parts/section-mark.tsx";
import { askPhrase } from "../phrase-actions.ts";
import { gridBars, withTurn, type GridBar } from "./turn-grid.ts";

interface GridRow {
  readonly id: string;
  readonly name: string;
  readonly players: readonly Player[];
}

const sectionNames: Readonly<Record<string, string>> = Object.freeze({
  trumpets: "Trumpets",
  trombones: "Trombones",
  saxes: "Saxes",
  rhythm: "Rhythm",
});

function rowsOf(players: readonly Player[], isSingly: boolean): readonly GridRow[] {
  const sections = [...new Set(players.map(({ section }) => section))];
  return sections.flatMap((section) => {
    const own = players.filter((player) => player.section === section);
    const name = sectionNames[section] ?? section;
    const whole = { id: section, name, players: own };
    const each = own.map((one) => ({ id: one.id, name: one.abbreviation, players: [one] }));
    return isSingly ? [whole, ...each] : [whole];
  });
}

/** Who plays in which bar: sections, or every player; one tab stop, arrows inside. */
export function WhoGrid(props: { readonly question: PhraseQuestion; readonly melody: Melody }) {
  const { question, melody } = props;
  const [isSingly, setSingly] = useState(false);
  const [stop, setStop] = useState({ row: 0, bar: 0 });
  const grid = useRef<HTMLTableElement>(null);
  const rows = rowsOf(question.players, isSingly);
  const bars = gridBars(melody);
  useEffect(() => {
    grid.current?.style.setProperty("--bars", String(bars.length));
  }, [bars.length]);
  const keyed = (event: KeyboardEvent) => {
    const [down, right] = moves[event.key] ?? [0, 0];
    if (down === 0 && right === 0) return;
    event.preventDefault();
    const row = Math.max(0, Math.min(rows.length - 1, stop.row + down));
    const bar = Math.max(0, Math.min(bars.length - 1, stop.bar + right));
    setStop({ row, bar });
    grid.current?.querySelector<HTMLElement>(`[data-cell="${row}-${bar}"]`)?.focus();
  };
  return (
    <div className="who-grid">
      <div className="who-table">
        <table ref={grid} role="grid" aria-label="Who plays in which bar" onKeyDown={keyed}>
          <BarHeads
            bars={bars}
            isSingly={isSingly}
            onSingly={(next) => {
              setSingly(next);
              setStop({ row: 0, bar: 0 });
            }}
          />
          <tbody>
            {rows.map((row, at) => (
              <tr key={row.id} data-section={sectionNames[row.id] !== undefined}>
                <th scope="row">
                  <SectionSign section={row.players[0]?.section ?? "rhythm"} /> {row.name}
                </th>
                {bars.map((bar, index) => (
                  <Cell
                    key={bar.number}
                    row={row}
                    bar={bar}
                    cell={`${at}-${index}`}
                    isStop={stop.row === at && stop.bar === index}
                    question={question}
                    bars={bars}
                    onFocus={() => setStop({ row: at, bar: index })}
                  />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </div>
  );
}

function BarHeads(props: {
  readonly bars: readonly GridBar[];
  readonly isSingly: boolean;
  readonly onSingly: (isSingly: boolean) => void;
}) {
  const { bars, isSingly, onSingly } = props;
  const length = bars.at(-1)?.to ?? 1;
  return (
    <thead>
      <tr>
        <th scope="col">
          <b>Who plays</b>
          <button
            type="button"
            className="link"
            aria-pressed={isSingly}
            onClick={() => onSingly(!isSingly)}
          >
            {isSingly ? "Sections" : "Players"}
          </button>
        </th>
        {bars.map(({ number, from, to }) => (
          <th
            key={number}
            scope="col"
            ref={(cell) => cell?.style.setProperty("width", `${(100 * (to - from)) / length}%`)}
          >
            {number === 0 ? "up" : number}
          </th>
        ))}
      </tr>
    </thead>
  );
}

const moves: Readonly<Record<string, readonly [down: number, right: number]>> = Object.freeze({
  ArrowDown: [1, 0],
  ArrowUp: [-1, 0],
  ArrowRight: [0, 1],
  ArrowLeft: [0, -1],
});

function Cell(props: {
  readonly row: GridRow;
  readonly bar: GridBar;
  readonly cell: string;
  readonly isStop: boolean;
  readonly question: PhraseQuestion;
  readonly bars: readonly GridBar[];
  readonly onFocus: () => void;
}) {
  const { row, bar, cell, isStop, question, bars, onFocus } = props;
  const { players, turns } = question;
  const playing = row.players.filter((player) => playsAt(player, bar.from, turns)).length;
  const state = playing === 0 ? "rests" : playing < row.players.length ? "some" : "plays";
  const where = bar.number === 0 ? "the pickup" : `bar ${bar.number}`;
  const words = state === "some" ? `${playing} of ${row.players.length} play` : state;
  const toggle = () => {
    const plays = state !== "plays";
    const who = row.players.map(({ id }) => id);
    const next = withTurn(players, turns, bars, { who, bar: bar.number, plays });
    askPhrase({ turns: next }, `${row.name} ${plays ? "play" : "rest"} in ${where}`);
  };
  return (
    <td role="gridcell">
      <button
        type="button"
        className={`who-cell who-${row.players[0]?.section ?? "rhythm"}`}
        data-cell={cell}
        data-state={state}
        tabIndex={isStop ? 0 : -1}
        aria-label={`${row.name}, ${where}: ${words}`}
        title={`${row.name}, ${where}: ${words}`}
        onFocus={onFocus}
        onClick={toggle}
      />
    </td>
  );
}
