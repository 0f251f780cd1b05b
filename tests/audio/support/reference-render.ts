import type { Db, Seconds } from "../../../src/base/index.ts";
import { NoteMaker, planVoicing, renderPlan } from "../../../src/audio/index.ts";
import { fiveHorns } from "./band.ts";
import { standInTimbre } from "./stand-in-timbre.ts";

/** How far two engines may differ: their sines and powers differ in the last bits only. */
export const ENGINE_TOLERANCE = 1e-6;

/** Every 3001st sample from 3000 on of the left channel of `referenceRender`, as Node gives it. */
export const REFERENCE_SAMPLES: readonly number[] = [
  -0.04320937767624855, -0.011364935897290707, 0.06887783110141754, 0.04519924148917198,
  -0.052339911460876465, 0.008338244631886482, -0.03386835753917694, 0.10149405151605606,
  -0.18641509115695953, 0.07005161046981812, -0.009033464826643467, 0.12316606938838959,
  0.11950702965259552, 0.18248428404331207, 0.07428649067878723, -0.10942821204662323,
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
