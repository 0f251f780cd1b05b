import { useState } from "react";
import { Switch } from "react-aria-components";
import type { Problem, Result, SoundingMidi } from "../../base/index.ts";
import {
  addPlayer,
  freshPlayer,
  instruments,
  mutesOf,
  replacePlayer,
  seatIds,
  sectionOrder,
  withInstrument,
  withLevel,
  withMute,
  withPersonalRange,
  type InstrumentId,
  type LineUp,
  type MuteId,
  type Player,
  type PlayerLevel,
  type SeatId,
} from "../../band/index.ts";
import { askPlayers } from "../actions/ask.ts";
import { SeatsEditor } from "../hear/seats-editor.tsx";
import { PickList } from "../parts/pick-list.tsx";
import { SectionSign } from "../parts/section-mark.tsx";
import { Sheet } from "../parts/sheet.tsx";
import { WarnSign } from "../parts/warn-sign.tsx";
import { page, usePage } from "../store.ts";
import { PitchInput } from "./pitch-input.tsx";

const levels: readonly { id: PlayerLevel; text: string; detail: string }[] = [
  { id: "school", text: "school", detail: "easy ranges of school players" },
  { id: "semi-pro", text: "semi-pro", detail: "good amateurs and students" },
  { id: "pro", text: "pro", detail: "the ordinary full compass" },
];

const seats = seatIds
  .map((seat) => freshPlayer(emptyLineUp(), { seat }))
  .filter((player) => player.section !== "rhythm");

/** What a wind player may take up instead. */
const winds = instruments
  .filter(({ section }) => section !== "rhythm")
  .map(({ id, name }) => ({ id, text: name.toLowerCase() }));

/** Edits the line-up: who plays what, at what level, with what mute, within what limits. */
export function LineUpSheet() {
  const { shown, isIn, problem, change, exchange, setIn } = useLineUpEditing();
  return (
    <Sheet title="Players" control="Players" controlLabel="Edit the players of the line-up">
      <p className="sheet-lead">
        Pitches are sounding, C4 is middle C. A personal limit (“my second trumpet tops out at A5”)
        is never passed; empty the field to lift it. A player who doubles takes the other instrument
        here.
      </p>
      {problem !== null && (
        <p className="row problem" role="alert">
          <WarnSign /> {problem.message}
        </p>
      )}
      <table className="players-table">
        <thead>
          <tr>
            <th scope="col">Player</th>
            <th scope="col">Instrument</th>
            <th scope="col">Level</th>
            <th scope="col">Mute</th>
            <th scope="col">Lowest</th>
            <th scope="col">Highest</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((player) => (
            <PlayerRow
              key={player.id}
              player={player}
              isIn={isIn(player)}
              onIn={(is) => setIn(player, is)}
              onExchange={exchange}
            />
          ))}
        </tbody>
      </table>
      <PickList
        label="Add a player"
        rows={seats.map((seat) => ({ id: seat.id, text: seat.name }))}
        picked=""
        onPick={(id) => change(addFresh(id as SeatId))}
      >
        Choose a chair
      </PickList>
      <SeatsEditor />
    </Sheet>
  );
}

/** The line-up being edited; who is left out stays in the list while the page is open. */
function useLineUpEditing() {
  const name = usePage((state) => state.history.present.inquiry.lineUpName);
  const players = usePage((state) => state.history.present.inquiry.players);
  const [leftOut, setLeftOut] = useState<readonly Player[]>([]);
  const [problem, setProblem] = useState<Problem | null>(null);
  const change = (result: Result<LineUp>) => {
    setProblem(result.ok ? null : result.problem);
    if (result.ok) askPlayers(result.value.name, result.value.players);
  };
  const exchange = (result: Result<Player>) => {
    if (result.ok) change(replacePlayer(lineUpNow(), result.value));
    else setProblem(result.problem);
  };
  const setIn = (player: Player, isIn: boolean) => {
    setLeftOut(isIn ? leftOut.filter((other) => other !== player) : [...leftOut, player]);
    if (isIn) return change(addPlayer(lineUpNow(), player));
    askPlayers(
      name,
      players.filter((other) => other !== player),
    );
  };
  const out = leftOut.filter((player) => !players.some((one) => one.id === player.id));
  const shown = [...players, ...out].sort(
    (a, b) => sectionOrder.indexOf(a.section) - sectionOrder.indexOf(b.section),
  );
  const isIn = (player: Player) => players.includes(player);
  return { shown, isIn, problem, change, exchange, setIn };
}

function emptyLineUp(): LineUp {
  return { id: "own", name: "own", players: [] };
}

function lineUpNow(): LineUp {
  const { inquiry } = page.getState().history.present;
  return { id: "own", name: inquiry.lineUpName, players: inquiry.players };
}

function addFresh(seat: SeatId): Result<LineUp> {
  const lineUp = lineUpNow();
  return addPlayer(lineUp, freshPlayer(lineUp, { seat }));
}

function PlayerRow(props: {
  readonly player: Player;
  readonly isIn: boolean;
  readonly onIn: (isIn: boolean) => void;
  readonly onExchange: (result: Result<Player>) => void;
}) {
  const { player, isIn, onIn, onExchange } = props;
  const limits = player.personalRange;
  const limit = (end: "low" | "high", pitch: SoundingMidi | null) => {
    if (pitch === null) return onExchange(withPersonalRange(player, undefined));
    onExchange(withPersonalRange(player, { ...(limits ?? player.range), [end]: pitch }));
  };
  return (
    <tr data-out={!isIn}>
      <th scope="row">
        <Switch className="switch switch-player" isSelected={isIn} onChange={onIn}>
          <span className="switch-sign" aria-hidden="true">
            {isIn ? "on" : "off"}
          </span>
          <SectionSign section={player.section} />
          {player.name}
        </Switch>
      </th>
      <td>
        <InstrumentPick player={player} onExchange={onExchange} />
      </td>
      <td>
        <PickList
          label={`Level of ${player.name}`}
          isLabelSeen={false}
          rows={levels}
          picked={player.level}
          onPick={(level) => onExchange(withLevel(player, level as PlayerLevel))}
        />
      </td>
      <td>
        <PickList
          label={`Mute of ${player.name}`}
          isLabelSeen={false}
          rows={mutesOf(player.instrument).map((id) => ({ id, text: id }))}
          picked={player.mute}
          onPick={(mute) => onExchange(withMute(player, mute as MuteId))}
        />
      </td>
      {(["low", "high"] as const).map((end) => (
        <td key={end}>
          <PitchInput
            label={`${end === "low" ? "Lowest" : "Highest"} note of ${player.name}`}
            pitch={player.range[end]}
            isSet={limits !== undefined}
            onPitch={(pitch) => limit(end, pitch)}
          />
        </td>
      ))}
    </tr>
  );
}

function InstrumentPick(props: {
  readonly player: Player;
  readonly onExchange: (result: Result<Player>) => void;
}) {
  const { player, onExchange } = props;
  return (
    <PickList
      label={`Instrument of ${player.name}`}
      isLabelSeen={false}
      rows={winds}
      picked={player.instrument}
      onPick={(instrument) => onExchange(withInstrument(player, instrument as InstrumentId))}
    />
  );
}
