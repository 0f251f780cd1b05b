export * from "./quantities.ts";
export * from "./result.ts";
export * from "./chance.ts";
export * from "./pitch-hertz.ts";
