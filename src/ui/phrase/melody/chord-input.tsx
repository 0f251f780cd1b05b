import { useState, type KeyboardEvent } from "react";
import { quantity } from "../../../base/index.ts";
import { placeText, readChord, type Divisions, type Melody } from "../../../theory/index.ts";
import { announce } from "../../actions/announce.ts";
import { chordWithSigns, withSigns } from "../../words/signs.ts";
import { askMelody } from "../phrase-actions.ts";
import { entry } from "./entry-state.ts";
import { withChord } from "./melody-edit.ts";

/** The field for the chord at one beat; Tab goes on to the next beat. */
export function ChordInput(props: {
  readonly melody: Melody;
  readonly at: number;
  readonly x: number;
  readonly y: number;
}) {
  const { melody, at, x } = props;
  const onset = quantity<Divisions>(Math.round(at));
  const before = melody.changes.find((change) => change.onset === onset)?.text ?? "";
  const [text, setText] = useState(before);
  const read = text.trim() === "" ? null : readChord(text);
  const problem = read !== null && !read.ok ? read.problem.message : null;
  const where = placeText(melody, onset);
  const close = (next: number | null) => entry.setState({ chordAt: next });
  const keep = (): boolean => {
    if (problem !== null) return false;
    const symbol = read?.ok === true ? read.value.symbol : "";
    if (symbol !== before) {
      askMelody(withChord(melody, onset, symbol), `chord ${chordWithSigns(symbol)}`);
      announce(symbol === "" ? `No chord at ${where}` : `${chordWithSigns(symbol)} at ${where}`);
    }
    return true;
  };
  const keyed = (event: KeyboardEvent) => {
    if (event.key === "Escape") return close(null);
    if (event.key !== "Enter" && event.key !== "Tab") return;
    event.preventDefault();
    if (!keep()) return;
    if (event.key === "Enter") return close(null);
    const beat = 4 / melody.metre.beatType;
    const next = at / melody.division + (event.shiftKey ? -beat : beat);
    const isInside = next >= 0 && next * melody.division < melody.length;
    close(isInside ? next : null);
  };
  return (
    <div className="chord-input" ref={(box) => box?.style.setProperty("left", `${x - 8}px`)}>
      <input
        autoFocus
        aria-label={`Chord at ${where}`}
        aria-invalid={problem !== null}
        aria-describedby={problem === null ? undefined : "chord-problem"}
        value={text}
        autoComplete="off"
        spellCheck={false}
        maxLength={40}
        onChange={({ target }) => setText(target.value)}
        onKeyDown={keyed}
        onBlur={() => {
          if (entry.getState().chordAt === at / melody.division) close(null);
          keep();
        }}
      />
      {problem !== null && (
        <p id="chord-problem" role="alert">
          {withSigns(problem)}
        </p>
      )}
    </div>
  );
}
