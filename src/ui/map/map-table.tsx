import { useState } from "react";
import { metrics } from "../../metrics/index.ts";
import { hearView } from "../actions/hear.ts";
import { goTo } from "../actions/walk.ts";
import { placeId } from "../state/place-id.ts";
import type { PageState } from "../state/page-state.ts";
import { isSamePlace } from "../state/places.ts";
import { usePage } from "../store.ts";
import { spanText } from "../words/interval-words.ts";
import { withSigns } from "../words/signs.ts";
import { tableRows, type SortBy, type TableRow } from "./table-rows.ts";

/** The map as a table: the same places, sorted as the user likes. */
export function MapTable() {
  const answer = usePage((state) => state.answer);
  const shading = usePage((state) => state.shading);
  const here = usePage((state) => state.view?.report.cell);
  const [sort, setSort] = useState<{ by: SortBy; isFalling: boolean }>({
    by: "span",
    isFalling: false,
  });
  if (answer === null) return null;
  const metric = metrics.find((candidate) => candidate.id === shading.metricId);
  const rows = tableRows(answer.map.cells, shading.byPlace, sort.by, sort.isFalling);
  const heads: readonly { by: SortBy; text: string; unit: string }[] = [
    { by: "span", text: "Span", unit: "semitones" },
    { by: "notes", text: "Notes", unit: "different" },
    { by: "players", text: "Players", unit: "sounding" },
    { by: "measure", text: metric?.label ?? "Measure", unit: metric?.unit ?? "" },
  ];
  return (
    <div className="table-room" tabIndex={0} role="region" aria-label="All textures of the map">
      <table className="map-table">
        <thead>
          <tr>
            {heads.map((head) => (
              <th
                key={head.by}
                scope="col"
                aria-sort={
                  head.by === sort.by ? (sort.isFalling ? "descending" : "ascending") : "none"
                }
              >
                <button
                  type="button"
                  onClick={() =>
                    setSort({ by: head.by, isFalling: head.by === sort.by && !sort.isFalling })
                  }
                >
                  {head.text} {head.by === sort.by ? (sort.isFalling ? "↓" : "↑") : ""}
                </button>
                <span className="quiet">{head.unit}</span>
              </th>
            ))}
            <th scope="col">Lowest</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <Row
              key={placeId(row.cell)}
              row={row}
              isHere={here !== undefined && isSamePlace(row.cell.key, here)}
              lowest={lowestName(answer, row)}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function lowestName(answer: NonNullable<PageState["answer"]>, row: TableRow): string {
  const { nameOf, question } = answer.asked;
  return withSigns(nameOf(question.lead - row.cell.key.span).name);
}

function Row(props: { readonly row: TableRow; readonly isHere: boolean; readonly lowest: string }) {
  const { row, isHere, lowest } = props;
  const { key, family } = row.cell;
  const show = () => {
    goTo(key);
    hearView();
  };
  return (
    <tr data-here={isHere}>
      <th scope="row">
        <button type="button" className="link" onClick={show} aria-current={isHere}>
          {key.span}
          <span className="quiet">{` ${spanText(key.span, "brief")}`}</span>
        </button>
      </th>
      <td>
        {key.notes}
        {family === "line" ? " (line)" : ""}
      </td>
      <td>{key.players}</td>
      <td>{row.shade?.text ?? "…"}</td>
      <td>{lowest}</td>
    </tr>
  );
}
