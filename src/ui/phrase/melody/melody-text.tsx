import { useEffect, useId, useRef } from "react";
import { fileNameOf, handOver } from "../../actions/hand-over.ts";
import { endTyping } from "../../actions/steps.ts";
import { WarnSign } from "../../parts/warn-sign.tsx";
import { usePage } from "../../store.ts";
import { lookAt, typeMelody, useTextReading } from "./read-typed.ts";

const example = '"F7" c2 e2 f3 c | "Bb7" (3def d4 z2 |';

/** The melody as text in an open notation, read while it is typed. */
export function MelodyText() {
  const typed = usePage((state) => state.history.present.phrase?.typed ?? "");
  const area = useRef<HTMLTextAreaElement>(null);
  const id = useId();
  const { text, problems, remarks } = useTextReading();
  useEffect(() => {
    void lookAt(typed);
  }, [typed]);
  const isWrong = text === typed && problems.length > 0;
  const goTo = (position: number | undefined) => {
    area.current?.focus();
    if (position !== undefined) area.current?.setSelectionRange(position, position + 1);
  };
  return (
    <div className="melody-text">
      <div className="melody-typed">
        <label htmlFor={id}>Melody in ABC, chords in quotes</label>
        <textarea
          id={id}
          ref={area}
          rows={10}
          spellCheck={false}
          autoComplete="off"
          autoCapitalize="off"
          placeholder={example}
          value={typed}
          aria-invalid={isWrong}
          aria-describedby={`${id}-said`}
          onChange={({ target }) => void typeMelody(target.value)}
          onBlur={endTyping}
        />
        <SaveText typed={typed} />
      </div>
      <div className="melody-said" id={`${id}-said`} aria-live="polite">
        {isWrong && (
          <>
            <p>
              <b>This cannot be read yet.</b> The last melody that could be read stays.
            </p>
            <ul>
              {problems.map(({ message, position }) => (
                <li key={message} className="row">
                  <WarnSign />
                  <span>{message}</span>
                  {position !== undefined && (
                    <button type="button" className="link" onClick={() => goTo(position)}>
                      Show
                    </button>
                  )}
                </li>
              ))}
            </ul>
          </>
        )}
        {!isWrong && remarks.map((remark) => <p key={remark}>{remark}</p>)}
        {!isWrong && remarks.length === 0 && <TextHelp />}
      </div>
    </div>
  );
}

/** The text as a file. */
function SaveText({ typed }: { readonly typed: string }) {
  const title = usePage((state) => state.history.present.phrase?.question.melody.title ?? "");
  return (
    <button
      type="button"
      className="link"
      disabled={typed.trim() === ""}
      onClick={() => handOver(typed, fileNameOf([title], "abc"), "text/vnd.abc")}
    >
      Save the text as ABC
    </button>
  );
}

/** The few signs a melody needs. Source: ABC music standard 2.1. */
const signs: readonly (readonly [sign: string, meaning: string])[] = [
  ["C D E … c d e", "notes from middle C up, small letters an octave higher"],
  ["c' C,", "an octave up, an octave down"],
  ["c2 c3 c/2", "twice, three times, half the unit length (L:)"],
  ["^c _e =f", "sharp, flat, natural"],
  ["z2", "a rest"],
  ["c2-c2", "a tie"],
  ["(3cde", "a triplet"],
  ['"Bb7"', "a chord that begins here"],
  ["|: :|", "repeats; [1 and [2 for endings"],
];

function TextHelp() {
  return (
    <dl className="text-help">
      {signs.map(([sign, meaning]) => (
        <div key={sign}>
          <dt>{sign}</dt>
          <dd>{meaning}</dd>
        </div>
      ))}
    </dl>
  );
}
