import { lineUps } from "../../band/index.ts";
import { askLineUp } from "../actions/ask.ts";
import { PickList } from "../parts/pick-list.tsx";
import { usePage } from "../store.ts";
import { counted } from "../words/counts.ts";

/** Who plays: a ready line-up, or one of the user's own. */
export function LineUpPick() {
  const name = usePage((state) => state.history.present.inquiry.lineUpName);
  const players = usePage((state) => state.history.present.inquiry.players);
  const known = lineUps.find((lineUp) => lineUp.name === name && lineUp.players === players);
  const rows = lineUps.map((lineUp) => ({
    id: lineUp.id,
    text: lineUp.name,
    detail: counted(lineUp.players.length, "horn"),
  }));
  return (
    <PickList
      className="field field-line-up"
      label="Line-up"
      rows={rows}
      picked={known?.id ?? ""}
      onPick={askLineUp}
    >
      <span className="line-up-words">
        <span className="loud">{name}</span>
        <span className="quiet">
          {counted(players.length, "horn")}
          {known === undefined ? ", edited" : ""}
        </span>
      </span>
    </PickList>
  );
}
