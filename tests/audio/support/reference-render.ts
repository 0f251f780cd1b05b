import type { Db, Seconds } from "../../../src/base/index.ts";
import { NoteMaker, planVoicing, renderPlan } from "../../../src/audio/index.ts";
import { fiveHorns } from "./band.ts";
import { standInTimbre } from "./stand-in-timbre.ts";

/** How far two engines may differ: their sines and powers differ in the last bits only. */
export const ENGINE_TOLERANCE = 1e-6;

/** Every 3001st sample from 3000 on of the left channel of `referenceRender`, as Node gives it. */
export const REFERENCE_SAMPLES: readonly number[] = [
  0.013112345710396767, -0.027009738609194756, -0.02771260216832161, -0.020484302192926407,
  -0.05013609677553177, 0.016617804765701294, 0.05598560720682144, 0.03749037906527519,
  -0.06336075812578201, 0.10529308766126633, -0.002613635268062353, -0.10203611850738525,
  -0.14657175540924072, -0.20138244330883026, 0.4805247485637665, -0.3290615379810333,
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
