import { useRef } from "react";
import { selectPlayer } from "../actions/edit.ts";
import { coveredPlayers, type CoveredPlayer } from "../../metrics/index.ts";
import type { Answer, InView } from "../state/page-state.ts";
import { page, usePage } from "../store.ts";
import { withSigns } from "../words/signs.ts";
import { ladderSizes, type LadderPlan, type PlacedToken } from "./ladder-plan.ts";
import { flagPath, placeFlag } from "./place-flag.ts";
import { RungLabels, Rungs } from "./rungs.tsx";
import { Token } from "./token.tsx";
import { keyOnToken, useTokenDrag, useTouchOnTokens } from "./token-moves.ts";
import { tokenRemark } from "./token-remark.ts";
import { tokenSpoken } from "./token-spoken.ts";
import { Zones } from "./zones.tsx";

/** Players as tokens on a vertical pitch scale, with registers behind them; rungs lead. */
export function Ladder(props: {
  readonly answer: Answer;
  readonly view: InView;
  readonly plan: LadderPlan;
  readonly width: number;
  readonly left: number;
}) {
  const { answer, view, plan, width, left } = props;
  const { lead } = answer.asked.question;
  const pointed = usePage((state) => state.pointed);
  return (
    <svg
      className="ladder"
      viewBox={`0 0 ${width} ${plan.height}`}
      width={width}
      height={plan.height}
      role="group"
      aria-label={`Ladder: ${view.report.cell.players} players on ${view.report.cell.notes} notes. Arrow keys move a player up and down, and go from player to player.`}
      data-testid="ladder"
    >
      <Zones plan={plan} />
      <Rungs plan={plan} lead={lead} pointed={pointed?.notes ?? []} />
      <RungLabels plan={plan} nameOf={answer.asked.nameOf} lead={lead} left={left} />
      <text className="shelf-word" x={left - 8} y={plan.shelfY + 4} textAnchor="end">
        {plan.tokens.some((token) => token.pitch === null) ? "resting" : ""}
      </text>
      <Ghost plan={plan} />
      <Tokens answer={answer} view={view} plan={plan} width={width} />
    </svg>
  );
}

/** Where the player moved last came from. */
function Ghost({ plan }: { readonly plan: LadderPlan }) {
  const made = usePage((state) => state.history.present.made);
  const isDragging = usePage((state) => state.drag !== null);
  const moved = made?.by === "hand" ? made.moved[made.moved.length - 1] : undefined;
  const token = plan.tokens.find((candidate) => candidate.player.id === moved);
  const from = moved === undefined ? undefined : made?.from[moved];
  if (token === undefined || from === undefined || token.pitch === null || isDragging) return null;
  if (from === token.pitch) return null;
  const y = plan.yOf(from);
  const half = ladderSizes.token / 2;
  const sign = token.y < y ? -1 : 1;
  const x = token.x + token.width * 0.35;
  const tip = token.y - sign * (half + 5);
  const isFar = Math.abs(token.y - y) > 2 * half + 8;
  return (
    <g className="ghost" aria-hidden="true">
      <rect x={token.x} y={y - half} width={token.width} height={ladderSizes.token} />
      {isFar && (
        <path d={`M${x},${y + sign * half}V${tip}m-4,${-sign * 6}l4,${sign * 6}l4,${-sign * 6}`} />
      )}
    </g>
  );
}

/** All tokens: one tab stop, arrows inside. */
function Tokens(props: {
  readonly answer: Answer;
  readonly view: InView;
  readonly plan: LadderPlan;
  readonly width: number;
}) {
  const { answer, view, plan, width } = props;
  const { question } = answer.asked;
  const chosen = usePage((state) => state.selectedPlayer);
  const pointed = usePage((state) => state.pointed);
  const locks = usePage((state) => state.history.present.inquiry.locks);
  const swapping = usePage((state) => state.swapping);
  const group = useRef<SVGGElement>(null);
  const { dragged, target, onPointerDown } = useTokenDrag(plan);
  useTouchOnTokens(group);
  const order = question.players.map((player) => player.id);
  const stop = chosen !== null && order.includes(chosen) ? chosen : order[0];
  const focus = (id: string | undefined) =>
    group.current?.querySelector<SVGGElement>(`[data-player="${id ?? ""}"]`)?.focus();
  const sorted = inOrder(plan.tokens, order);
  const covered = coveredPlayers(view.voicing, question.dynamic);
  const flagged = sorted.find((token) => token.player.id === chosen);
  return (
    <g className="tokens" ref={group}>
      {sorted.map((token, index) => {
        const { id } = token.player;
        const { broken } = view.report;
        const remark =
          token.pitch === null ? null : tokenRemark(token.player, token.pitch, broken, covered);
        return (
          <Token
            key={id}
            token={token}
            look={{
              isChosen: id === chosen,
              isStop: id === stop,
              isFixed: locks.some((lock) => lock.playerId === id),
              isPointedAt: id === target || (pointed?.playerIds.includes(id) ?? false),
              isSwapping: id === swapping,
              isDragged: id === dragged,
              remark,
              isCovered: covered.some(({ playerId }) => playerId === id),
              spoken: tokenSpoken(token, answer.asked.nameOf, remark, locks),
            }}
            onFocus={() => selectPlayer(id)}
            onPointerDown={(event) => onPointerDown(event, token)}
            onKeyDown={(event) =>
              keyOnToken(event, id, (by) =>
                focus(order[(index + by + order.length) % order.length]),
              )
            }
          />
        );
      })}
      {flagged !== undefined && dragged === null && (
        <TokenFlag token={flagged} plan={plan} view={view} covered={covered} width={width} />
      )}
    </g>
  );
}

function inOrder(tokens: readonly PlacedToken[], order: readonly string[]): readonly PlacedToken[] {
  return [...tokens].sort((a, b) => order.indexOf(a.player.id) - order.indexOf(b.player.id));
}

/** The one flag that is open: at the chosen token, if there is something to say. */
function TokenFlag(props: {
  readonly token: PlacedToken;
  readonly plan: LadderPlan;
  readonly view: InView;
  readonly covered: readonly CoveredPlayer[];
  readonly width: number;
}) {
  const { token, plan, view, covered, width } = props;
  if (token.pitch === null) return null;
  const remark = tokenRemark(token.player, token.pitch, view.report.broken, covered);
  if (remark === null) return null;
  const name = page.getState().answer?.asked.nameOf(token.pitch).name ?? "";
  const text = remark.kind === "register" ? `${withSigns(name)}: ${remark.text}` : remark.text;
  const flag = placeFlag(token, text, plan.tokens, { width, height: plan.height });
  return (
    <g className={remark.kind === "broken" ? "flag flag-broken" : "flag"} aria-hidden="true">
      <path d={flagPath(flag)} />
      {flag.lines.map((line, index) => (
        <text key={line} x={flag.x + 7} y={flag.y + 16 + 16 * index}>
          {line}
        </text>
      ))}
    </g>
  );
}
