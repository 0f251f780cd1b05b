export type * from "./voicing-types.ts";
export { stackOf } from "./stack.ts";
