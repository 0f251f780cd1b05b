import { quantity, type Semitones } from "../base/index.ts";
import type { Instrument, InstrumentId, Register, SoundingRange } from "./band-types.ts";
import { instrumentTable, type InstrumentRow } from "./instrument-table.ts";
import { noteNumber } from "./note-number.ts";
import { registerTable, type RegisterRow } from "./register-table.ts";

function soundingRange(
  written: readonly [string, string],
  [, chromatic, octaves]: InstrumentRow["transpose"],
): SoundingRange {
  const shift = chromatic + 12 * octaves;
  return {
    low: quantity(noteNumber(written[0]) + shift),
    high: quantity(noteNumber(written[1]) + shift),
  };
}

function registerFrom(row: RegisterRow, transpose: InstrumentRow["transpose"]): Register {
  return Object.freeze({
    ...soundingRange(row.written, transpose),
    label: row.label,
    strength: row.strength,
  });
}

function instrumentFrom(row: InstrumentRow): Instrument {
  const { transpose, written, ...rest } = row;
  const [diatonic, chromatic, octaveChange] = transpose;
  return Object.freeze({
    ...rest,
    transposition: Object.freeze({
      diatonic,
      chromatic: quantity<Semitones>(chromatic),
      octaveChange,
    }),
    range: Object.freeze(soundingRange(written, transpose)),
    registers: Object.freeze(registerTable[row.id].map((each) => registerFrom(each, transpose))),
  });
}

/** Every instrument, brass first, then reeds and flute, then rhythm. */
export const instruments: readonly Instrument[] = Object.freeze(
  instrumentTable.map(instrumentFrom),
);

const byId = new Map<string, Instrument>(instruments.map((each) => [each.id, each]));

/**
 * Looks an instrument up.
 * @param id - instrument id
 * @returns the instrument
 * @throws RangeError when there is no such instrument
 * @example instrumentOf("trumpet").name // "Trumpet"
 */
export function instrumentOf(id: InstrumentId): Instrument {
  const found = byId.get(id);
  if (!found) throw new RangeError(`instrument must be one of the table's, got "${id}"`);
  return found;
}
