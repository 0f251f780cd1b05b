import { quantity, type Seconds, type SoundingMidi } from "../base/index.ts";
import { articulationTable, type ArticulationRow } from "./articulation-table.ts";
import type { Articulation, Dynamic, InstrumentId } from "./band-types.ts";
import { dynamicPosition } from "./dynamics.ts";
import { interpolate } from "./interpolate.ts";

const ANCHORS = (["pp", "mf", "f", "ff"] as const).map(dynamicPosition);
const ENDS = (["pp", "ff"] as const).map(dynamicPosition);

/** An octave lower takes 20 % longer, an octave higher as much less; never more. Judgement. */
const SLOWER_AN_OCTAVE_DOWN = 1.2;

const seconds = (milliseconds: number): Seconds => quantity(milliseconds / 1000);

function attackOf(row: ArticulationRow, midi: number, dynamic: Dynamic): Seconds {
  const middle = interpolate(dynamicPosition(dynamic), ANCHORS, row.attackMs, "hold");
  const octavesDown = Math.max(-1, Math.min(1, (row.middle - midi) / 12));
  return seconds(middle * SLOWER_AN_OCTAVE_DOWN ** octavesDown);
}

function decayOf({ decay }: ArticulationRow, midi: number): Seconds {
  if (!decay) return quantity(Infinity);
  const log = interpolate(
    midi,
    decay.map(([place]) => place),
    decay.map(([, time]) => Math.log2(time)),
    "hold",
  );
  return quantity(2 ** log);
}

/**
 * How a note begins, sways, breathes and ends, for whoever synthesises it.
 * @param instrument - instrument id
 * @param sounding - sounding pitch
 * @param dynamic - dynamic on paper
 * @returns attack, release, vibrato, noise and decay
 * @source articulation-table.ts
 */
export function articulationOf(
  instrument: InstrumentId,
  sounding: SoundingMidi,
  dynamic: Dynamic,
): Articulation {
  const row = articulationTable[instrument];
  return {
    attackSeconds: attackOf(row, sounding, dynamic),
    releaseSeconds: seconds(row.releaseMs),
    vibratoHz: quantity(row.vibratoHz),
    vibratoCents: quantity(row.vibratoCents),
    vibratoDelaySeconds: seconds(row.vibratoDelayMs),
    noiseDb: quantity(interpolate(dynamicPosition(dynamic), ENDS, row.noiseDb, "hold")),
    decaySeconds: decayOf(row, sounding),
  };
}
