export type * from "./inquiry.ts";
