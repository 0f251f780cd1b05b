import type { Count } from "../base/index.ts";
import { cannot } from "./instance-types.ts";

/**
 * Least cost of several groups together, by how many sound in all.
 * @param groups - for each group its least cost by how many of it sound, `cannot` where impossible
 * @param most - how many sound at most
 * @returns most + 1 costs, `cannot` where impossible
 */
export function leastTogether(groups: readonly Int32Array[], most: Count): Int32Array {
  const none = new Int32Array(most + 1).fill(cannot).fill(0, 0, 1);
  return groups.reduce((sum, group) => addGroup(sum, group), none);
}

function addGroup(sum: Int32Array, group: Int32Array): Int32Array<ArrayBuffer> {
  const total = new Int32Array(sum.length);
  for (let k = 0; k < sum.length; k++) {
    let least = cannot;
    for (let m = 0; m <= k && m < group.length; m++) {
      const here = group[m]!;
      const rest = sum[k - m]!;
      if (here !== cannot && rest !== cannot && here + rest < least) least = here + rest;
    }
    total[k] = least;
  }
  return total;
}
