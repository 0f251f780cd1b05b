import type { Db, Seconds } from "../../../src/base/index.ts";
import { NoteMaker, planVoicing, renderPlan } from "../../../src/audio/index.ts";
import { fiveHorns } from "./band.ts";
import { standInTimbre } from "./stand-in-timbre.ts";

/** How far two engines may differ: their sines and powers differ in the last bits only. */
export const ENGINE_TOLERANCE = 1e-6;

/** Every 3001st sample from 3000 on of the left channel of `referenceRender`, as Node gives it. */
export const REFERENCE_SAMPLES: readonly number[] = [
  0.012873692438006401, -0.037213485687971115, -0.028317393735051155, -0.0059475526213645935,
  -0.0498863123357296, 0.0032726991921663284, 0.03200586512684822, 0.06791605055332184,
  -0.058645691722631454, 0.08956791460514069, -0.039186980575323105, -0.05591138079762459,
  -0.1334352195262909, -0.19608648121356964, 0.4192150831222534, -0.25969311594963074,
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
