import { useState } from "react";
import type { Problem } from "../../base/index.ts";
import { showTyped } from "../actions/show-typed.ts";
import { WarnSign } from "../parts/warn-sign.tsx";
import { withSigns } from "../words/signs.ts";

/** A field for a voicing of one's own; it says where the voicing falls, or what cannot be read. */
export function TypeVoicing({ onClose }: { readonly onClose: () => void }) {
  const [text, setText] = useState("");
  const [problem, setProblem] = useState<Problem | null>(null);
  const [came, setCame] = useState<string | null>(null);
  const show = () => {
    const shown = showTyped(text);
    setProblem(shown.ok ? null : shown.problem);
    setCame(shown.ok ? shown.value : null);
  };
  return (
    <form
      className="type-voicing"
      onSubmit={(event) => {
        event.preventDefault();
        show();
      }}
      onKeyDown={(event) => {
        if (event.key === "Escape") onClose();
      }}
    >
      <label htmlFor="typed-voicing">
        Your own voicing <span className="quiet">players with notes, or notes low to high</span>
      </label>
      <div className="row">
        <input
          id="typed-voicing"
          className={problem === null ? "typed" : "typed typed-wrong"}
          value={text}
          autoFocus
          autoComplete="off"
          spellCheck={false}
          maxLength={400}
          placeholder="tpt1 D5, alto1 B4, tbn1 F4 … or F2 A3 C4 Eb4 G4 D5"
          aria-invalid={problem !== null}
          aria-describedby="typed-came"
          onChange={(event) => setText(event.target.value)}
        />
        <button type="submit" className="act">
          Show it
        </button>
        <button type="button" className="link" onClick={onClose}>
          Close
        </button>
      </div>
      <div id="typed-came" role="status">
        {problem !== null && <TypedProblem text={text} problem={problem} />}
        {came !== null && <p className="quiet">{came}</p>}
      </div>
    </form>
  );
}

/** The place in the text, then what is wrong there. */
function TypedProblem({ text, problem }: { readonly text: string; readonly problem: Problem }) {
  const rest = problem.position === undefined ? "" : text.slice(problem.position);
  const [word = ""] = /^[^\s,;]*/.exec(rest) ?? [];
  return (
    <p className="row typed-problem">
      <WarnSign />
      <span>
        {word !== "" && <b>At “{withSigns(word)}”: </b>}
        {withSigns(problem.message)}
      </span>
    </p>
  );
}
