import { soundingMidi, type Count, type SoundingMidi } from "../../base/index.ts";
import { canSound, type Player } from "../../band/index.ts";
import type { Voicing } from "../voicing-types.ts";

/**
 * Twice the distance from the middle of a player's home, so that it is a whole number.
 * @param player - the player
 * @param sounding - the pitch
 * @returns half semitones, 0 or more
 */
export function distanceFromHome(player: Player, sounding: SoundingMidi): Count {
  return Math.abs(2 * sounding - player.home.low - player.home.high);
}

/**
 * Unison: everyone who reaches the melody note plays it, the others rest.
 * @param players - who may play
 * @param lead - melody note, sounding
 * @returns the voicing, in the order of `players`; empty when nobody reaches the note
 */
export function unisonLine(players: readonly Player[], lead: SoundingMidi): Voicing {
  return {
    placements: players
      .filter((player) => canSound(player, lead))
      .map((player) => ({ player, sounding: lead })),
  };
}

/** The melody note and its octaves below that a player reaches, the highest first. */
function octavesWithin(player: Player, lead: SoundingMidi): readonly SoundingMidi[] {
  const octaves: SoundingMidi[] = [];
  for (let pitch = lead as number; pitch >= 0; pitch -= 12)
    if (canSound(player, pitch as SoundingMidi)) octaves.push(soundingMidi(pitch));
  return octaves;
}

function nearestHome(player: Player, octaves: readonly SoundingMidi[]): SoundingMidi | undefined {
  return [...octaves].sort((a, b) => distanceFromHome(player, a) - distanceFromHome(player, b))[0];
}

/**
 * Octaves: everyone plays the melody in the octave that lies best, at the melody's own pitch or
 * below. The player at home nearest to it takes the melody note itself when nobody else does.
 * @param players - who may play
 * @param lead - melody note, sounding
 * @returns the voicing, in the order of `players`; empty when nobody reaches the melody note
 */
export function octavesLine(players: readonly Player[], lead: SoundingMidi): Voicing {
  const able = players.filter((player) => canSound(player, lead));
  const [leader] = [...able].sort((a, b) => distanceFromHome(a, lead) - distanceFromHome(b, lead));
  if (!leader) return { placements: [] };
  const placements = players.flatMap((player) => {
    const best = nearestHome(player, octavesWithin(player, lead));
    return best === undefined ? [] : [{ player, sounding: best }];
  });
  const isLed = placements.some(({ sounding }) => sounding === lead);
  return {
    placements: isLed
      ? placements
      : placements.map((one) => (one.player === leader ? { ...one, sounding: lead } : one)),
  };
}
