import type { Count, Ratio } from "../base/index.ts";
import { levelStep } from "./slope-rows.ts";

/** Bits of a 32-bit float kept: sign, exponent and the first 7 of the fraction. */
const DROPPED_BITS = 16;

/** Finds the level step of a power without a logarithm, from the leading bits of the number. */
export type StepOfPower = (power: Ratio) => Count;

/**
 * Builds the look-up.
 * @returns function from power (0 or more) to level step, right within 0.03 dB at the borders
 */
export function powerSteps(): StepOfPower {
  const float = new Float32Array(1);
  const bits = new Uint32Array(float.buffer);
  const steps = Uint8Array.from({ length: 1 << (32 - DROPPED_BITS) }, (_, leading) => {
    bits[0] = (leading << DROPPED_BITS) | (1 << (DROPPED_BITS - 1));
    const power = float[0]!;
    return power > 0 ? levelStep(10 * Math.log10(power)) : 0;
  });
  return (power) => {
    float[0] = power;
    return steps[bits[0]! >>> DROPPED_BITS]!;
  };
}
