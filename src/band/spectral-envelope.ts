import { quantity, type Db, type Hertz, type SoundingMidi } from "../base/index.ts";
import type { Dynamic, InstrumentId } from "./band-types.ts";
import { dynamicPosition } from "./dynamics.ts";
import { envelopeTable, voiceTable, type EnvelopeRow, type EvenCut } from "./envelope-table.ts";
import { interpolate } from "./interpolate.ts";

/** An envelope settled for one instrument, pitch and dynamic: level by frequency. */
export interface Envelope {
  /** Log2 of the frequencies in Hz, ascending. */
  readonly places: readonly number[];
  /** One value a frequency. */
  readonly db: readonly number[];
  /** Weakening of even partials in dB at log2 of a frequency; 0 for most instruments. */
  readonly evenCut: (log2Hz: number) => number;
}

function linesAt(row: EnvelopeRow, block: readonly (readonly number[])[], dynamic: Dynamic) {
  const positions = row.dynamics.map(dynamicPosition);
  return row.hz.map((_hz, column) =>
    interpolate(
      dynamicPosition(dynamic),
      positions,
      block.map((line) => line[column] ?? 0),
      "extend",
    ),
  );
}

function valuesAt(row: EnvelopeRow, midi: number, dynamic: Dynamic): readonly number[] {
  const blocks = row.db.map((block) => linesAt(row, block, dynamic));
  const [only] = blocks;
  if (blocks.length === 1 && only) return only;
  return row.hz.map((_hz, column) =>
    interpolate(
      midi,
      row.midi,
      blocks.map((line) => line[column] ?? 0),
      "hold",
    ),
  );
}

function evenCutAt(cut: EvenCut | undefined, midi: number): Envelope["evenCut"] {
  if (!cut) return () => 0;
  const depth = interpolate(midi, cut.midi, cut.db, "hold");
  const [from, to] = cut.fadeHz.map(Math.log2);
  return (log2Hz) => interpolate(log2Hz, [from ?? 0, to ?? 1], [-depth, 0], "hold");
}

/**
 * Spectral envelope of an instrument at a pitch and a dynamic.
 * @param instrument - instrument id
 * @param sounding - sounding pitch
 * @param dynamic - dynamic on paper
 * @returns level by log frequency, and the weakening of even partials
 * @source envelope-table.ts
 */
export function envelopeOf(
  instrument: InstrumentId,
  sounding: SoundingMidi,
  dynamic: Dynamic,
): Envelope {
  const { envelope, stretch, shift } = voiceTable[instrument];
  const row: EnvelopeRow = envelopeTable[envelope];
  const pitch = sounding - shift;
  return {
    places: row.hz.map((hz) => Math.log2(hz * stretch)),
    db: valuesAt(row, pitch, dynamic),
    evenCut: evenCutAt(row.evenCut, pitch),
  };
}

/**
 * Level of a partial that an envelope gives at a frequency.
 * @param envelope - from envelopeOf
 * @param hz - frequency of the partial
 * @returns dB against the envelope's own reference
 */
export function envelopeDb(envelope: Envelope, hz: Hertz): Db {
  return quantity(interpolate(Math.log2(hz), envelope.places, envelope.db, "extend"));
}
