import type { Count } from "../base/index.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { OwnCosts } from "./own-costs.ts";
import { mostOnSet, setsOfSection } from "./section-sets.ts";
import { bitsIn, type SetWord } from "./stack-sets.ts";
import type { LayerId } from "./voicing-types.ts";

/** One way a section may sound: which notes, by how many of its players, and a bound. */
export interface SectionPart {
  readonly set: SetWord;
  readonly players: Count;
  /** No assignment of these players to all of these notes costs less within the section. */
  readonly bound: Count;
}

/** Everything each section may do on one stack in a layer, with bounds by numbers of players. */
export class SectionParts {
  readonly members: readonly (readonly number[])[];
  private readonly layer: LayerId;
  private readonly allMustSound: boolean;
  private readonly counts: Count;
  private readonly ownCosts: OwnCosts;
  private readonly setsByNotes: Int32Array[] = [];
  /** Sets of the loaded stack, and each section's costs on them. */
  private sets: Int32Array = new Int32Array();
  private costs: Int32Array[];
  private notes: Count = 0;
  /** Least cost of a section by how many of its players sound. */
  private readonly own: readonly Int32Array[];
  /** The same for this section and all after it, and for all but this one. */
  private readonly fromHere: readonly Int32Array[];

  /**
   * @param instance - the question in numbers
   * @param playerCost - players × candidates
   * @param layer - "by-section" or "crossed"
   * @param allMustSound - true when no section may rest
   */
  constructor(instance: Instance, playerCost: Int32Array, layer: LayerId, allMustSound: boolean) {
    this.layer = layer;
    this.allMustSound = allMustSound;
    this.counts = instance.players.length + 1;
    this.members = instance.sectionNames.map((_, s) =>
      [...instance.sectionOf.keys()].filter((p) => instance.sectionOf[p] === s),
    );
    this.ownCosts = new OwnCosts(instance, playerCost, this.members);
    this.costs = this.members.map(() => new Int32Array());
    this.own = this.members.map(() => new Int32Array(this.counts));
    this.fromHere = [...this.members, []].map(() => new Int32Array(this.counts));
  }

  /**
   * Takes on a stack.
   * @param stack - candidate indices, highest note first
   * @param notes - how many of them count
   */
  load(stack: Int32Array, notes: Count): void {
    this.notes = notes;
    this.sets = this.setsFor(notes);
    this.ownCosts.load(stack, notes);
    const room = this.sets.length * this.counts;
    this.costs = this.costs.map((known) => (known.length < room ? new Int32Array(room) : known));
    this.members.forEach((_, s) => this.ownCosts.price(s, this.sets, this.costs[s]!));
    this.members.forEach((_, s) => this.leastOfOwn(s));
    this.addUp();
  }

  /**
   * Least cost of some sections together, whatever notes they take.
   * @param from - this section and all after it
   * @param players - how many of them sound
   * @returns a bound, `cannot` where impossible
   */
  least(from: Count, players: Count): Count {
    return this.fromHere[from]![players]!;
  }

  /**
   * What a section may do, cheapest first.
   * @param s - the section
   * @param players - how many sound in all sections
   * @param most - leaves out what would cost more with the other sections at their least
   * @returns the parts; resting is not among them
   */
  partsOf(s: Count, players: Count, most: Count): readonly SectionPart[] {
    const { sets, counts, layer, notes } = this;
    const size = this.members[s]!.length;
    const costs = this.costs[s]!;
    const others = this.leastOfOthers(s, players);
    const parts: SectionPart[] = [];
    for (let i = 0; i < sets.length; i++) {
      const set = sets[i]!;
      const end = Math.min(players, mostOnSet(layer, set, notes, size));
      for (let m = bitsIn(set); m <= end; m++) {
        const bound = costs[i * counts + m]!;
        const rest = others[players - m]!;
        if (bound !== cannot && rest !== cannot && bound + rest <= most)
          parts.push({ set, players: m, bound });
      }
    }
    return parts.sort((a, b) => a.bound - b.bound);
  }

  private setsFor(notes: Count): Int32Array {
    const largest = Math.max(0, ...this.members.map((own) => own.length));
    return (this.setsByNotes[notes] ??= setsOfSection(this.layer, notes, largest));
  }

  private leastOfOwn(s: Count): void {
    const { sets, counts, layer, notes } = this;
    const least = this.own[s]!.fill(cannot);
    const costs = this.costs[s]!;
    const size = this.members[s]!.length;
    if (!this.allMustSound) least[0] = 0;
    for (let i = 0; i < sets.length; i++) {
      const end = mostOnSet(layer, sets[i]!, notes, size);
      for (let m = 1; m <= end; m++)
        if (costs[i * counts + m]! < least[m]!) least[m] = costs[i * counts + m]!;
    }
  }

  private addUp(): void {
    const { fromHere, own } = this;
    fromHere[own.length]!.fill(cannot).fill(0, 0, 1);
    for (let s = own.length - 1; s >= 0; s--) together(own[s]!, fromHere[s + 1]!, fromHere[s]!);
  }

  private leastOfOthers(s: Count, players: Count): Int32Array {
    let sum = new Int32Array(players + 1).fill(cannot).fill(0, 0, 1);
    this.own.forEach((least, other) => {
      if (other === s) return;
      const next = new Int32Array(players + 1);
      together(least, sum, next);
      sum = next;
    });
    return sum;
  }
}

/** Least sums of two lists by number of players: the first for some of them, the second the rest. */
function together(a: Int32Array, b: Int32Array, into: Int32Array): void {
  for (let k = 0; k < into.length; k++) {
    let least = cannot;
    for (let m = 0; m <= k; m++) {
      const here = a[m]!;
      const rest = b[k - m]!;
      if (here !== cannot && rest !== cannot && here + rest < least) least = here + rest;
    }
    into[k] = least;
  }
}
