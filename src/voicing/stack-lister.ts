import type { Count } from "../base/index.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { StackBounds } from "./stack-bounds.ts";
import { StackPool } from "./stack-pool.ts";
import { isInSet, type SetWord } from "./stack-sets.ts";

/** How many notes the stacks of a lister have. */
export interface NotesWanted {
  readonly least: Count;
  readonly most: Count;
}

/**
 * Lists the legal stacks between two candidates, a pool at a time: depth-first from the top note
 * down, with the conflicts of the notes chosen so far as a set, so that no illegal stack is ever
 * built.
 */
export class StackLister {
  /** Stacks listed so far, all pools together. */
  listed: Count = 0;
  /** One pool for each number of notes (index). */
  readonly pools: readonly StackPool[];
  private readonly instance: Instance;
  private readonly wanted: NotesWanted;
  private readonly bounds: StackBounds;
  private readonly counts: Count;
  // Chosen notes from the top, and by depth what they cost, form and exclude.
  private readonly chosen: Int32Array;
  private readonly spent: Int32Array;
  private readonly setHigh: Int32Array;
  private readonly setLow: Int32Array;
  private readonly blockedHigh: Int32Array;
  private readonly blockedLow: Int32Array;
  /** Next candidate to try, and whether the stack was already closed here, by depth. */
  private readonly cursor: Int32Array;
  private readonly isClosed: Uint8Array;
  private readonly inClass = new Int32Array(12);
  private depth: Count = 0;
  private bottom: Count = 0;

  /**
   * @param instance - the question in numbers
   * @param playerCost - players × candidates, for the bounds
   * @param wanted - stacks of fewer or more notes are left out
   */
  constructor(instance: Instance, playerCost: Int32Array, wanted: NotesWanted) {
    const counts = instance.players.length + 1;
    const depths = counts + 1;
    this.instance = instance;
    this.wanted = wanted;
    this.counts = counts;
    this.bounds = new StackBounds(instance, playerCost);
    this.pools = Array.from({ length: counts }, () => new StackPool(counts));
    this.chosen = new Int32Array(depths);
    this.spent = new Int32Array(depths);
    this.setHigh = new Int32Array(depths);
    this.setLow = new Int32Array(depths);
    this.blockedHigh = new Int32Array(depths);
    this.blockedLow = new Int32Array(depths);
    this.cursor = new Int32Array(depths);
    this.isClosed = new Uint8Array(depths);
  }

  /**
   * Empties one pool.
   * @param notes - the pool of stacks of so many notes
   */
  empty(notes: Count): void {
    this.pools[notes]!.count = 0;
  }

  /**
   * Starts on the stacks between two candidates; the pools are emptied.
   * @param top - candidate index of the highest note
   * @param bottom - candidate index of the lowest note, below `top`
   */
  begin(top: Count, bottom: Count): void {
    const { conflicts, bottomCost, classOf, innerCost, leadIndex } = this.instance;
    for (const pool of this.pools) pool.count = 0;
    this.bottom = bottom;
    this.depth = 0;
    const high = conflicts[2 * bottom]!;
    const low = conflicts[2 * bottom + 1]!;
    if (bottomCost[bottom] === cannot || isInSet(high, low, top) || this.counts < 3) return;
    this.blockedHigh[0] = high;
    this.blockedLow[0] = low;
    this.inClass.fill(0);
    this.inClass[classOf[top]!] = 1;
    this.push(top, top === leadIndex ? 0 : innerCost[top]!);
    this.begun(top);
  }

  /**
   * Goes on until a pool is full or all stacks are listed.
   * @returns the number of notes of the full pool, or −1 when all are listed
   */
  fill(): Count {
    const { isClosed, wanted } = this;
    while (this.depth > 0) {
      if (isClosed[this.depth] === 0) {
        isClosed[this.depth] = 1;
        if (this.depth + 1 >= wanted.least && this.close()) return this.depth + 1;
      }
      const next = this.depth + 2 > wanted.most ? -1 : this.nextNote();
      if (next < 0) this.leave();
      else this.enter(next);
    }
    return -1;
  }

  /** Puts a note at the present depth; it has cost so much together with those above it. */
  private push(candidate: Count, cost: Count): void {
    const { depth, setHigh, setLow, blockedHigh, blockedLow } = this;
    const { conflicts } = this.instance;
    const bit = 1 << (31 - (candidate & 31));
    const isHigh = candidate < 32;
    this.chosen[depth] = candidate;
    this.spent[depth + 1] = cost;
    setHigh[depth + 1] = setHigh[depth]! | (isHigh ? bit : 0);
    setLow[depth + 1] = setLow[depth]! | (isHigh ? 0 : bit);
    blockedHigh[depth + 1] = blockedHigh[depth]! | conflicts[2 * candidate]!;
    blockedLow[depth + 1] = blockedLow[depth]! | conflicts[2 * candidate + 1]!;
    this.bounds.enter(depth, candidate);
  }

  private begun(candidate: Count): void {
    this.depth++;
    this.cursor[this.depth] = candidate + 1;
    this.isClosed[this.depth] = 0;
  }

  private enter(candidate: Count): void {
    const { depth, inClass } = this;
    const { classOf, copyCost, neighbourCost, innerCost, candidates } = this.instance;
    const last = this.chosen[depth - 1]!;
    const already = inClass[classOf[candidate]!]!;
    const copy = already > 0 ? copyCost[candidate]! : 0;
    const gap = neighbourCost[last * candidates.length + candidate]!;
    inClass[classOf[candidate]!] = already + 1;
    this.push(candidate, this.spent[depth]! + gap + innerCost[candidate]! + copy);
    this.begun(candidate);
  }

  private leave(): void {
    const { inClass } = this;
    this.depth--;
    if (this.depth === 0) return;
    const group = this.instance.classOf[this.chosen[this.depth]!]!;
    inClass[group] = inClass[group]! - 1;
  }

  /** The next note below the last chosen one, or −1. */
  private nextNote(): Count {
    const { depth, bottom } = this;
    const { neighbourCost, candidates } = this.instance;
    const row = this.chosen[depth - 1]! * candidates.length;
    const high = this.blockedHigh[depth]!;
    const low = this.blockedLow[depth]!;
    for (let c = this.cursor[depth]!; c < bottom; c++) {
      if (isInSet(high, low, c) || neighbourCost[row + c] === cannot) continue;
      this.cursor[depth] = c + 1;
      return c;
    }
    return -1;
  }

  /** Takes the bottom as the lowest note; returns true when that filled a pool. */
  private close(): boolean {
    const { depth, bottom, inClass } = this;
    const { classOf, copyCost, bottomCost, leadIndex } = this.instance;
    const gap = this.lowestGap();
    if (gap === cannot) return false;
    const notes = depth + 1;
    const bit = 1 << (31 - (bottom & 31));
    const high = this.setHigh[depth]! | (bottom < 32 ? bit : 0);
    const low = this.setLow[depth]! | (bottom < 32 ? 0 : bit);
    if (!isInSet(high, low, leadIndex) || !this.fillsGroups(notes, high, low)) return false;
    const already = inClass[classOf[bottom]!]!;
    const ofLead = inClass[classOf[leadIndex]!]! + (classOf[bottom] === classOf[leadIndex] ? 1 : 0);
    // Nothing but octave copies of the lead: lines are a family of their own.
    if (ofLead === notes) return false;
    const copy = already > 0 ? copyCost[bottom]! : 0;
    const cost = this.spent[depth]! + gap + copy + bottomCost[bottom]!;
    const pool = this.pools[notes]!;
    const at = pool.add(high, low, cost);
    this.listed++;
    this.bounds.enter(depth, bottom);
    this.bounds.write(notes, cost, pool.bounds, at * this.counts);
    return pool.isFull;
  }

  private lowestGap(): Count {
    const { lowestNeighbourCost, lowestNeighbourCostOfThree, candidates } = this.instance;
    const table = this.depth === 2 ? lowestNeighbourCostOfThree : lowestNeighbourCost;
    return table[this.chosen[this.depth - 1]! * candidates.length + this.bottom]!;
  }

  private fillsGroups(notes: Count, high: SetWord, low: SetWord): boolean {
    const groups = this.instance.groupsByNotes[notes]!;
    for (let g = 0; g < groups.length; g += 2)
      if ((high & groups[g]!) === 0 && (low & groups[g + 1]!) === 0) return false;
    return true;
  }
}
