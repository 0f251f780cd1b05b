import type { LadderPlan } from "./ladder-plan.ts";

/** Where a note stands on the staff, CSS pixels from the ladder room's corner. */
export interface ThreadEnd {
  readonly pitch: number;
  readonly x: number;
  readonly y: number;
}

/** Room in which a thread turns from its rung's height to its note's, CSS pixels. */
const turn = 36;

/** Threads from the rungs to their notes on the staff. */
export function Threads(props: {
  readonly plan: LadderPlan;
  readonly ends: readonly ThreadEnd[];
  readonly width: number;
  readonly lead: number;
}) {
  const { plan, ends, width, lead } = props;
  const start = plan.right + 8;
  return (
    <svg className="threads" width={width} height={plan.height} aria-hidden="true">
      {plan.rungs.map((rung) => {
        const end = ends.find((candidate) => candidate.pitch === rung.pitch);
        if (end === undefined) return null;
        return (
          <path
            key={rung.pitch}
            className={rung.pitch === lead ? "thread thread-lead" : "thread"}
            d={`M${start},${rung.y}C${start + turn * 0.7},${rung.y} ${start + turn * 0.3},${end.y} ${start + turn},${end.y}H${end.x - 7}`}
          />
        );
      })}
    </svg>
  );
}
