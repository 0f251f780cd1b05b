import type { Count } from "../base/index.ts";
import { createAssigner } from "./assignment.ts";
import { freeAssignment } from "./assignment-network.ts";
import type { Assigner, AssignmentLimits } from "./assignment-types.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { leastTogether } from "./least-sums.ts";
import { SectionParts, type SectionPart } from "./section-parts.ts";
import { sharingAtLeast } from "./sharing-bound.ts";
import { bitsIn, type SetWord } from "./stack-sets.ts";
import type { LayerId } from "./voicing-types.ts";

/**
 * Finds the cheapest assignment whose sections are all unbroken runs, or all interlocked. For each
 * sounding section it chooses the set of notes the section sounds; bounds on each section's own
 * cost throw out most choices, and the free assigner solves the rest exactly.
 */
export class SectionedAssigner {
  private readonly instance: Instance;
  private readonly allMustSound: boolean;
  private readonly sections: readonly SectionParts[];
  private readonly assigner: Assigner;
  private stack: Int32Array = new Int32Array();
  private notes: Count = 0;
  private mostPlayers: Count = 0;
  /** Values without regard to sections, worked out when first needed. */
  private readonly free: Int32Array;
  private isFreeSolved = false;
  /** Least cost and most notes of each section and all after it together. */
  private leastFrom: readonly Int32Array[] = [];
  private roomFrom: readonly Count[] = [];
  // The search for one number of players.
  private players: Count = 0;
  private isForAll = false;
  private mostWanted: Count = 0;
  private sharing: Count = 0;
  private choices: readonly (readonly SectionPart[])[] = [];
  private lastChoices: readonly (readonly SectionPart[])[] = [];
  private readonly sets: Int32Array;
  private readonly tried = new Set<string>();
  private best: Count = cannot;
  private bestLimits: AssignmentLimits[] = [];

  /**
   * @param instance - the question in numbers
   * @param playerCost - players × candidates
   * @param layer - "by-section" or "crossed"
   * @param allMustSound - true when no section may rest
   */
  constructor(instance: Instance, playerCost: Int32Array, layer: LayerId, allMustSound: boolean) {
    this.instance = instance;
    this.allMustSound = allMustSound;
    this.sections = instance.sectionNames.map(
      (_, s) => new SectionParts(instance, playerCost, s, layer, !allMustSound),
    );
    this.assigner = createAssigner(instance, playerCost);
    this.sets = new Int32Array(instance.sectionNames.length);
    this.free = new Int32Array(instance.players.length + 1);
  }

  /**
   * Takes on a stack.
   * @param stack - candidate indices, highest note first
   * @param notes - how many of them count
   * @param most - players that will be asked for at most
   */
  load(stack: Int32Array, notes: Count, most: Count): void {
    this.stack = stack;
    this.notes = notes;
    this.mostPlayers = most;
    this.isFreeSolved = false;
    const { sections } = this;
    const all = this.instance.players.length;
    for (const section of sections) section.load(stack, notes);
    this.leastFrom = [...sections, null].map((_, s) =>
      leastTogether(
        sections.slice(s).map(({ least }) => least),
        all,
      ),
    );
    this.roomFrom = [...sections, null].map((_, s) =>
      sections.slice(s).reduce((sum, section) => sum + section.mostNotes, 0),
    );
  }

  /**
   * Solves the loaded stack for a number of players.
   * @param players - exactly this many sound
   * @param limit - values above are of no interest
   * @returns cost · chairScale + chair cost, `cannot` when there is none up to the limit
   */
  leastFor(players: Count, limit: Count): Count {
    this.search(players, limit, false);
    return this.best;
  }

  /**
   * Who plays what in the cheapest assignment of the loaded stack, the first in order among equals.
   * @param players - exactly this many sound
   * @returns position in the stack by player, −1 for rest
   * @throws RangeError when there is no such assignment
   */
  placesFor(players: Count): Int32Array {
    const { stack, notes } = this;
    this.search(players, this.leastFor(players, cannot), true);
    const options = this.bestLimits.map((limits) =>
      this.assigner.placesFor({ stack, notes, limits }, [players]).get(players)!,
    );
    const first = options.sort(inOrder)[0];
    if (!first) throw new RangeError("this stack has no assignment of the layer");
    return first;
  }

  /** Finds the least value up to a limit: one choice of sets that gives it, or all of them. */
  private search(players: Count, limit: Count, isForAll: boolean): void {
    this.players = players;
    this.isForAll = isForAll;
    this.mostWanted = limit;
    this.best = cannot;
    this.bestLimits = [];
    this.tried.clear();
    const eachOnce = new Int32Array(this.notes).fill(1);
    this.sharing = sharingAtLeast(this.instance, this.stack, eachOnce, players);
    const least = this.leastFrom[0]![players]!;
    if (least === cannot || least + this.sharing > limit) return;
    if (this.freeValue(players) > limit) return;
    this.listChoices(limit - this.sharing);
    this.choose(0, players, 2 ** this.notes - 1, this.sharing);
  }

  /** What the stack costs with its sections free: never more than with their sets kept apart. */
  private freeValue(players: Count): Count {
    const { stack, notes, assigner, free } = this;
    if (!this.isFreeSolved) {
      assigner.solve({ stack, notes, limits: freeAssignment }, this.mostPlayers);
      free.set(assigner.values);
      this.isFreeSolved = true;
    }
    return free[players]!;
  }

  /** What each section may do if all together cost at most so much. */
  private listChoices(most: Count): void {
    const { sections, players } = this;
    this.choices = sections.map((section) => {
      const others = sections.filter((other) => other !== section).map(({ least }) => least);
      return section.partsWith(leastTogether(others, players), players, most);
    });
    const last = this.choices[sections.length - 1] ?? [];
    this.lastChoices = Array.from({ length: players + 1 }, (_, count) =>
      last.filter((part) => part.players === count),
    );
  }

  /** Chooses what section s and those after it do, `left` players of them, `bound` spent so far. */
  private choose(s: Count, left: Count, missing: SetWord, bound: Count): void {
    const { sets } = this;
    if (s === sets.length) {
      if (left === 0 && missing === 0) this.tryChoice(bound - this.sharing);
      return;
    }
    const leastAfter = this.leastFrom[s + 1]!;
    const roomAfter = this.roomFrom[s + 1]!;
    sets[s] = 0;
    const rest = leastAfter[left]!;
    if (!this.allMustSound && rest !== cannot && bound + rest <= this.mostWanted)
      this.choose(s + 1, left, missing, bound);
    const isLast = s === sets.length - 1;
    for (const part of isLast ? this.lastChoices[left]! : this.choices[s]!) {
      if (bound + part.bound > this.mostWanted) break;
      const after = left - part.players;
      // Every note that is still missing needs a player and a section of those that follow.
      const stillMissing = missing & ~part.set;
      if (after < 0 || bitsIn(stillMissing) > Math.min(after, roomAfter)) continue;
      const least = leastAfter[after]!;
      if (least === cannot || bound + part.bound + least > this.mostWanted) continue;
      sets[s] = part.set;
      this.choose(s + 1, after, stillMissing, bound + part.bound);
    }
  }

  /** Solves the sets as chosen, if they can still give a value that is wanted. */
  private tryChoice(ownCosts: Count): void {
    const { instance, stack, notes, players, sets } = this;
    const cover = new Int32Array(notes);
    for (const set of sets) for (let j = 0; j < notes; j++) cover[j]! += (set >> j) & 1;
    if (ownCosts + sharingAtLeast(instance, stack, cover, players) > this.mostWanted) return;
    const name = sets.join();
    if (this.tried.has(name)) return;
    this.tried.add(name);
    const limits = this.limitsOfSets();
    this.assigner.solve({ stack, notes, limits }, players);
    const value = this.assigner.values[players]!;
    if (value === cannot || value > this.mostWanted) return;
    if (value < this.best) this.bestLimits = [];
    this.bestLimits.push(limits);
    this.best = value;
    this.mostWanted = this.isForAll ? value : value - 1;
  }

  private limitsOfSets(): AssignmentLimits {
    return {
      allowed: this.sets.slice(),
      mustFillAllowed: true,
      mostOfSection: this.sets.map((set, s) => this.sections[s]!.mostOn(set)),
      sectionMustSound: null,
    };
  }
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
