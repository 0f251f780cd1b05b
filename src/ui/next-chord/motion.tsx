import type { Voicing } from "../../voicing/index.ts";
import type { Player } from "../../band/index.ts";
import { LadderToken } from "../parts/still-ladder.tsx";
import type { StillRung } from "../parts/still-ladder-plan.ts";
import { SectionMark } from "../parts/section-mark.tsx";
import type { Namer } from "../words/pitch-names.ts";
import { withSigns } from "../words/signs.ts";
import { motionPlan, stepText, type MotionPlan, type Thread } from "./motion-plan.ts";

const nobody: ReadonlySet<string> = new Set();

/** One of the two voicings. */
export interface MotionSide {
  readonly voicing: Voicing;
  readonly nameOf: Namer;
  readonly lead: number;
  readonly isSounding: boolean;
}

/** Two ladders, each player's step led from one to the other. */
export function Motion(props: {
  readonly before: MotionSide;
  readonly after: MotionSide;
  readonly players: readonly Player[];
  readonly awkward: ReadonlySet<string>;
  readonly width: number;
  /** Height there is; 0 where the page grows with it. */
  readonly room: number;
  readonly label: string;
}) {
  const { before, after, players, awkward, width, room, label } = props;
  const plan = motionPlan(before.voicing, after.voicing, players, width, room);
  return (
    <svg
      className="motion"
      width={width}
      height={plan.height}
      viewBox={`0 0 ${width} ${plan.height}`}
      role="img"
      aria-label={label}
    >
      <Side plan={plan} side={before} isRight={false} width={width} />
      <Side plan={plan} side={after} isRight width={width} />
      {plan.threads.map((thread) => (
        <Step
          key={`${thread.section} ${thread.from ?? "rest"} ${thread.to ?? "rest"}`}
          thread={thread}
          plan={plan}
          isAwkward={thread.players.some(({ id }) => awkward.has(id))}
        />
      ))}
    </svg>
  );
}

/** One ladder, its names on the outer side. */
function Side(props: {
  readonly plan: MotionPlan;
  readonly side: MotionSide;
  readonly isRight: boolean;
  readonly width: number;
}) {
  const { plan, side, isRight, width } = props;
  const ladder = isRight ? plan.right : plan.left;
  const shift = isRight ? plan.rightX : 0;
  const look = side.isSounding ? "motion-side motion-sounding" : "motion-side";
  return (
    <g className={look}>
      <g transform={`translate(${shift} 0)`}>
        {plan.hasTokens &&
          ladder.rungs.map((rung) => (
            <Rung
              key={rung.pitch}
              rung={rung}
              from={ladder.from}
              to={ladder.to}
              isLead={rung.pitch === side.lead}
            />
          ))}
        {plan.hasTokens &&
          ladder.tokens.map((token) => (
            <LadderToken key={`${token.section} ${token.pitch}`} token={token} framed={nobody} />
          ))}
      </g>
      {ladder.rungs.map((rung) => (
        <Name key={rung.pitch} rung={rung} nameOf={side.nameOf} isRight={isRight} width={width} />
      ))}
    </g>
  );
}

function Rung(props: {
  readonly rung: StillRung;
  readonly from: number;
  readonly to: number;
  readonly isLead: boolean;
}) {
  const { rung, from, to, isLead } = props;
  return (
    <g className={isLead ? "still-rung still-lead" : "still-rung"}>
      <line className="under" x1={from} x2={to} y1={rung.y} y2={rung.y} />
      {rung.over.map(([start, end]) => (
        <line key={start} className="over" x1={start} x2={end} y1={rung.y} y2={rung.y} />
      ))}
    </g>
  );
}

function Name(props: {
  readonly rung: StillRung;
  readonly nameOf: Namer;
  readonly isRight: boolean;
  readonly width: number;
}) {
  const { rung, nameOf, isRight, width } = props;
  const { degree, name } = nameOf(rung.pitch);
  const [degreeX, noteX] = isRight ? [width - 22, width - 30] : [22, 28];
  return (
    <>
      <text
        className="loud still-degree"
        x={degreeX}
        y={rung.labelY + 5}
        textAnchor={isRight ? "start" : "end"}
      >
        {withSigns(degree)}
      </text>
      <text
        className="still-note"
        x={noteX}
        y={rung.labelY + 4}
        textAnchor={isRight ? "end" : "start"}
      >
        {withSigns(name)}
      </text>
    </>
  );
}

/** A step: from the left ladder to its name, from there to the right ladder. */
function Step(props: {
  readonly thread: Thread;
  readonly plan: MotionPlan;
  readonly isAwkward: boolean;
}) {
  const { thread, plan, isAwkward } = props;
  const { section, from, to, fromY, toY, labelY, label } = thread;
  const [start, end] = plan.gap;
  const middle = (start + end) / 2;
  const half = Math.min(plan.labelWidth, end - start - 40) / 2;
  const kind = from === to ? "motion-held" : "motion-moved";
  return (
    <g className={`motion-step ${kind} motion-${section}`}>
      {fromY !== null && <path d={curve(start, fromY, middle - half, labelY)} />}
      {toY !== null && <path d={curve(middle + half, labelY, end, toY)} />}
      <SectionMark section={section} x={middle - half + 12} y={labelY} r={4.6} />
      <text x={middle - half + 22} y={labelY + 4}>
        {label}
      </text>
      <text className="motion-by" x={middle + half - 6} y={labelY + 4} textAnchor="end">
        {isAwkward ? "! " : ""}
        {stepText(from, to)}
      </text>
    </g>
  );
}

function curve(x1: number, y1: number, x2: number, y2: number): string {
  const bend = (x2 - x1) / 2;
  return `M${x1},${y1}C${x1 + bend},${y1} ${x2 - bend},${y2} ${x2},${y2}`;
}
