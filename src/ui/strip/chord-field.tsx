import { askChord } from "../actions/ask.ts";
import { endTyping } from "../actions/steps.ts";
import { usePage } from "../store.ts";
import { problemId, useIsWrong } from "./field-problem.tsx";

/** Longest symbols, in letters, that fit the field at each size of type. */
const fits = { usual: 5, smaller: 7, small: 10 } as const;

function sizeOf(text: string): string {
  if (text.length <= fits.usual) return "loud";
  if (text.length <= fits.smaller) return "loud chord-smaller";
  return text.length <= fits.small ? "loud chord-small" : "loud chord-smallest";
}

/** The chord symbol, as typed; a long one in smaller type, so that all of it is seen. */
export function ChordField() {
  const text = usePage((state) => state.history.present.inquiry.chordText);
  const isBad = useIsWrong("chord");
  return (
    <label className={isBad ? "field field-chord field-bad" : "field field-chord"}>
      <span>Chord</span>
      <input
        className={sizeOf(text)}
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
