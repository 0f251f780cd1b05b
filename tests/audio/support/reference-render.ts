import type { Db, Seconds } from "../../../src/base/index.ts";
import { NoteMaker, planVoicing, renderPlan } from "../../../src/audio/index.ts";
import { fiveHorns } from "./band.ts";
import { standInTimbre } from "./stand-in-timbre.ts";

/** How far two engines may differ: their sines and powers differ in the last bits only. */
export const ENGINE_TOLERANCE = 1e-6;

/** Every 3001st sample from 3000 on of the left channel of `referenceRender`, as Node gives it. */
export const REFERENCE_SAMPLES: readonly number[] = [
  0.012908509001135826, -0.03650409355759621, -0.029819443821907043, -0.004114341456443071,
  -0.051440127193927765, 0.005105124320834875, 0.03146965801715851, 0.06730557978153229,
  -0.05816028267145157, 0.0884707123041153, -0.04024969041347504, -0.048489972949028015,
  -0.12979064881801605, -0.1928747445344925, 0.4164186418056488, -0.25423553586006165,
];

/**
 * A crescendo of five horns with drums and limiter, from a timbre that never changes. When the
 * synthesis is changed on purpose, print these samples anew and listen before and after.
 */
export function referenceRender(): readonly number[] {
  const plan = planVoicing(fiveHorns, {
    dynamic: "f",
    manner: "crescendo",
    seconds: 1 as Seconds,
    withDrums: true,
  });
  const { left } = renderPlan(plan, {
    maker: new NoteMaker({ timbre: standInTimbre }),
    gain: 12 as Db,
  });
  return REFERENCE_SAMPLES.map((_, i) => left[3000 + 3001 * i]!);
}
