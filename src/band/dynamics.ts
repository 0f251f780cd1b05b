import type { Ratio } from "../base/index.ts";
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

const POSITIONS: Readonly<Record<Dynamic, Ratio>> = Object.freeze({
  ppp: -0.6,
  pp: 0,
  p: 1,
  mp: 2,
  mf: 3,
  f: 4,
  ff: 5,
  fff: 5.5,
});

/**
 * Place of a dynamic on an even scale from pp (0) to ff (5), the span that recordings cover. The
 * ends ppp and fff lie a little outside it, because players have less left there than a full step.
 * @param dynamic - dynamic on paper
 * @returns -0.6 for ppp to 5.5 for fff
 * @source judgement
 */
export function dynamicPosition(dynamic: Dynamic): Ratio {
  return POSITIONS[dynamic];
}
