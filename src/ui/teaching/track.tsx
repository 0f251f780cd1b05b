import { useEffect, useRef, type KeyboardEvent } from "react";
import type { LessonStep, LessonTexture } from "../../explore/index.ts";
import { draftPath, draftRows, draftSections } from "../map/draft.ts";
import { stepOfKey } from "../parts/choice.tsx";
import type { Asked } from "../state/page-state.ts";
import { ideaFigure, ideaWords, trackFigure } from "./lesson-words.ts";
import { moveRight } from "./teaching-moves.ts";

/** The control of a lesson: the right voicing's place between little and much. */
export function Track(props: {
  readonly step: LessonStep;
  readonly at: number;
  readonly asked: Asked;
}) {
  const { step, at, asked } = props;
  const group = useRef<HTMLDivElement>(null);
  const words = ideaWords[step.idea];
  // On a small screen the row scrolls: the right voicing stays in sight.
  useEffect(() => {
    const place = group.current?.querySelectorAll("button")[at];
    place?.scrollIntoView({ block: "nearest", inline: "nearest" });
  }, [at]);
  const last = step.track.length - 1;
  const goTo = (to: number) => {
    if (to < 0 || to > last) return;
    moveRight(step, to);
    group.current?.querySelectorAll("button")[to]?.focus();
  };
  const keyed = (event: KeyboardEvent) => {
    const to = placeOfKey(event.key, at, last);
    if (to === null) return;
    event.preventDefault();
    goTo(to);
  };
  return (
    <div className="track">
      <StepButton text={words.less} isEnd={at === 0} onPress={() => moveRight(step, at - 1)} />
      <div
        className="track-row"
        role="radiogroup"
        aria-label={`Right voicing, ${words.track}`}
        ref={group}
        onKeyDown={keyed}
      >
        {step.track.map((texture, index) => (
          <TrackPlace
            key={index}
            texture={texture}
            step={step}
            asked={asked}
            isLeft={index === step.left}
            isRight={index === at}
            onPick={() => goTo(index)}
          />
        ))}
      </div>
      <StepButton text={words.more} isEnd={at === last} onPress={() => moveRight(step, at + 1)} />
    </div>
  );
}

/** One place on, in the idea's own word; at the end it keeps the focus and does nothing. */
function StepButton(props: {
  readonly text: string;
  readonly isEnd: boolean;
  readonly onPress: () => void;
}) {
  const { text, isEnd, onPress } = props;
  return (
    <button type="button" className="act track-step" aria-disabled={isEnd} onClick={onPress}>
      {text}
    </button>
  );
}

function placeOfKey(key: string, at: number, last: number): number | null {
  if (key === "Home") return 0;
  if (key === "End") return last;
  const by = stepOfKey(key);
  return by === 0 ? null : at + by;
}

const swatch = { width: 54, height: 38 };

/** One place of the track: its weave, dyed where it is one of the two, and its figure. */
function TrackPlace(props: {
  readonly texture: LessonTexture;
  readonly step: LessonStep;
  readonly asked: Asked;
  readonly isLeft: boolean;
  readonly isRight: boolean;
  readonly onPick: () => void;
}) {
  const { texture, step, asked, isLeft, isRight, onPick } = props;
  const tag = [isLeft ? "left" : "", isRight ? "right" : ""].filter((word) => word !== "");
  const { figure, lines } = ideaFigure(texture, step.idea);
  return (
    <button
      type="button"
      role="radio"
      className={isLeft || isRight ? "track-place track-dyed" : "track-place"}
      aria-checked={isRight}
      aria-label={`${figure}, ${lines.join(" ")}${isLeft ? ", as the left one" : ""}`}
      tabIndex={isRight ? 0 : -1}
      onClick={onPick}
    >
      <span className="track-tag">{tag.join(", ")}</span>
      <Weave texture={texture} asked={asked} isDyed={isLeft || isRight} />
      <span className="track-figure">{trackFigure(texture, step.idea)}</span>
    </button>
  );
}

function Weave(props: {
  readonly texture: LessonTexture;
  readonly asked: Asked;
  readonly isDyed: boolean;
}) {
  const { texture, asked, isDyed } = props;
  const rows = draftRows(
    asked.question.players.flatMap((player, index) => {
      const pitch = texture.pitches[index] ?? 0;
      return pitch > 0 ? [{ section: player.section, pitch }] : [];
    }),
  );
  const box = { x: 3, y: 3, width: swatch.width - 6, height: swatch.height - 6 };
  return (
    <svg {...swatch} viewBox={`0 0 ${swatch.width} ${swatch.height}`} aria-hidden="true">
      <rect className="track-ground" {...swatch} />
      {draftSections.map((section) => (
        <path
          key={section}
          className={isDyed ? `mark-${section}` : "track-draft"}
          d={draftPath(rows, section, box)}
        />
      ))}
    </svg>
  );
}
