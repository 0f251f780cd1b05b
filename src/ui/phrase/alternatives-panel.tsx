import { answerDifference, type PhraseAlternative, type PhraseAnswer } from "../../phrase/index.ts";
import { usePage } from "../store.ts";
import { counted } from "../words/counts.ts";
import { findAlternatives, isTaken, takeAlternative } from "./alternatives.ts";
import { usePhrase } from "./phrase-store.ts";

/** Other answers for the whole phrase, with what differs, to choose from. */
export function AlternativesPanel() {
  const alternatives = usePhrase((state) => state.alternatives);
  const view = usePhrase((state) => state.view);
  const isBusy = usePhrase((state) => state.searching !== null);
  const question = usePage((state) => state.history.present.phrase?.question);
  if (view === null || question === undefined) return null;
  return (
    <section className="aside-part" aria-labelledby="alternatives-head">
      <h2 id="alternatives-head">Other answers</h2>
      {alternatives === null ? (
        <>
          <p className="quiet">Three answers to the whole phrase that differ to the ear.</p>
          <button type="button" className="act" disabled={isBusy} onClick={findAlternatives}>
            Look for three
          </button>
        </>
      ) : (
        <ul className="alternatives">
          {alternatives.map((one) => (
            <li key={one.id}>
              <button
                type="button"
                className="alternative"
                aria-pressed={isTaken(one, question)}
                onClick={() => takeAlternative(one)}
              >
                <b>{one.label}</b>
                <span>{wordsOn(one, view.answer)}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** Means over the phrase, weighted by time, and how far it lies from the answer in view. */
function wordsOn({ answer }: PhraseAlternative, inView: PhraseAnswer): string {
  const total = answer.moments.reduce((sum, { moment }) => sum + moment.duration, 0);
  const mean = (value: (moment: PhraseAnswer["moments"][number]) => number) =>
    answer.moments.reduce((sum, one) => sum + one.moment.duration * value(one), 0) / total;
  const span = Math.round(mean((one) => one.span));
  const notes = mean((one) => one.notes).toFixed(1);
  const players = Math.round(mean((one) => one.players));
  const apart = Math.round(100 * answerDifference(answer, inView));
  const differs = apart === 0 ? "in view" : `${apart} % of the notes differ`;
  return `${counted(span, "semitone")}, ${notes} notes, ${counted(players, "player")} on average; ${differs}.`;
}
