import { ideasOf, type Idea } from "../../explore/index.ts";
import { useEffect, useRef } from "react";
import type { Asked } from "../state/page-state.ts";
import { ideaWords } from "./lesson-words.ts";
import { askAbout, beginRound } from "./quiz-moves.ts";
import { QuizQuestionView } from "./quiz-question.tsx";
import { QuizSummary } from "./quiz-summary.tsx";
import { quizWords } from "./quiz-words.ts";
import { useTeaching } from "./teaching-store.ts";

/** The listening quiz: its start, its questions, its end. */
export function QuizView({ asked }: { readonly asked: Asked }) {
  const deck = useTeaching((state) => state.deck);
  const fault = useTeaching((state) => state.fault);
  const { round, question, answer } = useTeaching((state) => state.quiz);
  if (fault !== null) return <p className="teach-empty">{fault}</p>;
  if (deck === null)
    return (
      <p className="teach-empty" role="status">
        Looking for pairs among the textures of {asked.question.chord.display} …
      </p>
    );
  if (round === null) return <QuizStart able={ideasOf(deck)} />;
  if (question === null) return <QuizSummary round={round} />;
  const number = round.answers.length - (answer === null ? 0 : 1);
  return <QuizQuestionView key={number} question={question} asked={asked} />;
}

const ideas: readonly Idea[] = ["span", "weight", "density", "interleaving"];

function QuizStart({ able }: { readonly able: readonly Idea[] }) {
  const begin = useRef<HTMLButtonElement>(null);
  useEffect(() => begin.current?.focus(), []);
  if (able.length === 0)
    return (
      <p className="teach-empty">
        This question has no two textures that differ in one thing only. A larger line-up has more.
      </p>
    );
  return (
    <div className="quiz quiz-start">
      <p className="quiz-lead">
        Twelve questions, two voicings each, made of the chord and the melody in view. They differ
        clearly in what is asked and hardly in anything else. Two right in a row make the next
        difference smaller, one wrong makes it larger. Take your time; hear them as often as you
        like. Answer with the buttons, or with the keys A and B.
      </p>
      <p className="quiz-lead">
        Both are brought to the same loudness, so that the louder one does not give itself away.
        Only “heavier” is heard as played: there, loudness is part of the thing.
      </p>
      <div role="group" aria-label="Ask which is" className="quiz-ideas">
        {ideas.map((idea) => (
          <IdeaSwitch key={idea} idea={idea} isAble={able.includes(idea)} />
        ))}
      </div>
      <button type="button" className="act quiz-begin" ref={begin} onClick={() => beginRound()}>
        Begin
      </button>
    </div>
  );
}

/** Whether an idea is asked about. */
function IdeaSwitch({ idea, isAble }: { readonly idea: Idea; readonly isAble: boolean }) {
  const isAsked = useTeaching((state) => state.quiz.asking.includes(idea)) && isAble;
  return (
    <button
      type="button"
      className="quiz-idea"
      aria-pressed={isAsked}
      disabled={!isAble}
      onClick={() => askAbout(idea, !isAsked)}
    >
      <span className="quiz-on">{isAsked ? "on" : "off"}</span>
      <span className="quiz-word loud">{quizWords[idea].more}</span>
      <span className="quiz-meaning">
        {isAble ? ideaWords[idea].sentence : "This question has no such pair."}
      </span>
    </button>
  );
}
