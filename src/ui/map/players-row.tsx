import { useRef, type KeyboardEvent } from "react";
import { goToPlayers, sayView, walkPlayers } from "../actions/walk.ts";
import { stepOfKey } from "../parts/choice.tsx";
import { useMedia } from "../parts/use-size.ts";
import { countsByPlayers } from "../state/places.ts";
import { usePage } from "../store.ts";
import { counted } from "../words/counts.ts";

/** How many players sound: a row of bars, or on a small screen a number to step. */
export function PlayersRow() {
  const isTouch = useMedia("(max-width: 767px)");
  return isTouch ? <PlayersStep /> : <PlayersBars />;
}

function PlayersStep() {
  const players = usePage((state) => state.view?.report.cell.players);
  if (players === undefined) return null;
  return (
    <div className="row players-row" role="group" aria-label="Players">
      <b>Players</b> {players}
      <button
        type="button"
        className="players-step push"
        aria-label="One player fewer"
        onClick={() => walkPlayers(-1)}
      >
        −
      </button>
      <button
        type="button"
        className="players-step"
        aria-label="One player more"
        onClick={() => walkPlayers(1)}
      >
        +
      </button>
    </div>
  );
}

/** Bars show how many textures there are for each number of players. */
function PlayersBars() {
  const cells = usePage((state) => state.answer?.map.cells);
  const players = usePage((state) => state.view?.report.cell.players);
  const group = useRef<HTMLDivElement>(null);
  if (cells === undefined || players === undefined || cells.length === 0) return null;
  const counts = countsByPlayers(cells);
  const most = Math.max(...counts.map((row) => row.textures));
  const choose = (count: number) => {
    goToPlayers(count);
    sayView();
  };
  const keyed = (event: KeyboardEvent) => {
    const by = stepOfKey(event.key);
    const at = counts.findIndex((row) => row.players === players);
    const next = counts[at + by];
    if (by === 0 || next === undefined) return;
    event.preventDefault();
    choose(next.players);
    group.current?.querySelectorAll("button")[at + by]?.focus();
  };
  const hasStop = counts.some((row) => row.players === players);
  return (
    <div className="row players-row">
      <span id="players-label" className="quiet" title="How many players sound">
        Players
      </span>
      <div
        className="players-bars"
        role="radiogroup"
        aria-labelledby="players-label"
        ref={group}
        onKeyDown={keyed}
      >
        {counts.map((row, index) => (
          <button
            key={row.players}
            type="button"
            role="radio"
            className="players-bar"
            aria-checked={row.players === players}
            aria-label={`${counted(row.players, "player")}, ${counted(row.textures, "texture")}`}
            title={counted(row.textures, "texture")}
            tabIndex={row.players === players || (!hasStop && index === 0) ? 0 : -1}
            onClick={() => choose(row.players)}
          >
            <svg width="12" height="20" aria-hidden="true">
              <rect {...barOf(row.textures / most)} />
            </svg>
            <span>{row.players}</span>
          </button>
        ))}
      </div>
    </div>
  );
}

function barOf(share: number) {
  const height = Math.max(2, Math.round(20 * share));
  return { width: 12, height, y: 20 - height };
}
