import { useSound } from "../actions/sound-state.ts";
import type { Namer } from "../words/pitch-names.ts";
import { withSigns } from "../words/signs.ts";
import { spreadLabels, type LadderPlan } from "./ladder-plan.ts";

/** The notes' threads across the strips: solid over what sounds them, dotted under what does not. */
export function Rungs(props: {
  readonly plan: LadderPlan;
  readonly lead: number;
  readonly pointed: readonly number[];
}) {
  const { plan, lead, pointed } = props;
  const sounding = useSound((state) => state.sounding);
  const now = plan.tokens.filter((token) => sounding.includes(token.player.id));
  return (
    <g className="rungs" aria-hidden="true">
      {plan.rungs.map((rung) => {
        const look = [
          "rung",
          rung.pitch === lead ? "rung-lead" : "",
          pointed.includes(rung.pitch) ? "rung-pointed" : "",
          now.some((token) => token.pitch === rung.pitch) ? "rung-sounding" : "",
        ].join(" ");
        return (
          <g key={rung.pitch} className={look} data-pitch={rung.pitch}>
            <line
              className="under"
              x1={plan.strips[0]?.x ?? 0}
              x2={plan.right + 8}
              y1={rung.y}
              y2={rung.y}
            />
            {rung.over.map(([from, to]) => (
              <line key={from} className="over" x1={from} x2={to} y1={rung.y} y2={rung.y} />
            ))}
          </g>
        );
      })}
    </g>
  );
}

/** Degree and name of each note, the distances between them in semitones. */
export function RungLabels(props: {
  readonly plan: LadderPlan;
  readonly nameOf: Namer;
  readonly lead: number;
  readonly left: number;
}) {
  const { plan, nameOf, lead, left } = props;
  const ys = spreadLabels(
    plan.rungs.map((rung) => rung.y),
    17,
  );
  return (
    <g className="rung-labels" aria-hidden="true">
      {plan.rungs.map((rung, index) => {
        const y = ys[index] ?? rung.y;
        const { name, degree } = nameOf(rung.pitch);
        const next = plan.rungs[index + 1];
        return (
          <g key={rung.pitch}>
            {rung.pitch === lead && (
              <text className="lead-tag" x={left - 8} y={y - 9} textAnchor="end">
                lead
              </text>
            )}
            <text className="degree loud" x={left - 38} y={y + 5.5} textAnchor="end">
              {withSigns(degree)}
            </text>
            <text className="note-name" x={left - 32} y={y + 4.5}>
              {withSigns(name)}
            </text>
            {next !== undefined && (
              <GapLabel
                from={y}
                to={ys[index + 1] ?? next.y}
                x={left - 44}
                gap={rung.pitch - next.pitch}
              />
            )}
          </g>
        );
      })}
    </g>
  );
}

/** A distance in semitones, where there is room to write it. */
function GapLabel(props: {
  readonly from: number;
  readonly to: number;
  readonly x: number;
  readonly gap: number;
}) {
  const { from, to, x, gap } = props;
  if (to - from < 36) return null;
  const middle = (from + to) / 2;
  return (
    <g className="gap">
      {middle - 8 > from + 14 && <line x1={x} x2={x} y1={from + 13} y2={middle - 9} />}
      {middle + 8 < to - 14 && <line x1={x} x2={x} y1={middle + 9} y2={to - 13} />}
      <text x={x} y={middle + 4} textAnchor="middle">
        {gap}
      </text>
    </g>
  );
}
