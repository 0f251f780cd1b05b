import type { Player } from "../../band/index.ts";
import type { Voicing } from "../../voicing/index.ts";
import type { Namer } from "../words/pitch-names.ts";
import { counted } from "../words/counts.ts";
import { withSigns } from "../words/signs.ts";

/** A player who sounds something else in another voicing. */
export interface PlayerMove {
  readonly player: Player;
  /** Sounding MIDI note number, or null for rest. */
  readonly from: number | null;
  readonly to: number | null;
}

/**
 * Who sounds something else, in the order of the line-up.
 * @param to - the voicing
 * @param from - the one it is compared with
 * @returns players on other notes, coming in or resting
 */
export function playerMoves(to: Voicing, from: Voicing): readonly PlayerMove[] {
  const before = pitchesOf(from);
  const after = pitchesOf(to);
  const players = new Map<string, Player>();
  for (const { player } of [...from.placements, ...to.placements])
    if (!players.has(player.id)) players.set(player.id, player);
  return [...players.values()]
    .map((player) => ({
      player,
      from: before.get(player.id) ?? null,
      to: after.get(player.id) ?? null,
    }))
    .filter((move) => move.from !== move.to);
}

function pitchesOf({ placements }: Voicing): ReadonlyMap<string, number> {
  return new Map(placements.map(({ player, sounding }) => [player.id, sounding]));
}

/**
 * A move in words.
 * @param move - who, from where, to where
 * @param nameFrom - names pitches of the voicing compared with
 * @param nameTo - names pitches of the voicing
 * @returns "A4 to G4, 2 semitones down", "comes in on G4", "rests"
 */
export function moveWords({ from, to }: PlayerMove, nameFrom: Namer, nameTo: Namer): string {
  if (to === null) return from === null ? "" : "rests";
  const end = withSigns(nameTo(to).name);
  if (from === null) return `comes in on ${end}`;
  const by = counted(Math.abs(to - from), "semitone");
  return `${withSigns(nameFrom(from).name)} to ${end}, ${by} ${to > from ? "up" : "down"}`;
}
