import type { Count } from "../base/index.ts";
import type { AssignmentLimits, StackToFill } from "./assignment-types.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { chairScale, rankOf } from "./ranking.ts";

/** Reward that makes every needed player come first; larger than any real cost. */
const must = 1 << 24;

/** A distance that stands for "no way". */
export const far = 0x3fffffff;

/** No limits: anyone anywhere. */
export const freeAssignment: AssignmentLimits = Object.freeze({
  allowed: null,
  mustFillAllowed: false,
  mostOfSection: null,
  sectionMustSound: null,
});

/**
 * Who is on which note of one stack, and what one more or one fewer costs: players → (section,
 * note) → note → out, with rising costs on the last two steps. Rows are as wide as the stack:
 * player p on note j is p · width + j, section s on note j is s · width + j.
 */
export class AssignmentNetwork {
  readonly players: Count;
  readonly sections: Count;
  readonly sectionOf: Int32Array;
  /** Candidate each player is held to, or −1. */
  readonly heldTo: Int32Array;
  /** Ranked cost of each player on each note, `far` where the player cannot. */
  readonly cost: Int32Array;
  /** Note of each player, −1 for rest. */
  readonly place: Int32Array;
  readonly onNote: Int32Array;
  readonly inSection: Int32Array;
  readonly sectionSize: Int32Array;
  /** Cost of one more player of a section on a note, and refund of one fewer. */
  readonly sectionUp: Int32Array;
  readonly sectionDown: Int32Array;
  /** Cost of one more player on a note, and refund of one fewer. */
  readonly noteUp: Int32Array;
  readonly noteDown: Int32Array;
  /** Notes of the stack. */
  width: Count = 0;
  /** Rewards that a complete assignment collects. */
  private needed: Count = 0;
  private limits: AssignmentLimits = freeAssignment;
  private readonly instance: Instance;
  private readonly playerCost: Int32Array;
  private readonly counts: Count;
  /** Notes × (players + 1): cost of player m + 1, all together and within one section. */
  private readonly noteStep: Int32Array;
  private readonly sectionStep: Int32Array;

  /**
   * @param instance - the question in numbers
   * @param playerCost - players × candidates
   */
  constructor(instance: Instance, playerCost: Int32Array) {
    const players = instance.players.length;
    const sections = Math.max(1, instance.sectionNames.length);
    const widest = Math.max(players, 1);
    this.instance = instance;
    this.playerCost = playerCost;
    this.players = players;
    this.sections = sections;
    this.counts = players + 1;
    this.sectionOf = instance.sectionOf;
    this.heldTo = instance.heldTo;
    this.cost = new Int32Array(players * widest);
    this.noteStep = new Int32Array(widest * this.counts);
    this.sectionStep = new Int32Array(widest * this.counts);
    this.place = new Int32Array(players);
    this.onNote = new Int32Array(widest);
    this.inSection = new Int32Array(sections * widest);
    this.sectionSize = new Int32Array(sections);
    this.sectionUp = new Int32Array(sections * widest);
    this.sectionDown = new Int32Array(sections * widest);
    this.noteUp = new Int32Array(widest);
    this.noteDown = new Int32Array(widest);
  }

  /**
   * Takes on a stack, everyone resting.
   * @param asked - the stack and its limits
   * @returns false when a player is held to a note that is not there
   */
  load({ stack, notes, limits }: StackToFill): boolean {
    this.width = notes;
    this.limits = limits;
    this.needed = notes;
    this.loadSteps(stack);
    this.place.fill(-1);
    this.sectionSize.fill(0);
    this.onNote.fill(0);
    this.inSection.fill(0);
    for (let p = 0; p < this.players; p++) if (!this.loadPlayer(p, stack)) return false;
    for (let j = 0; j < notes; j++) {
      this.countOnNote(j, 0);
      for (let s = 0; s < this.sections; s++) this.countInSection(s, j, 0);
    }
    this.countNeeded();
    return true;
  }

  /** Whether a section must sound or may not sound in full: then it matters who rests for whom. */
  get hasBoundSections(): boolean {
    return this.limits.mostOfSection !== null || this.limits.sectionMustSound !== null;
  }

  /** The rewards of a complete assignment, to be given back. */
  get rewards(): Count {
    return this.needed * must;
  }

  /**
   * Whether a sum holds all its rewards: nothing that must have a player is without.
   * @param sum - of the steps so far
   */
  isComplete(sum: Count): boolean {
    return sum + this.rewards < must / 2;
  }

  /**
   * Cost for a section of one more sounding player, without the player's own.
   * @param s - the section
   * @returns 0, less for the first of a section that must sound, `far` when it may have no more
   */
  startCost(s: Count): Count {
    const { mostOfSection, sectionMustSound } = this.limits;
    const sounding = this.sectionSize[s]!;
    if (mostOfSection !== null && sounding >= mostOfSection[s]!) return far;
    return sectionMustSound !== null && sectionMustSound[s] === 1 && sounding === 0 ? -must : 0;
  }

  /**
   * Whether a section may lose a sounding player.
   * @param s - the section
   */
  mayShrink(s: Count): boolean {
    const { sectionMustSound } = this.limits;
    const sounding = this.sectionSize[s]!;
    return sounding > (sectionMustSound !== null && sectionMustSound[s] === 1 ? 1 : 0);
  }

  /**
   * Counts one player of a section more or fewer on a note.
   * @param s - the section
   * @param j - position of the note
   * @param change - 1 or −1
   */
  countInSection(s: Count, j: Count, change: Count): void {
    const node = s * this.width + j;
    const count = this.inSection[node]! + change;
    this.inSection[node] = count;
    this.sectionUp[node] = this.sectionCost(s, j, count);
    this.sectionDown[node] = count === 0 ? 0 : this.sectionCost(s, j, count - 1);
  }

  /**
   * Counts one player more or fewer on a note, all sections together.
   * @param j - position of the note
   * @param change - 1 or −1
   */
  countOnNote(j: Count, change: Count): void {
    const count = this.onNote[j]! + change;
    const row = j * this.counts;
    this.onNote[j] = count;
    this.noteUp[j] = this.noteStep[row + count]!;
    this.noteDown[j] = count === 0 ? 0 : this.noteStep[row + count - 1]!;
  }

  private loadSteps(stack: Int32Array): void {
    const { counts, width, noteStep, sectionStep } = this;
    const { sharedNoteCost, sharedInSectionCost } = this.instance;
    for (let j = 0; j < width; j++) {
      const from = stack[j]! * counts;
      const to = j * counts;
      for (let m = 0; m < counts; m++) {
        noteStep[to + m] = sharedNoteCost[from + m]! * chairScale;
        sectionStep[to + m] = sharedInSectionCost[from + m]! * chairScale;
      }
      noteStep[to] = noteStep[to]! - must;
    }
  }

  /** Prices one player; false when a held player cannot be placed. */
  private loadPlayer(p: Count, stack: Int32Array): boolean {
    const { width, cost, playerCost, limits } = this;
    const held = this.heldTo[p]!;
    const chair = this.instance.chairs[p]!;
    const allowed = limits.allowed === null ? -1 : limits.allowed[this.sectionOf[p]!]!;
    const row = p * this.instance.candidates.length;
    const to = p * width;
    const bonus = held >= 0 ? must : 0;
    if (held >= 0) this.needed++;
    let isPlaced = held < 0;
    for (let j = 0; j < width; j++) {
      const c = stack[j]!;
      const plain = playerCost[row + c]!;
      const isOpen = plain !== cannot && (held < 0 || held === c) && ((allowed >> j) & 1) === 1;
      if (isOpen && held === c) isPlaced = true;
      cost[to + j] = isOpen ? rankOf(plain, chair, j) - bonus : far;
    }
    return isPlaced;
  }

  private countNeeded(): void {
    const { allowed, mustFillAllowed, sectionMustSound } = this.limits;
    for (let s = 0; s < this.sections; s++) {
      if (sectionMustSound !== null) this.needed += sectionMustSound[s]!;
      if (!mustFillAllowed || allowed === null) continue;
      for (let j = 0; j < this.width; j++) this.needed += (allowed[s]! >> j) & 1;
    }
  }

  /** Cost of one more player of a section on a note that has some. */
  private sectionCost(s: Count, j: Count, already: Count): Count {
    const step = this.sectionStep[j * this.counts + already]!;
    if (already > 0 || !this.limits.mustFillAllowed) return step;
    const { allowed } = this.limits;
    return allowed !== null && ((allowed[s]! >> j) & 1) === 1 ? step - must : step;
  }
}
