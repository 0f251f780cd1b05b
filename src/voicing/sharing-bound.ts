import type { Count } from "../base/index.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { chairScale } from "./ranking.ts";

/**
 * Least cost of sharing notes (N1) for a number of players on a stack, some of whose notes are
 * known to have several players.
 * @param instance - the question in numbers
 * @param stack - candidate indices, highest note first
 * @param cover - players on each note at least, by position
 * @param players - how many sound
 * @returns cost · chairScale
 */
export function sharingAtLeast(
  instance: Instance,
  stack: Int32Array,
  cover: Int32Array,
  players: Count,
): Count {
  const { sharedNoteCost } = instance;
  const counts = instance.players.length + 1;
  const here = cover.slice();
  let sum = 0;
  let sounding = 0;
  for (let j = 0; j < here.length; j++) {
    for (let m = 1; m < here[j]!; m++) sum += sharedNoteCost[stack[j]! * counts + m]!;
    sounding += here[j]!;
  }
  for (; sounding < players; sounding++) {
    let cheapest = cannot;
    let at = 0;
    for (let j = 0; j < here.length; j++) {
      const step = sharedNoteCost[stack[j]! * counts + here[j]!]!;
      if (step >= cheapest) continue;
      cheapest = step;
      at = j;
    }
    sum += cheapest;
    here[at] = here[at]! + 1;
  }
  return sum * chairScale;
}
