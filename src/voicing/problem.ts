import { ok, type Result } from "../base/index.ts";
import { buildInstance } from "./instance.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { isInSet } from "./stack-sets.ts";
import { restrictedTo, type SearchOptions } from "./search-options.ts";
import type { Atlas, AtlasCell, CellKey, LayerId, Question } from "./voicing-types.ts";

/** Two candidates that may be neighbours in the stack, and what that costs. */
export interface PrintedNeighbours {
  readonly upper: number;
  readonly lower: number;
  readonly cost: number;
}

/** A player of the printed problem; `null` in `cost` means that the player cannot. */
export interface PrintedPlayer {
  readonly id: string;
  readonly section: string;
  readonly chair: number;
  /** Candidate the player must sound, or null. */
  readonly heldTo: number | null;
  readonly cost: readonly (number | null)[];
  /** Cost in lines (unison and octaves). */
  readonly lineCost: readonly (number | null)[];
}

/** Facts of one cell and the answer we claim for it. */
export interface PrintedCell extends CellKey {
  readonly family: AtlasCell["family"];
  /** Pairs of highest and lowest candidate that give this span, with the cost of the lowest. */
  readonly ends: readonly {
    readonly top: number;
    readonly bottom: number;
    readonly bottomCost: number;
  }[];
  /** Of each group one candidate must sound. */
  readonly oneOf: readonly (readonly number[])[];
  readonly claimed: {
    readonly cost: number;
    readonly chairCost: number;
    /** Candidates of the stack, highest first. */
    readonly stack: readonly number[];
    /** Candidate of each player, null for rest. */
    readonly places: readonly (number | null)[];
  };
}

/** An atlas as a numeric problem with claimed answers; needs nothing of this project to check. */
export interface PrintedProblem {
  readonly format: "hornweave-atlas-problem";
  readonly version: 1;
  readonly about: readonly string[];
  readonly layer: LayerId;
  /** Every one of these sections must sound; empty when any may rest. */
  readonly mustSound: readonly string[];
  /** MIDI note of each candidate, highest first; everything else refers to positions here. */
  readonly candidates: readonly number[];
  readonly lead: number;
  readonly players: readonly PrintedPlayer[];
  readonly forbiddenPairs: readonly (readonly [number, number])[];
  readonly neighbours: readonly PrintedNeighbours[];
  readonly lowestNeighbours: readonly PrintedNeighbours[];
  readonly lowestNeighboursOfThree: readonly PrintedNeighbours[];
  readonly innerCost: readonly number[];
  readonly copies: readonly { readonly members: readonly number[]; readonly each: number }[];
  readonly sharedNote: readonly (readonly number[])[];
  readonly sharedInSection: readonly (readonly number[])[];
  readonly cells: readonly PrintedCell[];
}

const about: readonly string[] = [
  "A stack is a set of candidates; its highest and lowest are one pair of the cell's ends, and it holds the lead.",
  "No forbidden pair is in a stack. Each note and the next one below must be listed in neighbours; the lowest pair instead in lowestNeighbours, or in lowestNeighboursOfThree when the cell has three notes.",
  "Of each group in the cell's oneOf at least one candidate is in the stack.",
  "Exactly `players` players sound, each on one note of the stack where the player's cost is not null; each note of the stack has at least one; a player with heldTo sounds that note.",
  "Cost = sum of neighbour costs + innerCost of every note but the lowest + the end's bottomCost + for each group in copies (members in the stack − 1) · each + players' costs + for each note the first m entries of sharedNote, m = players on it + for each note and section the first m entries of sharedInSection, m = players of that section on it.",
  "Among equal costs the lowest chairCost wins: the sum of chair · (12 − depth), depth 0 for the highest note of the stack; then the stack with the higher note where two first differ from the top; then players in order, higher note first, rest last.",
  "Layer by-section: the notes of every sounding section follow one another in the stack without a gap; three or more of its players take at least three notes (two in stacks of up to four notes). Layer crossed: no section sounds two neighbouring notes. Layer free: neither.",
  "Cells of family line: every note is the lead or octaves below it; only players' lineCost counts, and none of the rules of harmony.",
];

/**
 * Prints an atlas as a numeric problem from which the answers can be found again without this
 * project's code.
 * @param question - the question
 * @param atlas - its atlas
 * @param options - layer and sections it was searched with
 * @returns the problem, or what is wrong with the question
 */
export function printProblem(
  question: Question,
  atlas: Atlas,
  options: SearchOptions = {},
): Result<PrintedProblem> {
  const restricted = restrictedTo(question, options.sections);
  if (!restricted.ok) return restricted;
  const built = buildInstance(restricted.value);
  if (!built.ok) return built;
  const instance = built.value;
  return ok({
    format: "hornweave-atlas-problem",
    version: 1,
    about,
    layer: atlas.layer,
    mustSound: options.sections ?? [],
    candidates: [...instance.candidates],
    lead: instance.leadIndex,
    players: playersOf(instance),
    forbiddenPairs: pairsOf(instance),
    neighbours: neighboursOf(instance, instance.neighbourCost),
    lowestNeighbours: neighboursOf(instance, instance.lowestNeighbourCost),
    lowestNeighboursOfThree: neighboursOf(instance, instance.lowestNeighbourCostOfThree),
    innerCost: [...instance.innerCost].map((cost, c) => (c === instance.leadIndex ? 0 : cost)),
    copies: copiesOf(instance),
    sharedNote: rowsOf(instance, instance.sharedNoteCost),
    sharedInSection: rowsOf(instance, instance.sharedInSectionCost),
    cells: atlas.cells.map((cell) => cellOf(instance, cell, question)),
  });
}

const orNull = (cost: number): number | null => (cost === cannot ? null : cost);

function playersOf(instance: Instance): readonly PrintedPlayer[] {
  const size = instance.candidates.length;
  const row = (costs: Int32Array, p: number): readonly (number | null)[] =>
    Array.from(costs.subarray(p * size, (p + 1) * size), orNull);
  return instance.players.map((player, p) => ({
    id: player.id,
    section: player.section,
    chair: player.chair,
    heldTo: (instance.heldTo[p] ?? -1) < 0 ? null : (instance.heldTo[p] ?? null),
    cost: row(instance.playerCost, p),
    lineCost: row(instance.lineCost, p),
  }));
}

function pairsOf(instance: Instance): readonly (readonly [number, number])[] {
  const pairs: [number, number][] = [];
  const size = instance.candidates.length;
  for (let upper = 0; upper < size; upper++)
    for (let lower = upper + 1; lower < size; lower++) {
      const high = instance.conflicts[2 * upper] ?? 0;
      const low = instance.conflicts[2 * upper + 1] ?? 0;
      if (isInSet(high, low, lower)) pairs.push([upper, lower]);
    }
  return pairs;
}

function neighboursOf(instance: Instance, costs: Int32Array): readonly PrintedNeighbours[] {
  const size = instance.candidates.length;
  const found: PrintedNeighbours[] = [];
  for (let upper = 0; upper < size; upper++)
    for (let lower = upper + 1; lower < size; lower++) {
      const cost = costs[upper * size + lower] ?? cannot;
      if (cost !== cannot) found.push({ upper, lower, cost });
    }
  return found;
}

function copiesOf(instance: Instance): PrintedProblem["copies"] {
  const groups = new Map<number, number[]>();
  instance.classOf.forEach((group, c) => groups.set(group, [...(groups.get(group) ?? []), c]));
  return [...groups.values()].map((members) => ({
    members,
    each: instance.copyCost[members[0] ?? 0] ?? 0,
  }));
}

function rowsOf(instance: Instance, table: Int32Array): readonly (readonly number[])[] {
  const counts = instance.players.length + 1;
  return Array.from(instance.candidates, (_, c) => [
    ...table.subarray(c * counts, (c + 1) * counts - 1),
  ]);
}

function cellOf(instance: Instance, cell: AtlasCell, question: Question): PrintedCell {
  const { candidates } = instance;
  const places = instance.questionIndex.map((index) => {
    const pitch = cell.pitches[index] ?? 0;
    return pitch === 0 ? null : candidates.indexOf(pitch);
  });
  const stack = [...new Set(places.filter((place) => place !== null))].sort((a, b) => a - b);
  const groups = instance.groupsByNotes[cell.key.notes] ?? new Int32Array();
  const beside = question.octaveAbovePlayer === undefined ? 0 : 1;
  return {
    ...cell.key,
    players: cell.key.players - beside,
    family: cell.family,
    ends: endsOf(instance, cell),
    oneOf: cell.family === "line" ? [] : groupsOf(groups, candidates.length),
    claimed: { cost: cell.cost, chairCost: cell.chairCost, stack, places },
  };
}

function groupsOf(words: Int32Array, size: number): readonly (readonly number[])[] {
  const groups: number[][] = [];
  for (let at = 0; at < words.length; at += 2)
    groups.push(
      Array.from({ length: size }, (_, c) => c).filter((c) =>
        isInSet(words[at] ?? 0, words[at + 1] ?? 0, c),
      ),
    );
  return groups;
}

function endsOf(instance: Instance, cell: AtlasCell): PrintedCell["ends"] {
  const { candidates, leadIndex, leadOnTop, bottomCost } = instance;
  const ends: { top: number; bottom: number; bottomCost: number }[] = [];
  for (let top = leadOnTop ? leadIndex : 0; top <= leadIndex; top++) {
    const bottom = candidates.indexOf((candidates[top] ?? 0) - cell.key.span);
    const cost = cell.family === "line" ? 0 : (bottomCost[bottom] ?? cannot);
    if (bottom >= leadIndex && cost !== cannot) ends.push({ top, bottom, bottomCost: cost });
  }
  return ends;
}
