import type { KeyboardEvent, PointerEvent } from "react";
import { compare, letGo, showKept } from "../actions/keep.ts";
import { chordWithSigns } from "../words/signs.ts";
import { counted } from "../words/counts.ts";
import { spanText } from "../words/interval-words.ts";
import { NameField, NoteField } from "./kept-fields.tsx";
import type { ReportedKept } from "./reported-kept.ts";
import { SmallLadder } from "./small-ladder.tsx";

/** One kept voicing: at a glance, in words, and what can be done with it. */
export function KeptOne(props: {
  readonly one: ReportedKept;
  readonly isCompared: boolean;
  /** On which side of it the one being dragged would be put down. */
  readonly drop: "before" | "after" | "itself" | null;
  readonly onPointerDown: (event: PointerEvent<HTMLButtonElement>, letter: string) => void;
  readonly onKeyDown: (event: KeyboardEvent, letter: string) => void;
}) {
  const { one, isCompared, drop, onPointerDown, onKeyDown } = props;
  const { kept, report, question } = one;
  const { letter, name } = kept;
  const { cell } = report;
  const words = `${name}, ${spanText(cell.span)}, ${counted(cell.notes, "note")}`;
  return (
    <li
      className={isCompared ? "kept-item kept-compared" : "kept-item"}
      {...(drop === null ? {} : { "data-drop": drop })}
    >
      <button
        type="button"
        className="kept-one"
        aria-pressed={isCompared}
        aria-label={`Choose ${letter}: ${words}`}
        onClick={() => compare(letter)}
      >
        <SmallLadder voicing={report.voicing} />
        <span className="letter loud">{letter}</span>
      </button>
      <Handle letter={letter} {...{ onPointerDown, onKeyDown }} />
      <div className="kept-words">
        <NameField kept={kept} />
        <span className="quiet">
          {chordWithSigns(question.chord.display)}, {spanText(cell.span, "brief")}
        </span>
        <span className="quiet">{counted(cell.notes, "note")}</span>
        <span className="row kept-acts">
          <button
            type="button"
            className="link"
            aria-label={`Show ${letter}`}
            onClick={() => showKept(kept)}
          >
            Show
          </button>
          <button
            type="button"
            className="link"
            aria-label={`Let ${letter} go`}
            onClick={() => letGo(letter)}
          >
            Let go
          </button>
        </span>
      </div>
      <NoteField kept={kept} />
    </li>
  );
}

const dots = [4, 9].flatMap((x) => [4, 9, 14].map((y) => ({ x, y })));

/** What a kept voicing is taken by. */
function Handle(props: {
  readonly letter: string;
  readonly onPointerDown: (event: PointerEvent<HTMLButtonElement>, letter: string) => void;
  readonly onKeyDown: (event: KeyboardEvent, letter: string) => void;
}) {
  const { letter, onPointerDown, onKeyDown } = props;
  return (
    <button
      type="button"
      className="kept-handle"
      aria-label={`Move ${letter}: arrow keys`}
      title="Drag it to another place, or use the arrow keys"
      onPointerDown={(event) => onPointerDown(event, letter)}
      onKeyDown={(event) => onKeyDown(event, letter)}
    >
      <svg width="13" height="18" viewBox="0 0 13 18" aria-hidden="true">
        {dots.map(({ x, y }) => (
          <circle key={`${x} ${y}`} cx={x} cy={y} r="1.4" />
        ))}
      </svg>
    </button>
  );
}
