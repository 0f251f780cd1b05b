import type { KeyboardEvent, PointerEvent } from "react";
import type { SectionId } from "../../band/index.ts";
import { ladderSizes, type PlacedToken } from "./ladder-plan.ts";
import type { TokenRemark } from "./token-remark.ts";

/** A token's outline: trumpets slant, trombones are square, saxes are round. */
function tokenPath(section: SectionId, width: number): string {
  const height = ladderSizes.token;
  const slant = Math.min(6.7, width * 0.16);
  const round = Math.min(height / 2, width / 2);
  switch (section) {
    case "trumpets":
      return `M${slant},0H${width - slant}L${width},${height}H0Z`;
    case "saxes":
      return `M${round},0H${width - round}A${round},${height / 2} 0 0 1 ${width - round},${height}H${round}A${round},${height / 2} 0 0 1 ${round},0Z`;
    default:
      return `M0,0H${width}V${height}H0Z`;
  }
}

/** What a token needs to know beside its place. */
export interface TokenLook {
  readonly isChosen: boolean;
  readonly isStop: boolean;
  readonly isFixed: boolean;
  readonly isPointedAt: boolean;
  readonly isDragged: boolean;
  /** Whether the player changes places with the next one chosen. */
  readonly isSwapping: boolean;
  readonly remark: TokenRemark | null;
  /** Whether a listener cannot hear the player out of the whole. */
  readonly isCovered: boolean;
  /** The whole token in words. */
  readonly spoken: string;
}

/** A player on the ladder: takes the focus, the arrow keys and the finger. */
export function Token(props: {
  readonly token: PlacedToken;
  readonly look: TokenLook;
  readonly onFocus: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onPointerDown: (event: PointerEvent<SVGGElement>) => void;
}) {
  const { token, look, onFocus, onKeyDown, onPointerDown } = props;
  const { player, pitch, x, y, width, label } = token;
  const half = ladderSizes.token / 2;
  const state = [
    pitch === null ? "token-resting" : "",
    look.isChosen ? "token-chosen" : "",
    look.isPointedAt ? "token-pointed" : "",
    look.isDragged ? "token-dragged" : "",
    look.isSwapping ? "token-swapping" : "",
  ];
  return (
    <g
      className={["token", `token-${player.section}`, ...state].filter(Boolean).join(" ")}
      style={{ transform: `translate(${x}px, ${y - half}px)` }}
      role="button"
      tabIndex={look.isStop ? 0 : -1}
      aria-label={look.spoken}
      data-player={player.id}
      onFocus={onFocus}
      onKeyDown={onKeyDown}
      onPointerDown={onPointerDown}
    >
      <rect className="token-reach" x={0} y={-4} width={width} height={ladderSizes.token + 8} />
      <path d={tokenPath(player.section, width)} />
      {look.isCovered && (
        <path className="token-hatch" d={tokenPath(player.section, width)} fill="url(#covered)" />
      )}
      <text
        className={look.isCovered ? "token-word-covered" : undefined}
        x={width / 2}
        y={16.5}
        textAnchor="middle"
      >
        {label}
      </text>
      {look.isFixed && (
        <path
          className="token-fixed"
          d={`M3,-2.5H-2.5V${ladderSizes.token + 2.5}H3M${width - 3},-2.5H${width + 2.5}V${ladderSizes.token + 2.5}H${width - 3}`}
        />
      )}
      {look.remark !== null && !look.isChosen && (
        <path
          className={look.remark.kind === "broken" ? "token-flag" : "token-flag token-flag-light"}
          d={`M${width - 8},-5h9v7h-5l-4,3z`}
        />
      )}
    </g>
  );
}
