import type { Count } from "../base/index.ts";

/** Multiplies a bound so that an index, which is smaller, can be added; a power of two, so exact. */
const indexScale = 4194304;

/**
 * Indices in order of their bounds, lowest first, equal ones as they come. Bounds may be negative:
 * a doubled lead earns a little.
 * @param count - how many, up to 4,194,304
 * @param boundOf - bound of each index, whole, at most 2^30 either way
 * @returns the indices
 * @example [...indicesByBound(3, (at) => [2, -1, 2][at] ?? 0)].join(" ") // "1 0 2"
 */
export function indicesByBound(count: Count, boundOf: (at: Count) => Count): Float64Array {
  const order = new Float64Array(count);
  for (let at = 0; at < count; at++) order[at] = boundOf(at) * indexScale + at;
  order.sort();
  for (let n = 0; n < count; n++) {
    const code = order[n] ?? 0;
    order[n] = code - Math.floor(code / indexScale) * indexScale;
  }
  return order;
}
