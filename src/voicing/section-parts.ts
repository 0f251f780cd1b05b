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

/** What one section may do on one stack in a layer, with its least cost by number of players. */
export class SectionParts {
  /** Least cost by how many of the section sound, 0 for rest; `cannot` where impossible. */
  readonly least: Int32Array;
  /** Most notes the section can sound at once. */
  mostNotes: Count = 0;
  private readonly layer: LayerId;
  private readonly mayRest: boolean;
  private readonly size: Count;
  private readonly counts: Count;
  private readonly ownCosts: OwnCosts;
  private readonly setsByNotes: Int32Array[] = [];
  private notes: Count = 0;
  /** Sets of the loaded stack, and the costs on them once they are asked for. */
  private sets: Int32Array = new Int32Array();
  private costs: Int32Array = new Int32Array();
  private isPriced = false;

  /**
   * @param instance - the question in numbers
   * @param playerCost - players × candidates
   * @param s - the section
   * @param layer - "by-section" or "crossed"
   * @param mayRest - false when it must sound
   */
  constructor(
    instance: Instance,
    playerCost: Int32Array,
    s: Count,
    layer: LayerId,
    mayRest: boolean,
  ) {
    const own = [...instance.sectionOf.keys()].filter((p) => instance.sectionOf[p] === s);
    this.layer = layer;
    this.mayRest = mayRest;
    this.size = own.length;
    this.counts = instance.players.length + 1;
    this.ownCosts = new OwnCosts(instance, playerCost, own);
    this.least = new Int32Array(this.counts);
  }

  /**
   * Takes on a stack.
   * @param stack - candidate indices, highest note first
   * @param notes - how many of them count
   */
  load(stack: Int32Array, notes: Count): void {
    const { layer, size, ownCosts } = this;
    this.notes = notes;
    this.sets = this.setsByNotes[notes] ??= setsOfSection(layer, notes, size);
    this.mostNotes = this.sets.reduce((most, set) => Math.max(most, bitsIn(set)), 0);
    this.isPriced = false;
    ownCosts.load(stack, notes);
    if (layer === "crossed" && ownCosts.isExact) ownCosts.leastApart(this.least);
    else this.leastOfSets();
    this.least[0] = this.mayRest ? 0 : cannot;
  }

  /**
   * Most players of the section that may sound on a set of notes.
   * @param set - the notes, as bits; empty for rest
   */
  mostOn(set: SetWord): Count {
    return set === 0 ? 0 : mostOnSet(this.layer, set, this.notes, this.size);
  }

  /**
   * What the section may do, cheapest first.
   * @param others - least cost of the other sections by how many of them sound
   * @param players - how many sound in all sections
   * @param most - leaves out what would cost more together with the others
   * @returns the parts; resting is not among them
   */
  partsWith(others: Int32Array, players: Count, most: Count): readonly SectionPart[] {
    this.priceSets();
    const { sets, costs, counts } = this;
    const parts: SectionPart[] = [];
    for (let i = 0; i < sets.length; i++) {
      const set = sets[i]!;
      const end = Math.min(players, this.mostOn(set));
      for (let m = bitsIn(set); m <= end; m++) {
        const bound = costs[i * counts + m]!;
        const rest = others[players - m]!;
        if (bound !== cannot && rest !== cannot && bound + rest <= most)
          parts.push({ set, players: m, bound });
      }
    }
    return parts.sort((a, b) => a.bound - b.bound);
  }

  private priceSets(): void {
    if (this.isPriced) return;
    this.isPriced = true;
    const room = this.sets.length * this.counts;
    if (this.costs.length < room) this.costs = new Int32Array(room);
    this.ownCosts.price(this.sets, this.costs);
  }

  private leastOfSets(): void {
    this.priceSets();
    const { sets, counts, costs } = this;
    const least = this.least.fill(cannot);
    for (let i = 0; i < sets.length; i++) {
      const end = this.mostOn(sets[i]!);
      for (let m = 1; m <= end; m++)
        if (costs[i * counts + m]! < least[m]!) least[m] = costs[i * counts + m]!;
    }
  }
}
