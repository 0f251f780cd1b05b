import { quantity, type DbSpl } from "../base/index.ts";
import type { TimbreRequest } from "./band-types.ts";
import { interpolate } from "./interpolate.ts";
import { muteCurveTable } from "./mute-curve-table.ts";
import { soundPowerTable, type SoundPowerRow } from "./sound-power-table.ts";

/** Free-field level at one metre of a source of 0 dB sound power: -10 lg(4π), rounded as usual. */
const POWER_TO_ONE_METRE = -11;

/** Registers differ most softly at pp and most loudly at ff; between them by the level reached. */
function registerOffset({ levels, registers }: SoundPowerRow, midi: number, level: number): number {
  const places = registers.map(([place]) => place);
  const at = (column: 1 | 2): number =>
    interpolate(
      midi,
      places,
      registers.map((row) => row[column]),
      "hold",
    );
  return interpolate(level, [levels.pp, levels.ff], [at(1), at(2)], "hold");
}

/**
 * Level of a steady note, all partials together, one metre away in a free field.
 * @param request - instrument, sounding pitch, dynamic, mute and trim
 * @returns dB SPL
 * @source L_p(1 m) = L_W - 11 dB (free field, no directivity); powers in sound-power-table.ts
 */
export function steadyLevelOf(request: TimbreRequest): DbSpl {
  const row = soundPowerTable[request.instrument];
  const power = row.levels[request.dynamic];
  const muted = request.mute === "open" ? 0 : muteCurveTable[request.mute].insertionDb;
  return quantity(
    power +
      registerOffset(row, request.sounding, power) +
      row.facing +
      muted +
      (request.trim ?? 0) +
      POWER_TO_ONE_METRE,
  );
}
