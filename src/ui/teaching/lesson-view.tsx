import type { Idea, LessonStep, LessonTexture } from "../../explore/index.ts";
import { useSize } from "../parts/use-size.ts";
import type { Asked } from "../state/page-state.ts";
import { LessonTable } from "./lesson-table.tsx";
import { HearPair, LessonLevel } from "./lesson-hear.tsx";
import { changeWords, equalWords, ideaWords } from "./lesson-words.ts";
import { isLevelMatched } from "./hear-texture.ts";
import { PairDrawing } from "./pair-drawing.tsx";
import { goToTopic, pairOfStep } from "./teaching-moves.ts";
import { teaching, useTeaching, type Topic } from "./teaching-store.ts";
import { Track } from "./track.tsx";
import { useIsRoom, usePairHeight, usePairSize } from "./use-room.ts";

/** One step of the lesson: an idea, two voicings, one control. */
export function LessonView({ idea, asked }: { readonly idea: Idea; readonly asked: Asked }) {
  const part = useTeaching((state) => state.parts?.find((each) => each.idea === idea));
  const fault = useTeaching((state) => state.fault);
  if (fault !== null) return <p className="teach-empty">{fault}</p>;
  if (part === undefined)
    return (
      <p className="teach-empty" role="status">
        Looking through the textures of {asked.question.chord.display} …
      </p>
    );
  if (part.kind === "gap") return <LessonGapView reason={part.reason} idea={idea} />;
  return <LessonStepView step={part} asked={asked} />;
}

function LessonGapView({ reason, idea }: { readonly reason: string; readonly idea: Idea }) {
  return (
    <div className="teach-empty">
      <p>{reason}</p>
      <p className="row">
        <NextTopic idea={idea} />
      </p>
    </div>
  );
}

function LessonStepView({ step, asked }: { readonly step: LessonStep; readonly asked: Asked }) {
  const { idea } = step;
  const moved = useTeaching((state) => state.moved[idea]);
  const chosen = useTeaching((state) => state.matched[idea]);
  const isRoom = useIsRoom();
  const { left, right, at } = pairOfStep(step, moved);
  const pair = { left, right };
  const isMatched = isLevelMatched(idea, chosen);
  return (
    <>
      <div className="lesson">
        <DrawingRoom idea={idea} asked={asked} {...pair} track={step.track} />
        {isRoom ? (
          <>
            <SameLine idea={idea} {...pair} />
            <ChangeWords {...{ asked, idea, left, right }} isUnseen />
          </>
        ) : (
          <aside className="lesson-words" aria-label="What changed">
            <ChangeWords {...{ asked, idea, left, right }} />
            <p>{ideaWords[idea].listen}</p>
            <LessonTable asked={asked} idea={idea} {...pair} />
            <p className="row lesson-on">
              <NextTopic idea={idea} />
              <SoundsMoves />
            </p>
          </aside>
        )}
      </div>
      <footer className="teach-foot">
        <HearPair
          first={{ name: "Left", texture: left }}
          second={{ name: "Right", texture: right }}
          isMatched={isMatched}
        />
        <LessonLevel idea={idea} />
        <Track step={step} at={at} asked={asked} />
      </footer>
    </>
  );
}

/** The drawing, in all the room there is. */
function DrawingRoom(props: {
  readonly idea: Idea;
  readonly asked: Asked;
  readonly left: LessonTexture;
  readonly right: LessonTexture;
  readonly track: readonly LessonTexture[];
}) {
  const { idea, asked, left, right, track } = props;
  const [ref, room] = useSize<HTMLDivElement>({ width: 960, height: 560 });
  const size = usePairSize(room.width);
  const height = usePairHeight(size, room.height);
  const bottom = Math.min(...track.map((texture) => texture.stack[0] ?? Infinity));
  return (
    <div className="lesson-drawing" ref={ref}>
      <PairDrawing
        {...{ asked, idea, left, right, size, bottom }}
        names={["Left", "Right"]}
        width={room.width}
        height={height}
      />
    </div>
  );
}

/** What changed, in a sentence; a screen reader is told each time it changes. */
function ChangeWords(props: {
  readonly asked: Asked;
  readonly idea: Idea;
  readonly left: LessonTexture;
  readonly right: LessonTexture;
  readonly isUnseen?: boolean;
}) {
  const { asked, idea, left, right, isUnseen = false } = props;
  return (
    <p className={isUnseen ? "unseen" : "lesson-change"} role="status" data-testid="change">
      {changeWords(left, right, idea, asked.nameOf)}
      <span className="unseen"> {equalWords(left, right, idea).follows}</span>
    </p>
  );
}

/** What both have in common and what follows, in one line of large type. */
function SameLine(props: {
  readonly idea: Idea;
  readonly left: LessonTexture;
  readonly right: LessonTexture;
}) {
  const { idea, left, right } = props;
  const { same, follows } = equalWords(left, right, idea);
  return (
    <p className="lesson-same" data-testid="same">
      {same !== "" && (
        <span>
          Left and right: <b>{same}</b>
        </span>
      )}
      {follows !== "" && <span>{follows}</span>}
    </p>
  );
}

const order: readonly Topic[] = ["span", "weight", "density", "interleaving", "quiz"];

/** On to the next idea, at the end to the quiz. */
function NextTopic({ idea }: { readonly idea: Idea }) {
  const next = order[order.indexOf(idea) + 1] ?? "quiz";
  const name = next === "quiz" ? "test your ear" : ideaWords[next].title.toLowerCase();
  return (
    <button type="button" className="act lesson-next" onClick={() => goToTopic(next)}>
      Next: {name}
    </button>
  );
}

function SoundsMoves() {
  const soundsMoves = useTeaching((state) => state.soundsMoves);
  return (
    <button
      type="button"
      className="link sounds-moves"
      aria-pressed={soundsMoves}
      title="Whether the right voicing sounds as soon as it is moved"
      onClick={() => teaching.setState({ soundsMoves: !soundsMoves })}
    >
      {soundsMoves ? "Each move sounds" : "Moves are silent"}
    </button>
  );
}
