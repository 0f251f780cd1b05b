export type * from "./metric.ts";
export { measureAll, metrics, type Reading } from "./registry.ts";
export { weightByThird, type WeightByThird } from "./weight-by-third.ts";
export { countText, intervalText, numberText, percentText } from "./number-text.ts";
export { coveredPlayers, type CoveredPlayer } from "./covered-players.ts";
