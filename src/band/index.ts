export type * from "./band-types.ts";
export { instrumentOf, instruments } from "./instruments.ts";
export { soundingMinusWritten, toSounding, toWritten } from "./transpose.ts";
export { dynamicClass, dynamics, type DynamicClass } from "./dynamics.ts";
export { mutesOf, muteRow } from "./mutes.ts";
export type { MuteRow } from "./mute-table.ts";
export { seatIds } from "./seats.ts";
export { makePlayer, type PlayerRequest } from "./players.ts";
export { withInstrument, withLevel, withMute, withPersonalRange } from "./edit-player.ts";
export {
  addPlayer,
  freshPlayer,
  lineUpById,
  lineUps,
  removePlayer,
  replacePlayer,
  sectionOrder,
} from "./line-ups.ts";
export { MOST_PLAYERS } from "./line-up-table.ts";
export { canSound, costOfHome, costOfLevel, costOfRegister } from "./register-cost.ts";
export { balanceUnits } from "./balance-units.ts";
export { partialsOf, TIMBRE_DISTANCE_METRES } from "./timbre.ts";
export { steadyLevelOf } from "./steady-level.ts";
export { articulationOf } from "./articulation.ts";
