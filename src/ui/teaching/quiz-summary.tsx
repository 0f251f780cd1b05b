import { useEffect, useRef } from "react";
import type { Idea, QuizAnswer, QuizRound } from "../../explore/index.ts";
import { hearTextures, isLevelMatched } from "./hear-texture.ts";
import { beginRound, leaveRound } from "./quiz-moves.ts";
import { leastText, marginText, quizWords, sidesOf, verdictWords } from "./quiz-words.ts";

const ideas: readonly Idea[] = ["span", "weight", "density", "interleaving"];

/** The end of a round: what was heard, how finely, and on. */
export function QuizSummary({ round }: { readonly round: QuizRound }) {
  const again = useRef<HTMLButtonElement>(null);
  useEffect(() => again.current?.focus(), []);
  const right = round.answers.filter((answer) => answer.isRight).length;
  return (
    <div className="quiz quiz-end">
      <h2 className="quiz-result" data-testid="result">
        {right} of {round.answers.length} right
      </h2>
      <table className="lesson-table quiz-table">
        <thead>
          <tr>
            <th scope="col">Which is …</th>
            <th scope="col">Right</th>
            <th scope="col">Finest difference heard</th>
            <th scope="col">Next level</th>
          </tr>
        </thead>
        <tbody>
          {ideas.map((idea) => {
            const standing = round.standings[idea];
            if (standing.asked === 0) return null;
            return (
              <tr key={idea}>
                <th scope="row">{quizWords[idea].more}</th>
                <td>
                  {standing.right} of {standing.asked}
                </td>
                <td>{standing.finest === null ? "none yet" : marginText(idea, standing.finest)}</td>
                <td>
                  {standing.level + 1} of 5, {leastText(idea, standing.level)}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className="row">
        <button
          type="button"
          className="act quiz-begin"
          ref={again}
          onClick={() => beginRound(round)}
        >
          Another round
        </button>
        <button type="button" className="link" onClick={leaveRound}>
          Start over from the easiest
        </button>
      </p>
      <ol className="quiz-answers">
        {round.answers.map((answer, index) => (
          <AnswerLine key={index} answer={answer} number={index + 1} />
        ))}
      </ol>
    </div>
  );
}

/** One answer of the round, to be heard again. */
function AnswerLine({ answer, number }: { readonly answer: QuizAnswer; readonly number: number }) {
  const { verdict, numbers } = verdictWords(answer);
  const sides = sidesOf(answer);
  const isMatched = isLevelMatched(answer.turn.idea, undefined);
  const again = () =>
    hearTextures(
      [
        { name: `${number} A`, texture: sides.A },
        { name: `${number} B`, texture: sides.B },
      ],
      isMatched,
    );
  return (
    <li>
      <span className="quiz-number">{number}</span>
      <span className={answer.isRight ? "" : "quiz-missed"}>
        {verdict} <span className="quiet">{numbers}</span>
      </span>
      <button
        type="button"
        className="link link-sound push"
        onClick={again}
        aria-label={`Hear ${number} again`}
      >
        Hear again
      </button>
    </li>
  );
}
