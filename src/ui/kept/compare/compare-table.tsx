import { type CSSProperties, type ReactNode } from "react";
import type { Reading } from "../../../metrics/index.ts";
import { hearKept } from "../../actions/hear.ts";
import { showKept } from "../../actions/keep.ts";
import { useSound } from "../../actions/sound-state.ts";
import { sharedScale } from "../../parts/still-ladder-plan.ts";
import { useSize } from "../../parts/use-size.ts";
import { namerOf } from "../../words/pitch-names.ts";
import { chordWithSigns, withSigns } from "../../words/signs.ts";
import { differenceWords } from "../difference.ts";
import { NameField, NoteField } from "../kept-fields.tsx";
import type { ReportedKept } from "../reported-kept.ts";
import { CompareLadder } from "./compare-ladder.tsx";
import { measureDifference } from "./measure-difference.ts";
import { moveWords, playerMoves } from "../../parts/player-moves.ts";
import { StillStaff } from "../../parts/still-staff.tsx";

/** Least width of a voicing's column and room of the row names, CSS pixels. */
const sizes = { column: 232, widest: 340, names: 148, gap: 24 };

interface CompareProps {
  readonly chosen: readonly ReportedKept[];
  readonly base: ReportedKept;
}

/** A column for each voicing, a row for each thing to compare. */
export function CompareTable(props: CompareProps & { readonly onClose: () => void }) {
  const { chosen, base, onClose } = props;
  const [room, size] = useSize<HTMLDivElement>({ width: 1200, height: 700 });
  const names = size.width < 700 ? 0 : sizes.names;
  const free = size.width - names - 40 - chosen.length * sizes.gap;
  const width = Math.round(
    Math.max(sizes.column, Math.min(sizes.widest, free / Math.max(1, chosen.length))),
  );
  const style = {
    "--columns": chosen.length,
    "--column": `${width}px`,
    "--names": `${names}px`,
  } as CSSProperties;
  return (
    <div className="compare-room" ref={room} tabIndex={0} role="region" aria-label="Comparison">
      <div
        className={names === 0 ? "compare-table compare-stacked" : "compare-table"}
        role="table"
        aria-label="Chosen voicings"
        style={style}
      >
        <div role="row" className="compare-row compare-heads">
          <span role="columnheader" className="compare-name">
            <span className="unseen">What</span>
          </span>
          {chosen.map((one) => (
            <div role="columnheader" key={one.kept.letter}>
              <Head one={one} />
            </div>
          ))}
        </div>
        <Row name="Question" hint="and your note" {...{ chosen }}>
          {(one) => <About one={one} onClose={onClose} />}
        </Row>
        <Pictures {...{ chosen, base, width }} />
        <Row name="Difference" hint={`against ${base.kept.letter}, in words`} {...{ chosen }}>
          {(one) => (one === base ? <AgainstIt /> : differenceWords(one.report, base.report))}
        </Row>
        <Row name="Players" hint={`on other notes than in ${base.kept.letter}`} {...{ chosen }}>
          {(one) => (one === base ? <AgainstIt /> : <Moves one={one} base={base} />)}
        </Row>
        <MeasureRows {...{ chosen, base }} />
      </div>
    </div>
  );
}

function AgainstIt() {
  return <span className="quiet">the others are measured against this</span>;
}

/** Ladders on one scale, and staves. */
function Pictures({ chosen, base, width }: CompareProps & { readonly width: number }) {
  const scale = sharedScale(chosen.map(({ report }) => report.voicing));
  const { letter } = base.kept;
  return (
    <>
      <Row name="Ladder" hint={`framed: players elsewhere in ${letter}`} {...{ chosen }}>
        {(one) => <CompareLadder one={one} base={base} scale={scale} width={width} />}
      </Row>
      <Row name="Staff" hint="concert pitch" {...{ chosen }}>
        {({ report, question }) => (
          <StillStaff voicing={report.voicing} chord={question.chord} width={width} />
        )}
      </Row>
    </>
  );
}

/** One thing to compare, for every voicing. */
function Row(props: {
  readonly name: string;
  readonly hint?: string;
  readonly className?: string;
  readonly chosen: readonly ReportedKept[];
  readonly children: (one: ReportedKept) => ReactNode;
}) {
  const { name, hint, className = "", chosen, children } = props;
  return (
    <div role="row" className={`compare-row ${className}`}>
      <div role="rowheader" className="compare-name">
        <b>{name}</b>
        {hint !== undefined && <span className="quiet"> {hint}</span>}
      </div>
      {chosen.map((one) => (
        <div role="cell" key={one.kept.letter} data-letter={one.kept.letter}>
          {children(one)}
        </div>
      ))}
    </div>
  );
}

/** Letter and name, always in view; hear it. */
function Head({ one }: { readonly one: ReportedKept }) {
  const { kept } = one;
  const { letter } = kept;
  const isNow = useSound((state) => state.phase !== "silent" && state.turn === letter);
  return (
    <span className="row compare-one">
      <span className={isNow ? "letter loud letter-now" : "letter loud"}>{letter}</span>
      <NameField kept={kept} />
      <button
        type="button"
        className="link link-sound"
        aria-label={`Hear ${letter}`}
        onClick={() => void hearKept([kept])}
      >
        {isNow ? "Now" : "Hear"}
      </button>
    </span>
  );
}

/** What it answers, what is written beside it, and the way to it. */
function About({ one, onClose }: { readonly one: ReportedKept; readonly onClose: () => void }) {
  const { kept, question } = one;
  const nameOf = namerOf(question.chord);
  return (
    <div className="compare-about">
      <span className="row">
        <span>
          {chordWithSigns(question.chord.display)} under {withSigns(nameOf(question.lead).name)},{" "}
          <span className="dynamic-sign">{question.dynamic}</span>
        </span>
        <button
          type="button"
          className="link push"
          aria-label={`Go to ${kept.letter}`}
          onClick={() => {
            showKept(kept);
            onClose();
          }}
        >
          Go to it
        </button>
      </span>
      <NoteField kept={kept} />
    </div>
  );
}

/** Who moves, from where to where. */
function Moves({ one, base }: { readonly one: ReportedKept; readonly base: ReportedKept }) {
  const moves = playerMoves(one.report.voicing, base.report.voicing);
  const [nameFrom, nameTo] = [namerOf(base.question.chord), namerOf(one.question.chord)];
  if (moves.length === 0) return <>Everybody on the same notes.</>;
  return (
    <ul className="compare-moves">
      {moves.map((move) => (
        <li key={move.player.id}>
          <b>{move.player.abbreviation}</b> {moveWords(move, nameFrom, nameTo)}
        </li>
      ))}
    </ul>
  );
}

/** Every measure with its unit; by how much each differs. */
function MeasureRows({ chosen, base }: CompareProps) {
  const readingOf = (one: ReportedKept, id: string): Reading | undefined =>
    one.report.measures.find(({ metric }) => metric.id === id);
  return base.report.measures.map(({ metric, measured }, index) => {
    const isFirstHeard =
      metric.isHeard && base.report.measures[index - 1]?.metric.isHeard === false;
    return (
      <Row
        key={metric.id}
        name={metric.label}
        hint={metric.unit}
        className={isFirstHeard ? "compare-measure compare-heard" : "compare-measure"}
        {...{ chosen }}
      >
        {(one) => {
          const own = readingOf(one, metric.id)?.measured;
          if (own === undefined) return null;
          const by = one === base ? "" : measureDifference(own, measured);
          return (
            <span title={withSigns(own.detail)}>
              <b>{own.text}</b>
              {by !== "" && <span className={by === "same" ? "quiet" : "compare-by"}> {by}</span>}
            </span>
          );
        }}
      </Row>
    );
  });
}
