import { cannot, type Instance } from "./instance-types.ts";
import { chairScale } from "./assignment.ts";

/**
 * Stacks with the same highest and lowest candidate, kept as plain numbers: two words for the set
 * of notes, the stack's own cost, and for each number of players a value that no assignment of
 * this stack can go below.
 */
export interface StackPool {
  /** Stacks of one number of notes. */
  readonly count: number;
  readonly high: Int32Array;
  readonly low: Int32Array;
  readonly cost: Int32Array;
  /** count × (players + 1). */
  readonly bounds: Int32Array;
}

interface FillingPool {
  count: number;
  readonly high: Int32Array;
  readonly low: Int32Array;
  readonly cost: Int32Array;
  readonly bounds: Int32Array;
}

/** Stacks a pool holds before it must be emptied: bounds memory whatever the question. */
const poolCapacity = 8192;

/** Lists the legal stacks between two candidates, a pool at a time. */
export interface StackLister {
  /** One pool for each number of notes (index). */
  readonly pools: readonly StackPool[];
  /**
   * Starts on the stacks between two candidates; the pools are emptied.
   * @param top - candidate index of the highest note
   * @param bottom - candidate index of the lowest note, below `top`
   */
  begin(top: number, bottom: number): void;
  /**
   * Goes on until a pool is full or all stacks are listed.
   * @returns the number of notes of the full pool, or −1 when all are listed
   */
  fill(): number;
  /** Empties one pool. */
  empty(notes: number): void;
}

const chairDepth = 12;

/** Rows of the shared-note table that are equal get the same number. */
function kindsOfNotes(instance: Instance): {
  readonly kindOf: Int32Array;
  readonly rows: number[];
} {
  const counts = instance.players.length + 1;
  const known = new Map<string, number>();
  const rows: number[] = [];
  const kindOf = Int32Array.from(instance.candidates, (_, c) => {
    const row = instance.sharedNoteCost.subarray(c * counts, (c + 1) * counts).join();
    const kind = known.get(row) ?? known.size;
    if (kind === known.size) {
      known.set(row, kind);
      rows.push(c);
    }
    return kind;
  });
  return { kindOf, rows };
}

/**
 * Makes a lister: depth-first from the top note down, with the conflicts of the notes chosen so
 * far as a set, so that no illegal stack is ever built.
 * @param instance - the question in numbers
 * @param costs - players × candidates, for the bounds
 * @param mostNotes - stacks of more notes are left out
 * @returns the lister
 */
export function createStackLister(
  instance: Instance,
  costs: Int32Array,
  mostNotes: number,
): StackLister {
  const players = instance.players.length;
  const size = instance.candidates.length;
  const counts = players + 1;
  const { conflicts, neighbourCost, innerCost, bottomCost, classOf, copyCost, chairs } = instance;
  const leadIndex = instance.leadIndex;
  const { kindOf, rows } = kindsOfNotes(instance);
  const pools: FillingPool[] = Array.from({ length: counts }, () => newPool(poolCapacity, counts));

  // Chosen notes from the top, with running sums by depth.
  const chosen = new Int32Array(counts + 1);
  const spent = new Int32Array(counts + 1);
  const blockedHigh = new Int32Array(counts + 1);
  const blockedLow = new Int32Array(counts + 1);
  const setHigh = new Int32Array(counts + 1);
  const setLow = new Int32Array(counts + 1);
  const cheapest = new Int32Array((counts + 1) * players);
  const kindKey = new Float64Array(counts + 1);
  const cursor = new Int32Array(counts + 1);
  const isClosed = new Uint8Array(counts + 1);
  let depth = 0;
  let bottom = 0;
  const inClass = new Int32Array(12);
  const sorted = new Int32Array(players);
  const radix = Array.from({ length: rows.length }, (_, kind) => (counts + 1) ** kind);
  const extraCosts = new Map<number, Int32Array>();

  /** Cheapest sums of m further players on notes that have one each, by the kinds of the notes. */
  function extrasFor(key: number): Int32Array {
    const known = extraCosts.get(key);
    if (known) return known;
    const steps: number[] = [];
    rows.forEach((c, kind) => {
      const ofKind = Math.floor(key / radix[kind]!) % (counts + 1);
      for (let note = 0; note < ofKind; note++)
        for (let m = 1; m < counts; m++) steps.push(instance.sharedNoteCost[c * counts + m]!);
    });
    steps.sort((a, b) => a - b);
    const sums = new Int32Array(counts);
    for (let m = 1; m < counts; m++) sums[m] = sums[m - 1]! + (steps[m - 1] ?? 0) * chairScale;
    extraCosts.set(key, sums);
    return sums;
  }

  function takeCheapest(depth: number, candidate: number): void {
    const to = (depth + 1) * players;
    const from = depth * players;
    for (let p = 0; p < players; p++) {
      const plain = costs[p * size + candidate]!;
      const before = depth === 0 ? cannot : cheapest[from + p]!;
      const here =
        plain === cannot ? cannot : plain * chairScale + chairs[p]! * (chairDepth - depth);
      cheapest[to + p] = here < before ? here : before;
    }
  }

  function sortCheapest(depth: number): void {
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

  function store(depth: number, stackCost: number, high: number, low: number): void {
    const pool = pools[depth]!;
    const at = pool.count++;
    pool.high[at] = high;
    pool.low[at] = low;
    pool.cost[at] = stackCost;
    sortCheapest(depth);
    const extras = extrasFor(kindKey[depth]!);
    let sum = stackCost * chairScale;
    const row = at * counts;
    for (let k = 1; k <= players; k++) {
      const value = sorted[k - 1]!;
      sum = value === cannot || sum === cannot ? cannot : sum + value;
      pool.bounds[row + k] = k < depth || sum === cannot ? cannot : sum + extras[k - depth]!;
    }
  }

  function fillsGroups(notes: number, high: number, low: number): boolean {
    const groups = instance.groupsByNotes[notes]!;
    for (let g = 0; g < groups.length; g += 2)
      if ((high & groups[g]!) === 0 && (low & groups[g + 1]!) === 0) return false;
    return true;
  }

  /** Whether every note is an octave copy of the lead: lines are a family of their own. */
  function isLine(depth: number): boolean {
    return inClass[classOf[leadIndex]!] === depth;
  }

  function push(depth: number, candidate: number, cost: number): void {
    chosen[depth] = candidate;
    spent[depth + 1] = cost;
    const isHigh = candidate < 32;
    const bit = 1 << (31 - (candidate & 31));
    setHigh[depth + 1] = setHigh[depth]! | (isHigh ? bit : 0);
    setLow[depth + 1] = setLow[depth]! | (isHigh ? 0 : bit);
    blockedHigh[depth + 1] = blockedHigh[depth]! | conflicts[2 * candidate]!;
    blockedLow[depth + 1] = blockedLow[depth]! | conflicts[2 * candidate + 1]!;
    kindKey[depth + 1] = kindKey[depth]! + radix[kindOf[candidate]!]!;
    takeCheapest(depth, candidate);
  }

  /** Takes the bottom as the lowest note; returns true when that filled a pool. */
  function close(depth: number): boolean {
    const last = chosen[depth - 1]!;
    const table = depth === 2 ? instance.lowestNeighbourCostOfThree : instance.lowestNeighbourCost;
    const gap = table[last * size + bottom]!;
    if (gap === cannot) return false;
    const notes = depth + 1;
    const isHigh = bottom < 32;
    const bit = 1 << (31 - (bottom & 31));
    const high = setHigh[depth]! | (isHigh ? bit : 0);
    const low = setLow[depth]! | (isHigh ? 0 : bit);
    if (!holdsLead(high, low) || !fillsGroups(notes, high, low)) return false;
    const already = inClass[classOf[bottom]!]!;
    inClass[classOf[bottom]!] = already + 1;
    const isHarmony = !isLine(notes);
    inClass[classOf[bottom]!] = already;
    if (!isHarmony) return false;
    const copy = already > 0 ? copyCost[bottom]! : 0;
    push(depth, bottom, 0);
    store(notes, spent[depth]! + gap + copy + bottomCost[bottom]!, high, low);
    return pools[notes]!.count === poolCapacity;
  }

  function holdsLead(high: number, low: number): boolean {
    return (((leadIndex < 32 ? high : low) >>> (31 - (leadIndex & 31))) & 1) === 1;
  }

  /** The next note below the last chosen one, or −1. */
  function nextNote(): number {
    const last = chosen[depth - 1]!;
    const high = blockedHigh[depth]!;
    const low = blockedLow[depth]!;
    for (let c = cursor[depth]!; c < bottom; c++) {
      if ((((c < 32 ? high : low) >>> (31 - (c & 31))) & 1) === 1) continue;
      if (neighbourCost[last * size + c] === cannot) continue;
      cursor[depth] = c + 1;
      return c;
    }
    return -1;
  }

  function enter(candidate: number): void {
    const last = chosen[depth - 1]!;
    const already = inClass[classOf[candidate]!]!;
    const copy = already > 0 ? copyCost[candidate]! : 0;
    const gap = neighbourCost[last * size + candidate]!;
    inClass[classOf[candidate]!] = already + 1;
    push(depth, candidate, spent[depth]! + gap + innerCost[candidate]! + copy);
    depth++;
    cursor[depth] = candidate + 1;
    isClosed[depth] = 0;
  }

  function leave(): void {
    depth--;
    if (depth > 0) inClass[classOf[chosen[depth]!]!] = inClass[classOf[chosen[depth]!]!]! - 1;
  }

  function isApart(top: number): boolean {
    const word = bottom < 32 ? conflicts[2 * top]! : conflicts[2 * top + 1]!;
    return ((word >>> (31 - (bottom & 31))) & 1) === 0;
  }

  return {
    pools,
    empty(notes) {
      pools[notes]!.count = 0;
    },
    begin(top, below) {
      for (const pool of pools) pool.count = 0;
      bottom = below;
      depth = 0;
      if (bottomCost[bottom] === cannot || !isApart(top) || players < 2) return;
      setHigh[0] = setLow[0] = 0;
      blockedHigh[0] = conflicts[2 * bottom]!;
      blockedLow[0] = conflicts[2 * bottom + 1]!;
      kindKey[0] = 0;
      inClass.fill(0);
      inClass[classOf[top]!] = 1;
      push(0, top, top === leadIndex ? 0 : innerCost[top]!);
      depth = 1;
      cursor[1] = top + 1;
      isClosed[1] = 0;
    },
    fill() {
      while (depth > 0) {
        if (isClosed[depth] === 0) {
          isClosed[depth] = 1;
          if (close(depth)) return depth + 1;
        }
        const next = depth + 2 > mostNotes ? -1 : nextNote();
        if (next < 0) leave();
        else enter(next);
      }
      return -1;
    },
  };
}

function newPool(capacity: number, counts: number): FillingPool {
  return {
    count: 0,
    high: new Int32Array(capacity),
    low: new Int32Array(capacity),
    cost: new Int32Array(capacity),
    bounds: new Int32Array(capacity * counts),
  };
}
