export type * from "./spelled-pitch-types.ts";
export type * from "./chord-types.ts";
