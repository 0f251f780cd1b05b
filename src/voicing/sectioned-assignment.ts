import type { Count } from "../base/index.ts";
import { createAssigner } from "./assignment.ts";
import type { Assigner, AssignmentLimits } from "./assignment-types.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { mostOnSet } from "./section-sets.ts";
import { SectionParts, type SectionPart } from "./section-parts.ts";
import { sharingAtLeast } from "./sharing-bound.ts";
import type { SetWord } from "./stack-sets.ts";
import type { LayerId } from "./voicing-types.ts";

/**
 * Finds the cheapest assignment whose sections are all unbroken runs, or all interlocked. For each
 * sounding section it chooses the set of notes the section sounds; bounds on each section's own
 * cost throw out most choices, and the free assigner solves the rest exactly.
 */
export class SectionedAssigner {
  private readonly instance: Instance;
  private readonly layer: LayerId;
  private readonly allMustSound: boolean;
  private readonly parts: SectionParts;
  private readonly assigner: Assigner;
  private stack: Int32Array = new Int32Array();
  private notes: Count = 0;
  // The search for one number of players.
  private players: Count = 0;
  private isForAll = false;
  private mostWanted: Count = 0;
  private sharing: Count = 0;
  private choices: readonly (readonly SectionPart[])[] = [];
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
    this.layer = layer;
    this.allMustSound = allMustSound;
    this.parts = new SectionParts(instance, playerCost, layer, allMustSound);
    this.assigner = createAssigner(instance, playerCost);
    this.sets = new Int32Array(instance.sectionNames.length);
  }

  /**
   * Takes on a stack.
   * @param stack - candidate indices, highest note first
   * @param notes - how many of them count
   */
  load(stack: Int32Array, notes: Count): void {
    this.stack = stack;
    this.notes = notes;
    this.parts.load(stack, notes);
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
    const { instance, stack, parts } = this;
    this.players = players;
    this.isForAll = isForAll;
    this.mostWanted = limit;
    this.best = cannot;
    this.bestLimits = [];
    this.tried.clear();
    const eachOnce = new Int32Array(this.notes).fill(1);
    this.sharing = sharingAtLeast(instance, stack, eachOnce, players);
    const least = parts.least(0, players);
    if (least === cannot || least + this.sharing > limit) return;
    const most = limit - this.sharing;
    this.choices = parts.members.map((_, s) => parts.partsOf(s, players, most));
    this.choose(0, players, 0, this.sharing);
  }

  /** Chooses what section s and those after it do, `left` players of them, `bound` spent so far. */
  private choose(s: Count, left: Count, covered: SetWord, bound: Count): void {
    const { parts, sets } = this;
    if (s === sets.length) {
      if (left === 0 && covered === 2 ** this.notes - 1) this.tryChoice(bound - this.sharing);
      return;
    }
    sets[s] = 0;
    const rest = parts.least(s + 1, left);
    if (!this.allMustSound && rest !== cannot && bound + rest <= this.mostWanted)
      this.choose(s + 1, left, covered, bound);
    for (const part of this.choices[s]!) {
      if (bound + part.bound > this.mostWanted) break;
      if (part.players > left) continue;
      const after = parts.least(s + 1, left - part.players);
      if (after === cannot || bound + part.bound + after > this.mostWanted) continue;
      sets[s] = part.set;
      this.choose(s + 1, left - part.players, covered | part.set, bound + part.bound);
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
    const { layer, notes, sets } = this;
    const { members } = this.parts;
    return {
      allowed: sets.slice(),
      mustFillAllowed: true,
      mostOfSection: sets.map((set, s) =>
        set === 0 ? 0 : mostOnSet(layer, set, notes, members[s]!.length),
      ),
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
