export type * from "./voicing-types.ts";
export { stackOf } from "./stack.ts";
export * from "./techniques/index.ts";
