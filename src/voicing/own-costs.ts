import type { Count } from "../base/index.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { chairScale, rankOf } from "./ranking.ts";
import { bitsIn, type SetWord } from "./stack-sets.ts";

/** Sections up to this size are worked out exactly; larger ones by a bound. */
const largestExact = 6;

/**
 * Prices each section on its own, without what it shares with others: every note of a set has at
 * least one of the section's players, and players who share a note pay for it within the section.
 * Exact for sections up to six players, by sets of players note after note; a lower bound above.
 */
export class OwnCosts {
  private readonly instance: Instance;
  private readonly playerCost: Int32Array;
  private readonly members: readonly (readonly number[])[];
  /** Columns of a table of players: one for each set of players of an exact section. */
  private readonly columns: Count;
  /** Cost of a set of players on a note, by section, note and set. */
  private readonly onNote: readonly Int32Array[];
  /** Least cost with exactly a set of players placed, one table for each number of notes taken. */
  private readonly placed: readonly Int32Array[];
  private readonly sizes: Int32Array;
  private stack: Int32Array = new Int32Array();

  /**
   * @param instance - the question in numbers
   * @param playerCost - players × candidates
   * @param members - players of each section
   */
  constructor(instance: Instance, playerCost: Int32Array, members: readonly (readonly number[])[]) {
    const largest = Math.min(largestExact, Math.max(1, ...members.map((own) => own.length)));
    this.instance = instance;
    this.playerCost = playerCost;
    this.members = members;
    this.columns = 1 << largest;
    this.onNote = members.map(() => new Int32Array(instance.players.length * this.columns));
    this.placed = Array.from({ length: largest + 1 }, () => new Int32Array(this.columns));
    this.placed[0]!.fill(cannot).fill(0, 0, 1);
    this.sizes = Int32Array.from({ length: this.columns }, (_, set) => bitsIn(set));
  }

  /**
   * Takes on a stack.
   * @param stack - candidate indices, highest note first
   * @param notes - how many of them count
   */
  load(stack: Int32Array, notes: Count): void {
    this.stack = stack;
    this.members.forEach((own, s) => {
      if (own.length <= largestExact) this.priceNotes(own, this.onNote[s]!, notes);
    });
  }

  /**
   * Prices a section on sets of notes of the loaded stack.
   * @param s - the section
   * @param sets - sets of notes as bits, each after the same set without its lowest note
   * @param into - rows of players + 1, one a set: least cost by how many of the section sound,
   *   `cannot` where impossible
   */
  price(s: Count, sets: Int32Array, into: Int32Array): void {
    const own = this.members[s]!;
    const row = this.instance.players.length + 1;
    into.fill(cannot, 0, sets.length * row);
    for (let i = 0; i < sets.length; i++) {
      const set = sets[i]!;
      const taken = bitsIn(set);
      if (taken > own.length) continue;
      if (own.length > largestExact) this.bound(own, set, into, i * row);
      else {
        this.takeNote(s, taken, 31 - Math.clz32(set));
        this.leastBySize(this.placed[taken]!, 1 << own.length, into, i * row);
      }
    }
  }

  private priceNotes(own: readonly number[], intoNotes: Int32Array, notes: Count): void {
    const { columns, stack, playerCost, sizes } = this;
    const { candidates, players, chairs, sharedInSectionCost } = this.instance;
    for (let j = 0; j < notes; j++) {
      const c = stack[j]!;
      const row = j * columns;
      const steps = c * (players.length + 1);
      intoNotes[row] = 0;
      for (let set = 1; set < 1 << own.length; set++) {
        // One player more than the set without its last member.
        const last = 31 - Math.clz32(set);
        const others = intoNotes[row + (set ^ (1 << last))]!;
        const p = own[last]!;
        const plain = playerCost[p * candidates.length + c]!;
        const shared = sharedInSectionCost[steps + sizes[set]! - 1]!;
        const isOpen = others !== cannot && plain !== cannot;
        intoNotes[row + set] = isOpen ? others + rankOf(plain + shared, chairs[p]!, j) : cannot;
      }
    }
  }

  /** From the table of the notes before, the table with one more note and some players on it. */
  private takeNote(s: Count, taken: Count, j: Count): void {
    const before = this.placed[taken - 1]!;
    const after = this.placed[taken]!;
    const prices = this.onNote[s]!;
    const row = j * this.columns;
    const all = (1 << this.members[s]!.length) - 1;
    after.fill(cannot);
    for (let used = 0; used <= all; used++) {
      const base = before[used]!;
      if (base === cannot) continue;
      const free = all & ~used;
      for (let set = free; set !== 0; set = (set - 1) & free) {
        const price = prices[row + set]!;
        if (price !== cannot && base + price < after[used | set]!) after[used | set] = base + price;
      }
    }
  }

  private leastBySize(table: Int32Array, end: Count, into: Int32Array, row: Count): void {
    const { sizes } = this;
    for (let used = 1; used < end; used++) {
      const at = row + sizes[used]!;
      if (table[used]! < into[at]!) into[at] = table[used]!;
    }
  }

  /** For a large section: its players' cheapest notes, and the cheapest way to share for the rest. */
  private bound(own: readonly number[], set: SetWord, into: Int32Array, row: Count): void {
    const least = own.map((p) => this.cheapestOn(p, set)).sort((a, b) => a - b);
    const inSet = bitsIn(set);
    const second = this.cheapestSecondOn(set) * chairScale;
    let sum = 0;
    for (let m = 1; m <= own.length && least[m - 1]! < cannot; m++) {
      sum += least[m - 1]!;
      if (m >= inSet) into[row + m] = sum + (m - inSet) * second;
    }
  }

  private cheapestSecondOn(set: SetWord): Count {
    const { players, sharedInSectionCost } = this.instance;
    let cheapest = cannot;
    for (let rest = set; rest !== 0; rest &= rest - 1) {
      const c = this.stack[31 - Math.clz32(rest & -rest)]!;
      cheapest = Math.min(cheapest, sharedInSectionCost[c * (players.length + 1) + 1]!);
    }
    return cheapest;
  }

  private cheapestOn(p: Count, set: SetWord): Count {
    const { stack, playerCost } = this;
    const { candidates, chairs } = this.instance;
    let cheapest = cannot;
    for (let rest = set; rest !== 0; rest &= rest - 1) {
      const j = 31 - Math.clz32(rest & -rest);
      const plain = playerCost[p * candidates.length + stack[j]!]!;
      if (plain !== cannot) cheapest = Math.min(cheapest, rankOf(plain, chairs[p]!, j));
    }
    return cheapest;
  }
}
