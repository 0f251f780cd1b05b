import type { Idea } from "../../explore/index.ts";
import { outlineOf } from "../parts/token-outline.ts";
import type { Asked } from "../state/page-state.ts";
import { withSigns } from "../words/signs.ts";
import type { PairLabel, PairLadder, PairPlan, PairRung, PairToken } from "./pair-plan.ts";
import type { PairSizes } from "./pair-sizes.ts";

/** One ladder: its threads, its tokens, its degrees and names. */
export function PairLadderMarks(props: {
  readonly ladder: PairLadder;
  readonly asked: Asked;
  readonly sizes: PairSizes;
  readonly idea: Idea;
  readonly isSounding: boolean;
  readonly lead: number;
}) {
  const { ladder, asked, sizes, idea, isSounding, lead } = props;
  const hasGhosts = idea === "span" || idea === "weight";
  return (
    <g className={isSounding ? "pair-ladder pair-sounding" : "pair-ladder"}>
      {idea === "interleaving" &&
        ladder.warps.map(({ section, x, from, to }) => (
          <line
            key={section}
            className={`pair-warp warp-${section}`}
            x1={x}
            x2={x}
            y1={from}
            y2={to}
          />
        ))}
      {ladder.rungs.map((rung) => (
        <Rung key={rung.pitch} rung={rung} ladder={ladder} isLead={rung.pitch === lead} />
      ))}
      {hasGhosts &&
        ladder.ghosts.map(({ section, x, y, width }) => (
          <path
            key={`${section} ${x} ${y}`}
            className="pair-ghost"
            transform={`translate(${x} ${y - sizes.token.height / 2})`}
            d={outlineOf(section, width, sizes.token.height)}
          />
        ))}
      {ladder.tokens.map((token) => (
        <Token key={`${token.section} ${token.pitch}`} token={token} sizes={sizes} />
      ))}
      {ladder.labels.map((label) => (
        <NoteLabel key={label.pitch} label={label} asked={asked} sizes={sizes} />
      ))}
    </g>
  );
}

/** How far a thread shows beside a token. */
const stub = 7;

/** A note's thread: over the sections that sound it, under the others. */
function Rung(props: {
  readonly rung: PairRung;
  readonly ladder: PairLadder;
  readonly isLead: boolean;
}) {
  const { rung, ladder, isLead } = props;
  const { y, over } = rung;
  return (
    <g className={isLead ? "pair-rung pair-lead" : "pair-rung"}>
      <line className="under" x1={ladder.from} x2={ladder.to} y1={y} y2={y} />
      {over.map(([from, to]) => (
        <line key={from} className="over" x1={from - stub} x2={to + stub} y1={y} y2={y} />
      ))}
    </g>
  );
}

/** Degree and name of a note. */
function NoteLabel(props: {
  readonly label: PairLabel;
  readonly asked: Asked;
  readonly sizes: PairSizes;
}) {
  const { label, asked, sizes } = props;
  const { pitch, x, y } = label;
  const { degree, name } = asked.nameOf(pitch);
  const right = x - 0.6 * sizes.note;
  return (
    <g>
      <text
        className="pair-degree loud"
        x={right - sizes.note * 2.3}
        y={y + label.degree * 0.34}
        textAnchor="end"
        fontSize={label.degree}
      >
        {withSigns(degree)}
      </text>
      <text
        className="pair-note"
        x={right - sizes.note * 1.95}
        y={y + label.note * 0.34}
        fontSize={label.note}
      >
        {withSigns(name)}
      </text>
    </g>
  );
}

function Token({ token, sizes }: { readonly token: PairToken; readonly sizes: PairSizes }) {
  const { section, x, y, width, label, players } = token;
  const { height } = sizes.token;
  return (
    <g className={`pair-token token-${section}`} transform={`translate(${x} ${y - height / 2})`}>
      <title>{players.map((player) => player.name).join(", ")}</title>
      <path d={outlineOf(section, width, height)} />
      <text
        x={width / 2}
        y={height / 2 + sizes.label * 0.35}
        textAnchor="middle"
        fontSize={sizes.label}
      >
        {label}
      </text>
    </g>
  );
}

/** The one note that moves. */
export function PairMove(props: {
  readonly move: NonNullable<PairPlan["move"]>;
  readonly sizes: PairSizes;
}) {
  const { move, sizes } = props;
  const sign = move.to > move.from ? 1 : -1;
  const end = move.to - sign * (sizes.token.height / 2 + 4);
  const head = sizes.note * 0.4;
  return (
    <path
      className="pair-move"
      d={`M${move.x},${move.from}V${end}M${move.x - head},${end - sign * head}L${move.x},${end}L${move.x + head},${end - sign * head}`}
    />
  );
}
