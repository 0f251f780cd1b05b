import { useId, type KeyboardEvent } from "react";
import { Choice } from "../parts/choice.tsx";
import { WarnSign } from "../parts/warn-sign.tsx";
import type { Asked } from "../state/page-state.ts";
import { usePage } from "../store.ts";
import { chordWithSigns, withSigns } from "../words/signs.ts";
import { paceStep, pickNextChord, typeNextChord, typeNextMelody } from "./next-chord-actions.ts";
import { useNextChord } from "./next-chord-store.ts";
import { chordSuggestions, melodySuggestions, type Suggestion } from "./suggestions.ts";

/** The other chord and its melody note: typed, or picked from a few. */
export function NextFields() {
  const asked = usePage((state) => state.answer?.asked ?? null);
  const problem = useNextChord((state) => state.problem);
  const problemId = useId();
  if (asked === null) return null;
  return (
    <div className="next-fields" onKeyDown={keepSteps}>
      <From asked={asked} />
      <ChordPart asked={asked} problemId={problem === "" ? null : problemId} />
      <MelodyPart asked={asked} problemId={problem === "" ? null : problemId} />
      <Pace />
      {problem !== "" && (
        <p className="row next-problem" role="alert" id={problemId}>
          <WarnSign /> {withSigns(problem)}
        </p>
      )}
    </div>
  );
}

/** Undo in a field is the field's own: what is typed here is no step of the page. */
function keepSteps(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey) event.stopPropagation();
}

function From({ asked }: { readonly asked: Asked }) {
  const isAfter = useNextChord((state) => state.isAfter);
  const { chord, lead } = asked.question;
  return (
    <p className="next-from">
      <span className="quiet">{isAfter ? "From" : "Into"}</span>
      <b className="loud">{chordWithSigns(chord.display)}</b>
      <span>{withSigns(asked.nameOf(lead).name)}</span>
    </p>
  );
}

interface PartProps {
  readonly asked: Asked;
  readonly problemId: string | null;
}

function ChordPart({ asked, problemId }: PartProps) {
  const isAfter = useNextChord((state) => state.isAfter);
  const chordText = useNextChord((state) => state.chordText);
  return (
    <div className="next-part">
      <label>
        <span className="quiet">{isAfter ? "Chord after" : "Chord before"}</span>
        <input
          className="next-chord-input loud"
          value={chordText}
          spellCheck={false}
          autoCapitalize="off"
          onChange={(event) => typeNextChord(event.target.value)}
          {...(problemId === null ? {} : { "aria-describedby": problemId })}
        />
      </label>
      <Suggestions
        label={isAfter ? "Chords that often follow" : "Chords that often come before"}
        suggestions={chordSuggestions(asked.question.chord, isAfter)}
        picked={chordText}
        onPick={pickNextChord}
      />
    </div>
  );
}

function MelodyPart({ asked, problemId }: PartProps) {
  const chordText = useNextChord((state) => state.chordText);
  const melodyText = useNextChord((state) => state.melodyText);
  return (
    <div className="next-part">
      <label>
        <span className="quiet">Its melody note</span>
        <input
          className="next-melody-input"
          value={melodyText}
          spellCheck={false}
          autoCapitalize="off"
          onChange={(event) => typeNextMelody(event.target.value)}
          {...(problemId === null ? {} : { "aria-describedby": problemId })}
        />
      </label>
      <Suggestions
        label="Melody notes near"
        suggestions={melodySuggestions(chordText, asked.question.lead)}
        picked={melodyText}
        onPick={typeNextMelody}
      />
    </div>
  );
}

/** A few to pick from, each with what it is. */
function Suggestions(props: {
  readonly label: string;
  readonly suggestions: readonly Suggestion[];
  readonly picked: string;
  readonly onPick: (text: string) => void;
}) {
  const { label, suggestions, picked, onPick } = props;
  return (
    <ul className="next-suggestions" aria-label={label}>
      {suggestions.map(({ text, meaning }) => (
        <li key={`${text} ${meaning}`}>
          <button
            type="button"
            className="next-suggestion"
            aria-pressed={text === picked}
            onClick={() => onPick(text)}
          >
            <b>{chordWithSigns(text)}</b> <span className="quiet">{meaning}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

function Pace() {
  const speed = useNextChord((state) => state.speed);
  return (
    <div className="next-pace">
      <span className="quiet">Time to move</span>
      <Choice
        label="Time to move"
        options={[
          { value: "slow", text: "1 s", meaning: "A whole bar of a fast tune: any slide will do." },
          { value: "medium", text: "0.35 s", meaning: "A quarter note at 170." },
          { value: "fast", text: "0.18 s", meaning: "An eighth note at 170." },
        ]}
        value={speed}
        onChange={paceStep}
      />
    </div>
  );
}
