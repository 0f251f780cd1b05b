import type { Idea, LessonTexture } from "../../explore/index.ts";
import { SectionMark } from "../parts/section-mark.tsx";
import { ideaFigure } from "./lesson-words.ts";
import type { PairLadder, PairPlan } from "./pair-plan.ts";
import type { PairSizes } from "./pair-sizes.ts";

/** Right of a ladder: its extent and the idea's figure. */
export function PairAside(props: {
  readonly ladder: PairLadder;
  readonly plan: PairPlan;
  readonly idea: Idea;
  readonly sizes: PairSizes;
  readonly name: string;
  readonly texture: LessonTexture;
}) {
  const { ladder, plan, idea, sizes, name, texture } = props;
  const { figure, lines } = ideaFigure(texture, idea);
  const large = sizes.note * 2.5;
  const x = ladder.to + sizes.note * 1.4;
  const hasBracket = idea === "span" || idea === "density";
  const step = sizes.note * 1.18;
  const tall = step + large + lines.length * step;
  const middle = (ladder.top + ladder.bottom) / 2;
  const start = Math.min(Math.max(sizes.note, middle - tall / 2), plan.height - tall);
  const textX = x + (hasBracket ? sizes.note * 1.5 : 0);
  return (
    <g>
      {hasBracket && (
        <Bracket ladder={ladder} plan={plan} x={x} sizes={sizes} hasOctaves={idea === "density"} />
      )}
      <g className="pair-figure">
        <text className="pair-name" x={textX} y={start + sizes.note} fontSize={sizes.note}>
          {name}
        </text>
        <text
          className="pair-number loud"
          x={textX}
          y={start + step + large * 0.82}
          fontSize={large}
        >
          {figure}
        </text>
        {lines.map((line, index) => (
          <text
            key={line}
            className="pair-unit"
            x={textX}
            y={start + step + large + (index + 0.75) * step}
            fontSize={sizes.note}
          >
            {line}
          </text>
        ))}
        {idea === "weight" && (
          <PlayerMarks ladder={ladder} x={textX} y={start + tall + step * 0.5} size={sizes.note} />
        )}
      </g>
    </g>
  );
}

/** From the lowest note to the highest; with a tick at every octave below the top. */
function Bracket(props: {
  readonly ladder: PairLadder;
  readonly plan: PairPlan;
  readonly x: number;
  readonly sizes: PairSizes;
  readonly hasOctaves: boolean;
}) {
  const { ladder, plan, x, sizes, hasOctaves } = props;
  const foot = sizes.note * 0.6;
  const octave = 12 * plan.perSemitone;
  const ticks = hasOctaves ? Math.floor((ladder.bottom - ladder.top - 1) / octave) : 0;
  const marks = Array.from({ length: ticks }, (_, at) => {
    return `M${x},${ladder.top + (at + 1) * octave}h${foot * 0.8}`;
  });
  return (
    <path
      className="pair-bracket"
      d={`M${x - foot},${ladder.top}H${x}V${ladder.bottom}H${x - foot}${marks.join("")}`}
    />
  );
}

const marksARow = 5;

/** One mark a player, section under section: weight at a glance. */
function PlayerMarks(props: {
  readonly ladder: PairLadder;
  readonly x: number;
  readonly y: number;
  readonly size: number;
}) {
  const { ladder, x, y, size } = props;
  const sections = [...new Set(ladder.tokens.map((token) => token.section))];
  return (
    <g>
      {sections.map((section, row) => {
        const count = ladder.tokens
          .filter((token) => token.section === section)
          .reduce((sum, token) => sum + token.players.length, 0);
        return Array.from({ length: Math.min(count, 2 * marksARow) }, (_, at) => (
          <SectionMark
            key={`${section} ${at}`}
            section={section}
            x={x + size * (0.5 + at * 1.15)}
            y={y + row * size * 1.15}
            r={size * 0.36}
          />
        ));
      })}
    </g>
  );
}
