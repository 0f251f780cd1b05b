import type { Player } from "../../band/index.ts";
import type { Voicing } from "../../voicing/index.ts";
import type { Namer } from "../words/pitch-names.ts";
import { spoken, withSigns } from "../words/signs.ts";
import {
  stillLadderPlan,
  stillSizes,
  type PitchScale,
  type StillToken,
} from "./still-ladder-plan.ts";
import { outlineOf } from "./token-outline.ts";
import "./still-ladder.css";

/** A ladder to look at: notes as threads, the players of a section on a note as one token. */
export function StillLadder(props: {
  readonly name: string;
  readonly voicing: Voicing;
  readonly players: readonly Player[];
  readonly nameOf: Namer;
  readonly lead: number;
  readonly scale: PitchScale;
  readonly width: number;
  /** Players to frame. */
  readonly framed: ReadonlySet<string>;
}) {
  const { name, voicing, players, nameOf, lead, scale, width, framed } = props;
  const plan = stillLadderPlan(voicing, players, scale, width);
  const notes = plan.rungs.map(({ pitch }) => spoken(nameOf(pitch).name)).reverse();
  return (
    <svg
      className="still"
      width={width}
      height={plan.height}
      viewBox={`0 0 ${width} ${plan.height}`}
      role="img"
      aria-label={`Ladder of ${name}: ${notes.join(", ")}.`}
    >
      {plan.rungs.map(({ pitch, y, labelY, over }) => (
        <g key={pitch} className={pitch === lead ? "still-rung still-lead" : "still-rung"}>
          <line className="under" x1={plan.from} x2={plan.to} y1={y} y2={y} />
          {over.map(([from, to]) => (
            <line key={from} className="over" x1={from} x2={to} y1={y} y2={y} />
          ))}
          <text className="loud still-degree" x={22} y={labelY + 5} textAnchor="end">
            {withSigns(nameOf(pitch).degree)}
          </text>
          <text className="still-note" x={28} y={labelY + 4}>
            {withSigns(nameOf(pitch).name)}
          </text>
        </g>
      ))}
      {plan.tokens.map((token) => (
        <LadderToken key={`${token.section} ${token.pitch}`} token={token} framed={framed} />
      ))}
    </svg>
  );
}

/** The players of a section on a note; framed when one of them is to be. */
export function LadderToken(props: {
  readonly token: StillToken;
  readonly framed: ReadonlySet<string>;
}) {
  const { token, framed } = props;
  const { section, players, x, y, width, label } = token;
  const isFramed = players.some(({ id }) => framed.has(id));
  const look = isFramed ? " still-framed" : "";
  return (
    <g
      className={`still-token token-${section}${look}`}
      transform={`translate(${x} ${y - stillSizes.token / 2})`}
    >
      <title>{players.map((player) => player.name).join(", ")}</title>
      {isFramed && (
        <rect
          className="still-frame"
          x={-2.5}
          y={-2.5}
          width={width + 5}
          height={stillSizes.token + 5}
        />
      )}
      <path d={outlineOf(section, width, stillSizes.token)} />
      <text
        x={width / 2}
        y={stillSizes.token / 2 + 4}
        textAnchor="middle"
        fontSize={stillSizes.type}
      >
        {label}
      </text>
    </g>
  );
}
