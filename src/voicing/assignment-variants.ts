import type { Count } from "../base/index.ts";
import { cannot, type Instance } from "./instance-types.ts";

/** Another way to give a stack to players. */
export interface AssignmentVariant {
  /** Position in the stack by player, −1 for rest. */
  readonly places: Int32Array;
  /** Cost over the assignment it was made from; may be below 0 for none but a poor one. */
  readonly more: Count;
}

/** A stack and who plays it. */
export interface AssignedStack {
  /** Candidate indices, highest note first; may be longer than the stack. */
  readonly stack: Int32Array;
  readonly notes: Count;
  readonly places: Int32Array;
}

/** One change: player p goes to note j, and player q takes p's note where there is a q. */
interface Change {
  readonly more: number;
  readonly p: number;
  readonly to: number;
  readonly q: number;
}

/**
 * Finds the cheapest ways to change an assignment by one step: a player moves to another note whose
 * own note has others, or two players exchange notes (one of them may rest). Notes, number of players
 * and held players stay.
 */
export class AssignmentVariants {
  private readonly instance: Instance;
  private readonly playerCost: Int32Array;
  private readonly counts: Count;
  private readonly size: Count;
  private readonly onNote: Int32Array;
  private readonly inSection: Int32Array;
  private asked: AssignedStack;

  /**
   * @param instance - the question in numbers
   * @param playerCost - players × candidates
   */
  constructor(instance: Instance, playerCost: Int32Array) {
    const players = instance.players.length;
    this.instance = instance;
    this.playerCost = playerCost;
    this.counts = players + 1;
    this.size = instance.candidates.length;
    this.onNote = new Int32Array(players + 1);
    this.inSection = new Int32Array((players + 1) * Math.max(1, instance.sectionNames.length));
    this.asked = { stack: new Int32Array(0), notes: 0, places: new Int32Array(0) };
  }

  /**
   * @param asked - stack and assignment to start from
   * @param most - how many variants at most
   * @returns cheapest first, equals by player and note
   */
  of(asked: AssignedStack, most: Count): readonly AssignmentVariant[] {
    this.load(asked);
    const changes: Change[] = [];
    const { heldTo } = this.instance;
    const players = this.instance.players.length;
    for (let p = 0; p < players; p++) {
      if (heldTo[p]! >= 0) continue;
      this.addMoves(p, changes);
      for (let q = p + 1; q < players; q++) if (heldTo[q]! < 0) this.addExchange(p, q, changes);
    }
    changes.sort((a, b) => a.more - b.more || a.p - b.p || a.to - b.to || a.q - b.q);
    return changes.slice(0, most).map((change) => this.changed(change));
  }

  private load(asked: AssignedStack): void {
    this.asked = asked;
    this.onNote.fill(0);
    this.inSection.fill(0);
    asked.places.forEach((place, p) => {
      if (place >= 0) this.count(p, place, 1);
    });
  }

  private count(p: number, place: number, change: number): void {
    const node = this.instance.sectionOf[p]! * this.counts + place;
    this.onNote[place] = this.onNote[place]! + change;
    this.inSection[node] = this.inSection[node]! + change;
  }

  /** Player's own cost on a note. */
  private own(p: number, place: number): number {
    return this.playerCost[p * this.size + this.asked.stack[place]!]!;
  }

  /** Cost of a player beside those who are on a note. */
  private sharing(p: number, place: number): number {
    const { sharedNoteCost, sharedInSectionCost, sectionOf } = this.instance;
    const row = this.asked.stack[place]! * this.counts;
    const inSection = this.inSection[sectionOf[p]! * this.counts + place]!;
    return sharedNoteCost[row + this.onNote[place]!]! + sharedInSectionCost[row + inSection]!;
  }

  private addMoves(p: number, into: Change[]): void {
    const from = this.asked.places[p]!;
    if (from < 0 || this.onNote[from]! < 2) return;
    this.count(p, from, -1);
    const before = this.own(p, from) + this.sharing(p, from);
    for (let to = 0; to < this.asked.notes; to++) {
      const own = this.own(p, to);
      if (to === from || own === cannot) continue;
      into.push({ more: own + this.sharing(p, to) - before, p, to, q: -1 });
    }
    this.count(p, from, 1);
  }

  private addExchange(p: number, q: number, into: Change[]): void {
    const { places } = this.asked;
    const a = places[p]!;
    const b = places[q]!;
    if (a === b) return;
    const ownAfterP = b < 0 ? 0 : this.own(p, b);
    const ownAfterQ = a < 0 ? 0 : this.own(q, a);
    if (ownAfterP === cannot || ownAfterQ === cannot) return;
    let more = ownAfterP + ownAfterQ - (a < 0 ? 0 : this.own(p, a)) - (b < 0 ? 0 : this.own(q, b));
    if (this.instance.sectionOf[p] !== this.instance.sectionOf[q])
      more += this.sharingAfter(p, q, a, b);
    into.push({ more, p, to: b, q });
  }

  /** What an exchange across sections changes in the cost of sharing notes. */
  private sharingAfter(p: number, q: number, a: number, b: number): number {
    let more = 0;
    if (a >= 0) {
      this.count(p, a, -1);
      more += this.sharing(q, a) - this.sharing(p, a);
      this.count(p, a, 1);
    }
    if (b >= 0) {
      this.count(q, b, -1);
      more += this.sharing(p, b) - this.sharing(q, b);
      this.count(q, b, 1);
    }
    return more;
  }

  private changed({ more, p, to, q }: Change): AssignmentVariant {
    const places = this.asked.places.slice();
    if (q >= 0) places[q] = places[p]!;
    places[p] = to;
    return { places, more };
  }
}
