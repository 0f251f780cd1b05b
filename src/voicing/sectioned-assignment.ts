import { chairScale, createAssigner, type AssignmentLimits } from "./assignment.ts";
import { bitsIn, createOwnCosts } from "./own-cost.ts";
import { cannot, type Instance } from "./instance-types.ts";
import type { LayerId } from "./voicing-types.ts";

/** Finds the cheapest assignment whose sections are all unbroken runs, or all interlocked. */
export interface SectionedAssigner {
  /**
   * @param stack - candidate indices, highest note first
   * @param notes - how many of them count
   * @param players - exactly this many sound
   * @param limit - stop looking above this value
   * @returns cost · chairScale + chair cost, `cannot` when there is none up to the limit
   */
  best(stack: Int32Array, notes: number, players: number, limit: number): number;
  /** Who plays what in that assignment: position in the stack by player, −1 for rest. */
  placesFor(stack: Int32Array, notes: number, players: number): Int32Array;
}

/** One way a section may sound: which notes, by how many of its players, and a bound. */
interface Part {
  readonly set: number;
  readonly players: number;
  readonly bound: number;
}

/** Sections of this many players or more want a run of several notes. */
const fullSection = 3;

function isRun(set: number): boolean {
  const lowest = set & -set;
  return (set & (set + lowest)) === 0;
}

function hasNoNeighbours(set: number): boolean {
  return (set & (set << 1)) === 0;
}

/** Most players on a set of notes in the by-section layer: a full section takes a longer run. */
function mostOnRun(sizeOfSet: number, notes: number): number {
  const wanted = notes <= 4 ? 2 : fullSection;
  return sizeOfSet >= wanted ? Number.MAX_SAFE_INTEGER : fullSection - 1;
}

/**
 * Makes an assigner for the layers by section and crossed. For each sounding section it chooses
 * the set of notes the section sounds; a bound on each section's own cost throws out most
 * choices, and the flow solves the rest exactly.
 * @param instance - the question in numbers
 * @param costs - players × candidates
 * @param layer - "by-section" or "crossed"
 * @param allMustSound - true when no section may rest
 * @returns the assigner
 */
export function createSectionedAssigner(
  instance: Instance,
  costs: Int32Array,
  layer: LayerId,
  allMustSound: boolean,
): SectionedAssigner {
  const sections = instance.sectionNames.length;
  const counts = instance.players.length + 1;
  const members = Array.from({ length: sections }, (_, s) =>
    [...instance.sectionOf].map((of, p) => (of === s ? p : -1)).filter((p) => p >= 0),
  );
  const assigner = createAssigner(instance, costs);
  const ownCosts = createOwnCosts(instance, costs, members);
  const setsByNotes: (readonly number[])[] = [];
  let chosen: AssignmentLimits[] = [];

  /** Sets of positions a section may sound, for a stack of n notes. */
  function setsFor(notes: number): readonly number[] {
    const known = setsByNotes[notes];
    if (known) return known;
    const fits = layer === "by-section" ? isRun : hasNoNeighbours;
    const largest = Math.max(...members.map((each) => each.length));
    const sets: number[] = [];
    collectSets(notes, largest, fits, sets);
    setsByNotes[notes] = sets;
    return sets;
  }

  /** What a section's players cost at least on a set of notes, by number of players. */
  function partsOf(s: number, stack: Int32Array, notes: number): readonly Part[] {
    const own = members[s]!;
    const parts: Part[] = [];
    const owns = ownCosts(s, stack, notes);
    for (const set of setsFor(notes)) {
      const inSet = bitsIn(set);
      if (inSet > own.length) continue;
      const least = owns(set);
      const most = layer === "by-section" ? mostOnRun(inSet, notes) : own.length;
      for (let m = inSet; m <= Math.min(most, own.length); m++)
        if (least[m]! < cannot) parts.push({ set, players: m, bound: least[m]! });
    }
    return parts.sort((a, b) => a.bound - b.bound);
  }

  /** N1 at least, when each position has these many sections and k players sound. */
  function sharingAtLeast(stack: Int32Array, notes: number, cover: Int32Array, k: number): number {
    let sum = 0;
    let sounding = 0;
    for (let j = 0; j < notes; j++) {
      const c = stack[j]!;
      for (let m = 1; m < cover[j]!; m++) sum += instance.sharedNoteCost[c * counts + m]!;
      sounding += cover[j]!;
    }
    const here = Int32Array.from(cover);
    for (; sounding < k; sounding++) {
      let cheapest = cannot;
      let at = 0;
      for (let j = 0; j < notes; j++) {
        const step = instance.sharedNoteCost[stack[j]! * counts + here[j]!]!;
        if (step < cheapest) {
          cheapest = step;
          at = j;
        }
      }
      sum += cheapest;
      here[at] = here[at]! + 1;
    }
    return sum * chairScale;
  }

  function limitsFor(sets: Int32Array, notes: number): AssignmentLimits {
    const mostOfSection = Int32Array.from(sets, (set, s) =>
      set === 0
        ? 0
        : layer === "by-section"
          ? Math.min(members[s]!.length, mostOnRun(bitsIn(set), notes))
          : members[s]!.length,
    );
    return {
      allowed: Int32Array.from(sets),
      mustFillAllowed: true,
      mostOfSection,
      sectionMustSound: null,
    };
  }

  /** Keeps every choice of sets that reaches the best value, when `withEquals` is asked for. */
  function search(
    stack: Int32Array,
    notes: number,
    k: number,
    limit: number,
    withEquals: boolean,
  ): number {
    const whole = 2 ** notes - 1;
    const parts = members.map((_, s) => partsOf(s, stack, notes));
    const leastOf = leastByPlayers(parts, members, k);
    const sharing = leastSharing(stack, notes, k);
    const sets = new Int32Array(sections);
    const cover = new Int32Array(notes);
    const tried = new Set<string>();
    // With equals, bounds must exceed the best to be thrown out: one more than what is known.
    const slack = withEquals ? 1 : 0;
    let best = limit === cannot ? cannot : limit + 1 - slack;
    chosen = [];

    function tryChoice(bound: number): void {
      cover.fill(0);
      for (let s = 0; s < sections; s++)
        for (let j = 0; j < notes; j++) cover[j] = cover[j]! + ((sets[s]! >> j) & 1);
      if (bound + sharingAtLeast(stack, notes, cover, k) >= best + slack) return;
      const name = sets.join();
      if (tried.has(name)) return;
      tried.add(name);
      const limits = limitsFor(sets, notes);
      assigner.solve(stack, notes, limits, k);
      const value = assigner.values[k]!;
      if (value === cannot || value >= best + slack) return;
      if (value < best) chosen = [];
      best = value;
      chosen.push(limits);
    }

    function choose(s: number, left: number, covered: number, bound: number): void {
      if (s === sections) {
        if (left === 0 && covered === whole) tryChoice(bound);
        return;
      }
      const restLeast = leastOf[s + 1]!;
      const restBound = restLeast[left]!;
      if (!allMustSound && restBound !== cannot && bound + restBound + sharing < best + slack) {
        sets[s] = 0;
        choose(s + 1, left, covered, bound);
      }
      for (const part of parts[s]!) {
        if (part.players > left) continue;
        const after = restLeast[left - part.players]!;
        if (after === cannot) continue;
        if (bound + part.bound + sharing >= best + slack) break;
        if (bound + part.bound + after + sharing >= best + slack) continue;
        sets[s] = part.set;
        choose(s + 1, left - part.players, covered | part.set, bound + part.bound);
      }
      sets[s] = 0;
    }

    choose(0, k, 0, 0);
    return chosen.length > 0 ? best : cannot;
  }

  /** N1 at least, whatever the sections do. */
  function leastSharing(stack: Int32Array, notes: number, k: number): number {
    return sharingAtLeast(stack, notes, new Int32Array(notes).fill(1), k);
  }

  return {
    best: (stack, notes, players, limit) => search(stack, notes, players, limit, false),
    placesFor(stack, notes, players) {
      const value = search(stack, notes, players, cannot, false);
      search(stack, notes, players, value, true);
      const options = chosen.map((limits) => assigner.placesFor(stack, notes, limits, players));
      const first = options.sort(inOrder)[0];
      if (!first) throw new RangeError("this stack has no assignment of the layer");
      return first;
    },
  };
}

/** Players in order, higher notes first, rest last. */
function inOrder(a: Int32Array, b: Int32Array): number {
  for (let p = 0; p < a.length; p++) {
    const left = a[p]! < 0 ? cannot : a[p]!;
    const right = b[p]! < 0 ? cannot : b[p]!;
    if (left !== right) return left - right;
  }
  return 0;
}

function collectSets(
  notes: number,
  largest: number,
  fits: (set: number) => boolean,
  into: number[],
): void {
  function grow(set: number, from: number, count: number): void {
    if (set !== 0 && fits(set)) into.push(set);
    if (count === largest) return;
    for (let j = from; j < notes; j++) {
      const next = set | (1 << j);
      // A run grows only downwards by one; an interlocked set never takes a neighbour.
      if (set === 0 || fits(next)) grow(next, j + 1, count + 1);
    }
  }
  grow(0, 0, 0);
}

/** Least cost of the sections from s on for a number of players, whatever notes they take. */
function leastByPlayers(
  parts: readonly (readonly Part[])[],
  members: readonly (readonly number[])[],
  players: number,
): readonly Int32Array[] {
  const least: Int32Array[] = [];
  const none = new Int32Array(players + 1).fill(cannot);
  none[0] = 0;
  least[parts.length] = none;
  for (let s = parts.length - 1; s >= 0; s--) {
    const own = new Int32Array(members[s]!.length + 1).fill(cannot);
    own[0] = 0;
    for (const part of parts[s]!)
      if (part.bound < own[part.players]!) own[part.players] = part.bound;
    const here = new Int32Array(players + 1).fill(cannot);
    for (let k = 0; k <= players; k++)
      for (let m = 0; m < own.length && m <= k; m++) {
        const rest = least[s + 1]![k - m]!;
        if (own[m] !== cannot && rest !== cannot) here[k] = Math.min(here[k]!, own[m]! + rest);
      }
    least[s] = here;
  }
  return least;
}
