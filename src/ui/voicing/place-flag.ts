import { wrapWords } from "../words/wrap-words.ts";
import type { PlacedToken } from "./ladder-plan.ts";
import { ladderSizes } from "./ladder-plan.ts";

/** A flag with its words, beside a token. */
export interface PlacedFlag {
  readonly lines: readonly string[];
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Where the flag's corner touches the token. */
  readonly foot: readonly [x: number, y: number];
}

const letter = 6.5;
const lineHeight = 16;
const padding = 7;
const longest = 24;

/**
 * Puts a flag beside a token where it covers the fewest other tokens.
 * @param token - whose flag
 * @param text - what it says
 * @param tokens - all tokens on the ladder
 * @param room - inner size of the ladder
 * @returns the flag
 */
export function placeFlag(
  token: PlacedToken,
  text: string,
  tokens: readonly PlacedToken[],
  room: { readonly width: number; readonly height: number },
): PlacedFlag {
  const lines = wrapWords(text, longest);
  const width = Math.max(...lines.map((line) => line.length)) * letter + 2 * padding;
  const height = lines.length * lineHeight + 8;
  const half = ladderSizes.token / 2;
  const above = token.y - half - 10 - height;
  const below = token.y + half + 10;
  const lefts = [token.x + 2, token.x + token.width - width, token.x - width / 2];
  const places = [above, below].flatMap((y) =>
    lefts.map((x) => ({ x: Math.max(0, Math.min(room.width - width, x)), y })),
  );
  const inside = places.filter(({ y }) => y >= 0 && y + height <= room.height);
  const covered = ({ x, y }: { x: number; y: number }) =>
    tokens.filter(
      (other) =>
        other !== token &&
        other.x < x + width &&
        other.x + other.width > x &&
        other.y - half < y + height &&
        other.y + half > y,
    ).length;
  const best = [...(inside.length > 0 ? inside : places)].sort(
    (a, b) => covered(a) - covered(b),
  )[0];
  const { x, y } = best ?? { x: 0, y: 0 };
  const footX = Math.max(x + 6, Math.min(x + width - 14, token.x + token.width / 2 - 8));
  return {
    lines,
    x,
    y,
    width,
    height,
    foot: [footX, y < token.y ? token.y - half - 3 : token.y + half + 3],
  };
}

/**
 * The flag's outline: a box with a small point towards its token.
 * @param flag - the flag
 * @returns path data
 */
export function flagPath({ x, y, width, height, foot: [footX, footY] }: PlacedFlag): string {
  const right = x + width;
  const bottom = y + height;
  return footY > bottom - 1
    ? `M${x},${y}H${right}V${bottom}H${footX + 9}L${footX},${footY}V${bottom}H${x}Z`
    : `M${x},${bottom}H${right}V${y}H${footX + 9}L${footX},${footY}V${y}H${x}Z`;
}
