import type { Idea, LessonTexture } from "../../explore/index.ts";
import type { Asked } from "../state/page-state.ts";
import { withSigns } from "../words/signs.ts";
import { useNowSounding } from "./hear-texture.ts";
import { PairAside } from "./pair-aside.tsx";
import { PairLadderMarks, PairMove } from "./pair-ladder.tsx";
import { pairPlan, type PairPlan } from "./pair-plan.ts";
import { pairSizes, type PairSize } from "./pair-sizes.ts";

/** Two voicings side by side on one pitch scale, with the figures of one idea. */
export function PairDrawing(props: {
  readonly asked: Asked;
  readonly idea: Idea;
  readonly left: LessonTexture;
  readonly right: LessonTexture;
  readonly names: readonly [left: string, right: string];
  readonly size: PairSize;
  readonly width: number;
  readonly height: number;
  /** Lowest pitch of the scale. */
  readonly bottom: number;
}) {
  const { asked, idea, left, right, names, size, width, height, bottom } = props;
  const { lead, players } = asked.question;
  const plan = pairPlan({ players, left, right, size, top: lead, bottom, width, height });
  const sizes = pairSizes[size];
  const turn = useNowSounding();
  return (
    <svg
      className={`pair pair-${size}`}
      width={width}
      height={plan.height}
      viewBox={`0 0 ${width} ${plan.height}`}
      role="img"
      aria-label={`${spokenOf(names[0], left, asked)} ${spokenOf(names[1], right, asked)}`}
    >
      <SharedThreads plan={plan} />
      <PairLadderMarks
        ladder={plan.left}
        {...{ asked, sizes, idea }}
        isSounding={turn === names[0]}
        lead={lead}
      />
      <PairLadderMarks
        ladder={plan.right}
        {...{ asked, sizes, idea }}
        isSounding={turn === names[1]}
        lead={lead}
      />
      {idea === "span" && plan.move !== null && <PairMove move={plan.move} sizes={sizes} />}
      {sizes.aside > 0 && (
        <>
          <PairAside
            ladder={plan.left}
            plan={plan}
            name={names[0]}
            {...{ idea, sizes }}
            texture={left}
          />
          <PairAside
            ladder={plan.right}
            plan={plan}
            name={names[1]}
            {...{ idea, sizes }}
            texture={right}
          />
        </>
      )}
    </svg>
  );
}

/** A voicing in words: its notes, low to high. */
function spokenOf(name: string, texture: LessonTexture, asked: Asked): string {
  const notes = texture.stack.map((pitch) => withSigns(asked.nameOf(pitch).name)).join(" ");
  return `${name}: ${notes}, ${texture.players} players.`;
}

/** Notes that both sound: dotted threads through both ladders. */
function SharedThreads({ plan }: { readonly plan: PairPlan }) {
  const { left, right } = plan;
  // Within a ladder a thread is drawn by the ladder itself.
  const parts = [
    [left.from - 12, left.from],
    [left.to, right.from],
    [right.to, right.to + 12],
  ] as const;
  return (
    <g className="pair-under">
      {plan.shared.flatMap((y) =>
        parts.map(([from, to]) => <line key={`${y} ${from}`} x1={from} x2={to} y1={y} y2={y} />),
      )}
    </g>
  );
}
