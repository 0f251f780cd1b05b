import type { Count } from "../base/index.ts";

/** What an assignment must respect beside costs. Positions count from the top of the stack. */
export interface AssignmentLimits {
  /** For each section the set of positions its players may take, bit = position. */
  readonly allowed: Int32Array | null;
  /** True: every allowed position of a section must have a player of that section. */
  readonly mustFillAllowed: boolean;
  /** Most players of each section. */
  readonly mostOfSection: Int32Array | null;
  /** For each section 1 when it must sound. */
  readonly sectionMustSound: Int32Array | null;
}

/** A stack of notes that players are given to. */
export interface StackToFill {
  /** Candidate indices, highest note first; may be longer than the stack. */
  readonly stack: Int32Array;
  /** How many of them count. */
  readonly notes: Count;
  readonly limits: AssignmentLimits;
}

/** Gives players to the notes of a stack at least cost, for every number of players at once. */
export interface Assigner {
  /** Least cost · chairScale + chair cost for k players, index k; `cannot` where impossible. */
  readonly values: Int32Array;
  /**
   * Solves one stack; read `values` afterwards.
   * @param asked - the stack
   * @param most - players to stop at
   */
  solve(asked: StackToFill, most: Count): void;
  /**
   * Solves one stack and tells who plays what: the first in order among equals, which is players
   * in their order, higher notes first, resting last.
   * @param asked - the stack
   * @param wanted - numbers of players, rising
   * @returns for each possible one the position in the stack by player, −1 for rest
   */
  placesFor(asked: StackToFill, wanted: readonly Count[]): ReadonlyMap<Count, Int32Array>;
}
