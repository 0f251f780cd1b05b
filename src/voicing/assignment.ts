import { AssignmentNetwork, far } from "./assignment-network.ts";
import type { Assigner, StackToFill } from "./assignment-types.ts";
import { CheapestChain } from "./cheapest-chain.ts";
import { FirstInOrder } from "./first-in-order.ts";
import { cannot, type Instance } from "./instance-types.ts";

/**
 * Makes an assigner for an instance. Players are added one by one, each by the cheapest chain of
 * moves; since the costs of sharing rise (are convex) and sections are nested in the whole, that
 * is the cheapest way for every number of players in one run.
 * @param instance - the question in numbers
 * @param playerCost - players × candidates
 * @returns the assigner; it reuses its memory, so read `values` before solving again
 * @source R. K. Ahuja, T. L. Magnanti, J. B. Orlin, Network Flows (1993), chapters 9 and 14
 */
export function createAssigner(instance: Instance, playerCost: Int32Array): Assigner {
  const network = new AssignmentNetwork(instance, playerCost);
  const chain = new CheapestChain(network);
  const order = new FirstInOrder(network);
  const values = new Int32Array(instance.players.length + 1);

  /** Adds players up to a number, telling of each that is complete. */
  function run(asked: StackToFill, most: number, onComplete?: (players: number) => void): void {
    values.fill(cannot);
    if (!network.load(asked)) return;
    let total = 0;
    for (let k = 1; k <= most; k++) {
      const step = chain.add();
      if (step === far) return;
      total += step;
      if (k < asked.notes || !network.isComplete(total)) continue;
      values[k] = total + network.rewards;
      onComplete?.(k);
    }
  }

  return {
    values,
    solve: (asked, most) => run(asked, most),
    placesFor(asked, wanted) {
      const found = new Map<number, Int32Array>();
      run(asked, Math.max(0, ...wanted), (players) => {
        if (!wanted.includes(players)) return;
        order.settle();
        found.set(players, network.place.slice());
      });
      return found;
    },
  };
}
