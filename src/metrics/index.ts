export type * from "./metric.ts";
