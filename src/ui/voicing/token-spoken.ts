import type { Lock } from "../../voicing/index.ts";
import type { Namer } from "../words/pitch-names.ts";
import { spoken } from "../words/signs.ts";
import type { PlacedToken } from "./ladder-plan.ts";
import type { TokenRemark } from "./token-remark.ts";

/**
 * A token in words, for a screen reader.
 * @param token - the token
 * @param nameOf - names pitches for this chord
 * @param remark - what its flag says
 * @param locks - players held where they are
 * @returns e.g. "Trombone 1, G4, 9 of the chord, tiring, fixed"
 */
export function tokenSpoken(
  token: PlacedToken,
  nameOf: Namer,
  remark: TokenRemark | null,
  locks: readonly Lock[],
): string {
  const { player, pitch } = token;
  const parts: string[] = [player.name];
  if (pitch === null) parts.push("resting");
  else {
    const { name, degree } = nameOf(pitch);
    parts.push(spoken(name), `${spoken(degree)} of the chord`);
  }
  if (remark !== null) parts.push(spoken(remark.text));
  if (locks.some((lock) => lock.playerId === player.id)) parts.push("fixed");
  return parts.join(", ");
}
