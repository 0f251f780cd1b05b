import type { InstrumentId, MuteId } from "./band-types.ts";
import { muteTable, type MuteRow } from "./mute-table.ts";

const byId = new Map<string, MuteRow>(muteTable.map((each) => [each.id, each]));

/**
 * Row of a mute.
 * @param id - mute id
 * @returns its costs, its share of weight and who takes it
 * @throws RangeError when there is no such mute
 */
export function muteRow(id: MuteId): MuteRow {
  const found = byId.get(id);
  if (!found) throw new RangeError(`mute must be one of the table's, got "${id}"`);
  return found;
}

/**
 * Mutes that an instrument takes, open first.
 * @param instrument - instrument id
 * @returns mute ids in the table's order
 * @example mutesOf("alto-sax") // ["open"]
 */
export function mutesOf(instrument: InstrumentId): readonly MuteId[] {
  return muteTable.filter((each) => each.takenBy.includes(instrument)).map((each) => each.id);
}
