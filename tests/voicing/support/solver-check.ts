import type { Highs } from "highs";
import { seededChance } from "../../../src/base/index.ts";
import {
  bestOfCell,
  printProblem,
  searchAtlas,
  type Atlas,
  type AtlasCell,
  type PrintedProblem,
  type Question,
  type SearchOptions,
} from "../../../src/voicing/index.ts";
import { asProgramme } from "./mixed-integer.ts";

/** A cell on which the solver and the claimed answer do not agree. */
export interface Disagreement {
  readonly cell: string;
  readonly claimed: number;
  readonly solver: string;
}

/** What a solver said to a printed problem. */
export interface Verdict {
  readonly cells: number;
  readonly disagreements: readonly Disagreement[];
}

function atlasOf(question: Question, options: SearchOptions): Atlas {
  const search = searchAtlas(question, options);
  if (!search.ok) throw new Error(search.problem.message);
  let step = search.value.next();
  while (!step.done) step = search.value.next();
  return step.value;
}

/**
 * Draws cells of a question's atlas and prints them as a problem with claimed answers.
 * @param question - the question
 * @param options - layer and sections; beyond the free layer each cell is asked for on demand
 * @param count - how many cells; a cell that the layer does not reach is drawn again
 * @param seed - of the draw
 */
export function drawnProblem(
  question: Question,
  options: SearchOptions,
  count: number,
  seed: number,
): PrintedProblem {
  const chance = seededChance(seed);
  const { sections, layer = "free" } = options;
  const atlas = atlasOf(question, sections === undefined ? {} : { sections });
  const left = atlas.cells.filter(({ family }) => family === "harmony");
  const cells: AtlasCell[] = [];
  while (cells.length < count && left.length > 0) {
    const [drawn] = left.splice(Math.floor(chance() * left.length), 1);
    if (drawn === undefined) break;
    const best = layer === "free" ? drawn : bestInLayer(question, drawn, options);
    if (best) cells.push(best);
  }
  const printed = printProblem(question, { ...atlas, layer, cells }, options);
  if (!printed.ok) throw new Error(printed.problem.message);
  return printed.value;
}

function bestInLayer(
  question: Question,
  { key }: AtlasCell,
  options: SearchOptions,
): AtlasCell | undefined {
  const best = bestOfCell(question, key, 1, options);
  if (!best.ok) throw new Error(best.problem.message);
  return best.value.find(({ family }) => family === "harmony");
}

/** Has every cell of a printed problem solved by a general-purpose solver, from the print alone. */
export function judged(problem: PrintedProblem, highs: Pick<Highs, "solve">): Verdict {
  const disagreements = problem.cells.flatMap((cell): readonly Disagreement[] => {
    const solution = highs.solve(asProgramme(problem, cell));
    const isSolved = solution.Status === "Optimal";
    const solver = isSolved ? String(Math.round(solution.ObjectiveValue)) : solution.Status;
    if (solver === String(cell.claimed.cost)) return [];
    const name = `${cell.span} semitones, ${cell.notes} notes, ${cell.players} players`;
    return [{ cell: name, claimed: cell.claimed.cost, solver }];
  });
  return { cells: problem.cells.length, disagreements };
}
