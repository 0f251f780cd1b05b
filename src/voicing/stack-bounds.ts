import type { Count } from "../base/index.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { chairDepth, chairScale } from "./ranking.ts";

/**
 * Bounds on what the players of a stack cost, kept up while notes are entered from the top down:
 * for k players on n notes the k smallest of each player's cheapest note, and the k − n smallest
 * costs of sharing a note. No assignment goes below.
 */
export class StackBounds {
  private readonly instance: Instance;
  private readonly playerCost: Int32Array;
  private readonly counts: Count;
  /** Cheapest note of each player among the first notes, a row for each depth. */
  private readonly cheapest: Int32Array;
  private readonly sorted: Int32Array;
  /** Notes whose costs of sharing are equal are of one kind; a candidate of each kind. */
  private readonly kindOf: Int32Array;
  private readonly examples: readonly number[];
  /** How many notes of each kind, as digits of one number, by depth. */
  private readonly kindKey: Float64Array;
  private readonly digit: Float64Array;
  private readonly sharingByKinds = new Map<number, Int32Array>();

  /**
   * @param instance - the question in numbers
   * @param playerCost - players × candidates
   */
  constructor(instance: Instance, playerCost: Int32Array) {
    const players = instance.players.length;
    this.instance = instance;
    this.playerCost = playerCost;
    this.counts = players + 1;
    this.cheapest = new Int32Array((players + 2) * players).fill(cannot, 0, players);
    this.sorted = new Int32Array(players);
    const { kindOf, examples } = kindsOfNotes(instance);
    this.kindOf = kindOf;
    this.examples = examples;
    this.kindKey = new Float64Array(players + 2);
    this.digit = Float64Array.from(examples, (_, kind) => (players + 2) ** kind);
  }

  /**
   * Takes a note into the stack, below those before it.
   * @param depth - notes before it
   * @param candidate - the note
   */
  enter(depth: Count, candidate: Count): void {
    const { cheapest, playerCost } = this;
    const { chairs } = this.instance;
    const size = this.instance.candidates.length;
    const players = this.counts - 1;
    const from = depth * players;
    const to = from + players;
    const weight = chairDepth - depth;
    for (let p = 0; p < players; p++) {
      const plain = playerCost[p * size + candidate]!;
      const before = cheapest[from + p]!;
      const here = plain === cannot ? cannot : plain * chairScale + chairs[p]! * weight;
      cheapest[to + p] = here < before ? here : before;
    }
    this.kindKey[depth + 1] = this.kindKey[depth]! + this.digit[this.kindOf[candidate]!]!;
  }

  /**
   * Writes the bounds of the stack as entered.
   * @param notes - notes of the stack
   * @param stackCost - what it costs without its players
   * @param into - where to write, by number of players from `row` on; `cannot` where impossible
   * @param row - see `into`
   */
  write(notes: Count, stackCost: Count, into: Int32Array, row: Count): void {
    const { sorted, counts } = this;
    const sharing = this.sharingFor(this.kindKey[notes]!);
    this.sortCheapest(notes);
    let sum = stackCost * chairScale;
    for (let k = 1; k < counts; k++) {
      const value = sorted[k - 1]!;
      sum = value === cannot || sum === cannot ? cannot : sum + value;
      into[row + k] = k < notes || sum === cannot ? cannot : sum + sharing[k - notes]!;
    }
  }

  private sortCheapest(depth: Count): void {
    const { sorted, cheapest } = this;
    const players = this.counts - 1;
    const from = depth * players;
    for (let p = 0; p < players; p++) {
      const value = cheapest[from + p]!;
      let at = p - 1;
      while (at >= 0 && sorted[at]! > value) {
        sorted[at + 1] = sorted[at]!;
        at--;
      }
      sorted[at + 1] = value;
    }
  }

  /** Cheapest sums for m further players on notes that have one each, by the kinds of the notes. */
  private sharingFor(key: number): Int32Array {
    const known = this.sharingByKinds.get(key);
    if (known) return known;
    const { counts, digit, instance } = this;
    const steps: number[] = [];
    this.examples.forEach((c, kind) => {
      const ofKind = Math.floor(key / digit[kind]!) % (counts + 1);
      for (let note = 0; note < ofKind; note++)
        for (let m = 1; m < counts; m++) steps.push(instance.sharedNoteCost[c * counts + m]!);
    });
    steps.sort((a, b) => a - b);
    const sums = new Int32Array(counts);
    for (let m = 1; m < counts; m++) sums[m] = sums[m - 1]! + (steps[m - 1] ?? 0) * chairScale;
    this.sharingByKinds.set(key, sums);
    return sums;
  }
}

/** Candidates whose rows of shared-note costs are equal get the same number. */
function kindsOfNotes(instance: Instance): {
  readonly kindOf: Int32Array;
  readonly examples: readonly number[];
} {
  const counts = instance.players.length + 1;
  const known = new Map<string, number>();
  const examples: number[] = [];
  const kindOf = Int32Array.from(instance.candidates, (_, c) => {
    const row = instance.sharedNoteCost.subarray(c * counts, (c + 1) * counts).join();
    const kind = known.get(row) ?? known.size;
    if (kind === known.size) {
      known.set(row, kind);
      examples.push(c);
    }
    return kind;
  });
  return { kindOf, examples };
}
