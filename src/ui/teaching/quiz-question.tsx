import { useEffect, useRef, type KeyboardEvent } from "react";
import type { QuizAnswer, QuizQuestion, QuizSide } from "../../explore/index.ts";
import { useSize } from "../parts/use-size.ts";
import type { Asked } from "../state/page-state.ts";
import { hearTextures, isLevelMatched, useNowSounding } from "./hear-texture.ts";
import { HearPair, SoundLine } from "./lesson-hear.tsx";
import { LessonTable } from "./lesson-table.tsx";
import { PairDrawing } from "./pair-drawing.tsx";
import { answerWith, leaveRound, nextQuestion } from "./quiz-moves.ts";
import { levelWords, quizWords, sidesOf, verdictWords, type Sides } from "./quiz-words.ts";
import { useTeaching } from "./teaching-store.ts";
import { useIsRoom, usePairHeight, usePairSize } from "./use-room.ts";

/** One question: two voicings to hear, two answers; then both on the page and why. */
export function QuizQuestionView(props: {
  readonly question: QuizQuestion;
  readonly asked: Asked;
}) {
  const { question, asked } = props;
  const answer = useTeaching((state) => state.quiz.answer);
  const sides = sidesOf(question);
  const { idea } = question.turn;
  const isMatched = isLevelMatched(idea, undefined);
  const hear = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (answer === null) hear.current?.focus();
  }, [answer]);
  const keyed = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey || answer !== null) return;
    const key = event.key.toUpperCase();
    if (key === "A" || key === "B") answerWith(key);
  };
  return (
    <>
      <div className="quiz" onKeyDown={keyed}>
        <QuizAsk question={question} isAnswered={answer !== null} />
        {answer === null ? (
          <Closed sides={sides} more={quizWords[idea].more} isMatched={isMatched} />
        ) : (
          <Opened answer={answer} sides={sides} asked={asked} />
        )}
      </div>
      <footer className="teach-foot" onKeyDown={keyed}>
        <HearPair
          first={{ name: "A", texture: sides.A }}
          second={{ name: "B", texture: sides.B }}
          isMatched={isMatched}
          bothRef={hear}
          hasEach={answer !== null}
        />
        <div className="teach-level quiz-level">
          <p>{isMatched ? "Level-matched" : "As played: loudness is part of weight"}</p>
          <SoundLine />
        </div>
        <QuizScore />
      </footer>
    </>
  );
}

/** What is asked, and how hard it is. */
function QuizAsk(props: { readonly question: QuizQuestion; readonly isAnswered: boolean }) {
  const { question, isAnswered } = props;
  const { turn, pair } = question;
  const words = quizWords[turn.idea];
  return (
    <div className="quiz-ask">
      <h2>Which is {words.more}?</h2>
      {!isAnswered && (
        <>
          <p>{words.hint}</p>
          <p className="quiet">
            Level {pair.level + 1} of 5: {levelWords(turn.idea, pair.level)}.
          </p>
        </>
      )}
    </div>
  );
}

/** Before the answer: two closed voicings. */
function Closed(props: {
  readonly sides: Sides;
  readonly more: string;
  readonly isMatched: boolean;
}) {
  const { sides, more, isMatched } = props;
  const turn = useNowSounding();
  return (
    <div className="quiz-closed">
      {(["A", "B"] as const).map((side: QuizSide) => (
        <div key={side} className="quiz-side" data-sounding={turn === side}>
          <button
            type="button"
            className="quiz-letter loud"
            aria-label={`Hear ${side}`}
            onClick={() => hearTextures([{ name: side, texture: sides[side] }], isMatched)}
          >
            {side}
            <span className="quiz-hear">{turn === side ? "sounding" : "hear"}</span>
          </button>
          <button
            type="button"
            className="act quiz-answer"
            aria-keyshortcuts={side}
            onClick={() => answerWith(side)}
          >
            {side} is {more}
          </button>
        </div>
      ))}
    </div>
  );
}

/** After the answer: both voicings, the numbers, and on. */
function Opened(props: {
  readonly answer: QuizAnswer;
  readonly sides: Sides;
  readonly asked: Asked;
}) {
  const { answer, sides, asked } = props;
  const [ref, room] = useSize<HTMLDivElement>({ width: 960, height: 420 });
  const size = usePairSize(room.width);
  const height = usePairHeight(size, room.height);
  const isRoom = useIsRoom();
  const next = useRef<HTMLButtonElement>(null);
  useEffect(() => next.current?.focus(), []);
  const { verdict, numbers, equal } = verdictWords(answer);
  const { idea } = answer.turn;
  const bottom = Math.min(sides.A.stack[0] ?? Infinity, sides.B.stack[0] ?? Infinity);
  return (
    <>
      <div className="quiz-verdict" data-testid="verdict">
        <p className="quiz-right loud">
          <VerdictSign isRight={answer.isRight} /> {verdict}
        </p>
        <p>
          {numbers} <span className="quiet">{equal}</span>
        </p>
        <button type="button" className="act quiz-next" ref={next} onClick={nextQuestion}>
          Next
        </button>
      </div>
      <div className="lesson quiz-opened">
        <div className="lesson-drawing" ref={ref}>
          <PairDrawing
            {...{ asked, idea, size, bottom }}
            left={sides.A}
            right={sides.B}
            names={["A", "B"]}
            width={room.width}
            height={height}
          />
        </div>
        {!isRoom && (
          <LessonTable {...{ asked, idea }} left={sides.A} right={sides.B} names={["A", "B"]} />
        )}
      </div>
    </>
  );
}

/** A tick or a cross, beside the word. */
function VerdictSign({ isRight }: { readonly isRight: boolean }) {
  return (
    <svg className="quiz-sign" width="28" height="28" viewBox="0 0 28 28" aria-hidden="true">
      <path d={isRight ? "M4,15L11,22L24,6" : "M6,6L22,22M22,6L6,22"} />
    </svg>
  );
}

/** How the round stands: one mark a question. */
function QuizScore() {
  const round = useTeaching((state) => state.quiz.round);
  const isAnswered = useTeaching((state) => state.quiz.answer !== null);
  if (round === null) return null;
  const right = round.answers.filter((answer) => answer.isRight).length;
  const at = round.answers.length + (isAnswered ? 0 : 1);
  return (
    <div className="quiz-score">
      <p>
        {round.answers.length > 0 && (
          <b data-testid="score">
            {right} of {round.answers.length} right,{" "}
          </b>
        )}
        <span className="quiet">
          {round.answers.length > 0 ? "question" : "Question"} {at} of {round.turns.length}
        </span>
      </p>
      <span className="quiz-marks" aria-hidden="true">
        {round.turns.map((_, index) => {
          const answer = round.answers[index];
          const state = answer === undefined ? "open" : answer.isRight ? "right" : "wrong";
          return <i key={index} data-state={state} />;
        })}
      </span>
      <button type="button" className="link" onClick={leaveRound}>
        End the round
      </button>
    </div>
  );
}
