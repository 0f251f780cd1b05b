import { OpenButton } from "../open-button.tsx";
import { leavePhrase } from "../phrase-actions.ts";
import { MelodyText } from "./melody-text.tsx";

/** The melody and its chords: on the staff, or as text. */
export function MelodyPanel() {
  return (
    <section className="phrase-part" aria-labelledby="melody-head">
      <div className="row phrase-part-head">
        <h2 id="melody-head">Melody</h2>
        <span className="row push">
          <OpenButton className="link" />
          <button type="button" className="link" onClick={leavePhrase}>
            Another phrase
          </button>
        </span>
      </div>
      <MelodyText />
    </section>
  );
}
