export type * from "./band-types.ts";
