import { askChord } from "../actions/ask.ts";
import { endTyping } from "../actions/steps.ts";
import { usePage } from "../store.ts";
import { problemId, useIsWrong } from "./field-problem.tsx";

/** The chord symbol, as typed. */
export function ChordField() {
  const text = usePage((state) => state.history.present.inquiry.chordText);
  const isBad = useIsWrong("chord");
  return (
    <label className={isBad ? "field field-chord field-bad" : "field field-chord"}>
      <span>Chord</span>
      <input
        className="loud"
        value={text}
        placeholder="F13"
        spellCheck={false}
        autoComplete="off"
        autoCapitalize="off"
        maxLength={40}
        aria-invalid={isBad}
        {...(isBad ? { "aria-describedby": problemId("chord") } : {})}
        onChange={(event) => askChord(event.target.value)}
        onBlur={endTyping}
      />
    </label>
  );
}
