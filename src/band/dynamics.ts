import type { Dynamic } from "./band-types.ts";

/** Dynamics from softest to loudest. */
export const dynamics: readonly Dynamic[] = Object.freeze<Dynamic[]>([
  "ppp",
  "pp",
  "p",
  "mp",
  "mf",
  "f",
  "ff",
  "fff",
]);

/** The three dynamics that cost tables distinguish. */
export type DynamicClass = "f" | "mf" | "p";

const CLASSES: Readonly<Record<Dynamic, DynamicClass>> = Object.freeze({
  ppp: "p",
  pp: "p",
  p: "p",
  mp: "mf",
  mf: "mf",
  f: "f",
  ff: "f",
  fff: "f",
});

/**
 * Column of the cost tables that a dynamic is read from.
 * @param dynamic - dynamic on paper
 * @returns "f" for f and louder, "mf" for mf and mp, "p" for p and softer
 */
export function dynamicClass(dynamic: Dynamic): DynamicClass {
  return CLASSES[dynamic];
}
