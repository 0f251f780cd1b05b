import type { Count } from "../base/index.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { chairScale, rankOf } from "./ranking.ts";
import { bitsIn, type SetWord } from "./stack-sets.ts";

/** Sections up to this size are worked out exactly; larger ones by a bound. */
const largestExact = 6;

/**
 * Prices one section on its own, without what it shares with others: every note of a set has at
 * least one of the section's players, and players who share a note pay for it within the section.
 * Exact for sections up to six players, by sets of players note after note; a lower bound above.
 */
export class OwnCosts {
  /** Whether the section is small enough to be worked out exactly. */
  readonly isExact: boolean;
  private readonly instance: Instance;
  private readonly playerCost: Int32Array;
  private readonly own: readonly number[];
  /** One column for each set of the section's players. */
  private readonly columns: Count;
  private readonly sizes: Int32Array;
  /** Cost of a set of players on a note, by note and set. */
  private readonly onNote: Int32Array;
  /** Least cost with exactly a set of players placed, one table for each number of notes taken. */
  private readonly placed: readonly Int32Array[];
  private stack: Int32Array = new Int32Array();
  private notes: Count = 0;

  /**
   * @param instance - the question in numbers
   * @param playerCost - players × candidates
   * @param own - the section's players
   */
  constructor(instance: Instance, playerCost: Int32Array, own: readonly number[]) {
    const columns = own.length <= largestExact ? 1 << own.length : 0;
    this.instance = instance;
    this.playerCost = playerCost;
    this.own = own;
    this.isExact = columns > 0;
    this.columns = columns;
    this.sizes = Int32Array.from({ length: columns }, (_, set) => bitsIn(set));
    this.onNote = new Int32Array(instance.players.length * columns);
    // Three at least: looking for notes apart needs as many.
    const tables = Math.max(3, own.length + 1);
    this.placed = Array.from({ length: tables }, () => new Int32Array(columns));
  }

  /**
   * Takes on a stack.
   * @param stack - candidate indices, highest note first
   * @param notes - how many of them count
   */
  load(stack: Int32Array, notes: Count): void {
    this.stack = stack;
    this.notes = notes;
    if (this.isExact) for (let j = 0; j < notes; j++) this.priceNote(j);
  }

  /**
   * Prices the section on sets of notes of the loaded stack.
   * @param sets - sets of notes as bits, each after the same set without its lowest note
   * @param into - rows of players + 1, one a set: least cost by how many of the section sound,
   *   `cannot` where impossible
   */
  price(sets: Int32Array, into: Int32Array): void {
    const { own, placed } = this;
    const row = this.instance.players.length + 1;
    into.fill(cannot, 0, sets.length * row);
    if (this.isExact) this.placeNobody(placed[0]!);
    for (let i = 0; i < sets.length; i++) {
      const set = sets[i]!;
      const taken = bitsIn(set);
      if (taken > own.length) continue;
      if (!this.isExact) this.bound(set, into, i * row);
      else {
        this.takeNote(31 - Math.clz32(set), placed[taken - 1]!, placed[taken]!);
        this.leastBySize(placed[taken]!, into, i * row);
      }
    }
  }

  /**
   * Least cost over all sets of notes without neighbours, with no need to go through the sets: note
   * after note, each is passed over or, where the one above was, taken. For exact sections only.
   * @param into - by how many of the section sound, 0 to all, `cannot` where impossible
   */
  leastApart(into: Int32Array): void {
    const passed = this.placed[0]!;
    let taken = this.placed[1]!;
    let next = this.placed[2]!;
    this.placeNobody(passed);
    taken.fill(cannot);
    for (let j = 0; j < this.notes; j++) {
      this.takeNote(j, passed, next);
      for (let used = 0; used < this.columns; used++)
        if (taken[used]! < passed[used]!) passed[used] = taken[used]!;
      [taken, next] = [next, taken];
    }
    into.fill(cannot);
    this.leastBySize(passed, into, 0);
    this.leastBySize(taken, into, 0);
  }

  private placeNobody(table: Int32Array): void {
    table.fill(cannot).fill(0, 0, 1);
  }

  private priceNote(j: Count): void {
    const { own, columns, onNote, playerCost, sizes } = this;
    const { candidates, players, chairs, sharedInSectionCost } = this.instance;
    const c = this.stack[j]!;
    const row = j * columns;
    const steps = c * (players.length + 1);
    onNote[row] = 0;
    for (let set = 1; set < columns; set++) {
      // One player more than the set without its last member.
      const last = 31 - Math.clz32(set);
      const others = onNote[row + (set ^ (1 << last))]!;
      const p = own[last]!;
      const plain = playerCost[p * candidates.length + c]!;
      const shared = sharedInSectionCost[steps + sizes[set]! - 1]!;
      const isOpen = others !== cannot && plain !== cannot;
      onNote[row + set] = isOpen ? others + rankOf(plain + shared, chairs[p]!, j) : cannot;
    }
  }

  /** From a table of placed players, the table with some of the others on one more note. */
  private takeNote(j: Count, before: Int32Array, into: Int32Array): void {
    const { onNote, columns } = this;
    const row = j * columns;
    const all = columns - 1;
    into.fill(cannot);
    for (let used = 0; used <= all; used++) {
      const base = before[used]!;
      if (base === cannot) continue;
      const free = all & ~used;
      for (let set = free; set !== 0; set = (set - 1) & free) {
        const price = onNote[row + set]!;
        if (price !== cannot && base + price < into[used | set]!) into[used | set] = base + price;
      }
    }
  }

  private leastBySize(table: Int32Array, into: Int32Array, row: Count): void {
    const { sizes } = this;
    for (let used = 0; used < table.length; used++) {
      const at = row + sizes[used]!;
      if (table[used]! < into[at]!) into[at] = table[used]!;
    }
  }

  /** For a large section: its players' cheapest notes, and the cheapest way to share for the rest. */
  private bound(set: SetWord, into: Int32Array, row: Count): void {
    const { own } = this;
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
