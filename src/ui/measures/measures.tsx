import { memo, useState } from "react";
import type { ReferencePoint } from "../../explore/index.ts";
import type { Reading } from "../../metrics/index.ts";
import { HexagonSign } from "../parts/hexagon.tsx";
import { PickList } from "../parts/pick-list.tsx";
import { page, usePage } from "../store.ts";
import { MeasureRow } from "./measure-row.tsx";

/** Measures that are folded away at first: they say in other words what the others say. */
const folded = [
  "notes",
  "players",
  "widest-gap",
  "density-compression",
  "critical-band-spacing",
  "low-weight",
  "roughness",
];

const none: readonly ReferencePoint[] = [];

/** The measures of the voicing in view, each beside the textbook voicing it is compared with. */
export function Measures() {
  const view = usePage((state) => state.view);
  const references = usePage((state) => state.answer?.references) ?? none;
  const letter = usePage((state) => state.comparedWith);
  const [isOpen, setOpen] = useState(false);
  const reference = references.find((point) => point.letter === letter) ?? references[0];
  const readings = view?.report.measures ?? [];
  const hasHeard = readings.some(({ metric }) => metric.isHeard);
  return (
    <aside className="measures" aria-labelledby="measures-title">
      <div className="row">
        <h2 id="measures-title">Measures</h2>
        <button
          type="button"
          className="link push"
          aria-expanded={isOpen}
          onClick={() => setOpen(!isOpen)}
        >
          {isOpen ? "Fewer" : "All of them"}
        </button>
      </div>
      <div className="row measures-key">
        <span className="row">
          <svg width="6" height="16" aria-hidden="true">
            <rect className="scale-this" x="1" width="3.2" height="16" />
          </svg>
          this
        </span>
        {reference !== undefined && <ReferencePick references={references} picked={reference} />}
      </div>
      <MeasureList
        readings={readings.filter(({ metric }) => isOpen || !folded.includes(metric.id))}
        reference={reference}
      />
      {hasHeard && (
        <p className="caution">
          Below the heavy line a model of an average listener before average players. The room and
          the players decide.
        </p>
      )}
    </aside>
  );
}

function MeasureList(props: {
  readonly readings: readonly Reading[];
  readonly reference: ReferencePoint | undefined;
}) {
  const { readings, reference } = props;
  const ofBook = (id: string) =>
    reference?.report.measures.find((one) => one.metric.id === id)?.measured;
  return (
    <ul>
      {readings.map(({ metric, measured }, index) => (
        <MeasureRow
          key={metric.id}
          metric={metric}
          measured={measured}
          reference={ofBook(metric.id)}
          isFirstHeard={metric.isHeard && readings[index - 1]?.metric.isHeard === false}
        />
      ))}
    </ul>
  );
}

/** Which textbook voicing the hexagons stand for. */
const ReferencePick = memo(function ReferencePick(props: {
  readonly references: readonly ReferencePoint[];
  readonly picked: ReferencePoint;
}) {
  const { references, picked } = props;
  return (
    <span className="row">
      <HexagonSign letter={picked.letter} />
      <PickList
        label="Textbook voicing to compare with"
        isLabelSeen={false}
        rows={references.map((point) => ({
          id: point.letter,
          text: `${point.letter}: ${point.label}`,
          ...(point.note === "" ? {} : { detail: point.note }),
        }))}
        picked={picked.letter}
        onPick={(letter) => page.setState({ comparedWith: letter })}
      >
        {picked.label}
      </PickList>
    </span>
  );
});
