import { matchLevels, stopSound } from "../actions/hear.ts";
import { keepThis } from "../actions/keep.ts";
import { useSound } from "../actions/sound-state.ts";
import { Choice } from "../parts/choice.tsx";
import { LevelChoice } from "../parts/level-choice.tsx";
import { chordWithSigns } from "../words/signs.ts";
import { hearStep, keepOther, loopStep, type Step } from "./next-chord-actions.ts";
import { useNextChord } from "./next-chord-store.ts";

/** One into the other, once or over and over; keep either. */
export function NextHear({ step }: { readonly step: Step | null }) {
  const phase = useSound((state) => state.phase);
  const isMatched = useSound((state) => state.isMatched);
  const blocked = useSound((state) => state.blocked);
  const isLooped = useNextChord((state) => state.isLooped);
  return (
    <footer className="next-hear" role="group" aria-label="Hear and keep">
      {phase === "silent" ? (
        <button
          type="button"
          className="next-play"
          disabled={step === null}
          onClick={() => void hearStep()}
        >
          Hear one into the other
        </button>
      ) : (
        <button type="button" className="next-play" onClick={stopSound}>
          Stop
        </button>
      )}
      <Choice
        label="How often"
        options={[
          { value: "once", text: "Once" },
          { value: "looped", text: "Over and over" },
        ]}
        value={isLooped ? "looped" : "once"}
        onChange={(value) => loopStep(value === "looped")}
      />
      <LevelChoice isMatched={isMatched} onMatch={matchLevels} />
      {blocked !== null && <span className="quiet">{blocked}</span>}
      <KeepEither step={step} />
    </footer>
  );
}

function KeepEither({ step }: { readonly step: Step | null }) {
  if (step === null) return null;
  return (
    <span className="row push">
      <button type="button" className="link" onClick={keepThis}>
        Keep the {chordWithSigns(step.held.question.chord.display)} voicing
      </button>
      <button type="button" className="link" onClick={keepOther}>
        Keep the {chordWithSigns(step.other.question.chord.display)} voicing
      </button>
    </span>
  );
}
