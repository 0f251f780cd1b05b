import type { Player } from "../band/index.ts";
import type { RoleCode } from "./stack-cost-table.ts";

/** A cost that stands for "cannot". */
export const cannot = 0x3fffffff;

/**
 * A question turned into numbers: what the search works on and what the printed problem holds.
 * Candidates are indexed from the top down: index 0 is the highest. A set of candidates is a pair
 * of 32-bit words; index i < 32 is bit 31 − i of the first word, so that comparing words as
 * unsigned numbers compares stacks with the higher notes first.
 */
export interface Instance {
  /** MIDI notes, highest first; at most 64. */
  readonly candidates: Int32Array;
  readonly leadIndex: number;
  /** True when the lead must be the highest note (rule H1). */
  readonly leadOnTop: boolean;
  readonly roles: readonly RoleCode[];
  /** Players that take part, in the question's order. */
  readonly players: readonly Player[];
  /** Index into the question's players, for each of `players`. */
  readonly questionIndex: readonly number[];
  readonly sectionNames: readonly string[];
  /** Section of each player, index into `sectionNames`. */
  readonly sectionOf: Int32Array;
  readonly chairs: Int32Array;
  /** players × candidates, register + home + level; `cannot` where the player cannot. */
  readonly playerCost: Int32Array;
  /** The same for lines: register + level only. */
  readonly lineCost: Int32Array;
  /** Candidate each player is held to, or −1. */
  readonly heldTo: Int32Array;
  /** Two words a candidate: the candidates it may not sound with. */
  readonly conflicts: Int32Array;
  /** candidates × candidates (upper, lower): cost of them as neighbours, or `cannot`. */
  readonly neighbourCost: Int32Array;
  /** The same when the lower one is the lowest note of the stack. */
  readonly lowestNeighbourCost: Int32Array;
  /** The same for stacks of three. */
  readonly lowestNeighbourCostOfThree: Int32Array;
  /** Cost of a note inside the stack. */
  readonly innerCost: Int32Array;
  /** Cost of a note as the lowest one, or `cannot`. */
  readonly bottomCost: Int32Array;
  /** Pitch class group of each candidate, and the cost of each further member of that group. */
  readonly classOf: Int32Array;
  readonly copyCost: Int32Array;
  /** candidates × (players + 1): cost of player m + 1 on the note. */
  readonly sharedNoteCost: Int32Array;
  /** candidates × (players + 1): the same within one section. */
  readonly sharedInSectionCost: Int32Array;
  /** For each number of notes (index) the sets of which one must sound, two words a set. */
  readonly groupsByNotes: readonly Int32Array[];
  /** What was decided on the way, in words for the page. */
  readonly remarks: readonly string[];
}
