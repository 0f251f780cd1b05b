import { demoTable } from "../../phrase/index.ts";
import { usePage } from "../store.ts";
import { chordWithSigns, withSigns } from "../words/signs.ts";
import { beginDemo, beginEmpty, beginHere, firstBar } from "./new-phrase.ts";
import { OpenButton } from "./open-button.tsx";

const steps: readonly (readonly [head: string, text: string])[] = [
  ["Melody", "Type it as text, put notes on a staff, play them in, or open a file."],
  ["Texture", "Draw how wide, how dense and how heavy the band is from bar to bar."],
  ["Answer", "Every note gets its chord and its voicing; every player gets a line that lies well."],
  ["Your ear", "Go to any note, look at all its voicings, fix the one you want; the rest follows."],
];

/** The view before there is a phrase: what it is for, and ways to begin. */
export function PhraseBegin() {
  const inquiry = usePage((state) => state.history.present.inquiry);
  const canBeginHere = firstBar(inquiry) !== undefined;
  return (
    <main className="phrase-begin">
      <h2>A melody with its changes, voiced for every player</h2>
      <ol className="begin-steps">
        {steps.map(([head, text]) => (
          <li key={head}>
            <b className="loud">{head}</b>
            <span>{text}</span>
          </li>
        ))}
      </ol>
      <h3>Start from a ready phrase</h3>
      <ul className="begin-demos">
        {demoTable.map(({ id, title, scenario, tempo, style }) => (
          <li key={id}>
            <button type="button" className="act" onClick={() => beginDemo(id, title)}>
              {title}
            </button>
            <span>
              {scenario}{" "}
              <span className="quiet">
                {style}, {tempo} a minute
              </span>
            </span>
          </li>
        ))}
      </ul>
      <h3>Or from your own</h3>
      <div className="row begin-own">
        <button type="button" className="act" onClick={beginEmpty}>
          Eight empty bars
        </button>
        {canBeginHere && (
          <button type="button" className="act" onClick={beginHere}>
            {chordWithSigns(inquiry.chordText)} under {withSigns(inquiry.melodyText)} as a first
            note
          </button>
        )}
        <OpenButton />
      </div>
    </main>
  );
}
