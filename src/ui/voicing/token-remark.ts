import { instrumentOf, type Player } from "../../band/index.ts";
import type { CoveredPlayer } from "../../metrics/index.ts";
import type { BrokenRule } from "../../voicing/index.ts";
import { listed } from "../words/counts.ts";
import { withSigns } from "../words/signs.ts";

/** What is to be said at a token, if anything. */
export interface TokenRemark {
  readonly kind: "broken" | "covered" | "register";
  readonly text: string;
}

/**
 * What a token's flag says: the rules it breaks, else who buries the player, else a register that is hard or weak.
 * @param player - whose token
 * @param pitch - sounding MIDI note number
 * @param broken - all rules that the voicing breaks
 * @param covered - players whom a listener does not hear, with who is in the way
 * @returns the remark, or null when there is nothing to say
 */
export function tokenRemark(
  player: Player,
  pitch: number,
  broken: readonly BrokenRule[],
  covered: readonly CoveredPlayer[] = [],
): TokenRemark | null {
  const own = broken.filter((rule) => rule.playerIds.includes(player.id));
  if (own.length > 0) {
    return { kind: "broken", text: withSigns(own.map((rule) => rule.text).join("; ")) };
  }
  const cover = covered.find((each) => each.playerId === player.id);
  if (cover !== undefined) {
    const by = cover.by.map((each) => each.abbreviation);
    return {
      kind: "covered",
      text: by.length === 0 ? "not heard" : `not heard, buried by ${listed(by)}`,
    };
  }
  const register = instrumentOf(player.instrument).registers.find(
    ({ low, high }) => pitch >= low && pitch <= high,
  );
  if (register === undefined || register.strength === "even" || register.strength === "strong")
    return null;
  return { kind: "register", text: register.label };
}
