import { soundingMidi } from "../../../src/base/index.ts";
import { lineUpById } from "../../../src/band/index.ts";
import type { Player } from "../../../src/band/index.ts";
import { readChord } from "../../../src/theory/index.ts";
import type { Chord } from "../../../src/theory/index.ts";
import type { Voicing } from "../../../src/voicing/index.ts";

/** The thirteen horns of the big band. */
export function bigBand(): readonly Player[] {
  const band = lineUpById("big-band");
  if (!band.ok) throw new Error(band.problem.message);
  return band.value.players;
}

/** A voicing by player id and sounding key. */
export function voicingOf(keys: Readonly<Record<string, number>>): Voicing {
  return {
    placements: bigBand()
      .filter(({ id }) => keys[id] !== undefined)
      .map((player) => ({ player, sounding: soundingMidi(keys[player.id]!) })),
  };
}

/** A small crossed voicing: three sections, five players, a wide F13. */
export const fiveHorns = voicingOf({ tpt1: 74, tbn1: 63, alto1: 69, tenor1: 57, bari: 41 });

/** A chord by its symbol. */
export function chordOf(symbol: string): Chord {
  const read = readChord(symbol);
  if (!read.ok) throw new Error(read.problem.message);
  return read.value;
}
