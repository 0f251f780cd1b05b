import highsLoader from "highs";
import { describe, expect, it } from "vitest";
import { seededChance } from "../../src/base/index.ts";
import type { Atlas, LayerId, Question } from "../../src/voicing/index.ts";
import { bestOfCell, searchAtlas } from "../../src/voicing/index.ts";
import { printProblem, type PrintedProblem } from "../../src/voicing/problem.ts";
import { asProgramme } from "./support/mixed-integer.ts";
import { ask } from "./support/questions.ts";

/**
 * The claimed optimum of a full band against an independent, general-purpose solver: HiGHS
 * (Q. Huangfu and J. A. J. Hall, Parallelizing the dual revised simplex method, 2018), fed with
 * nothing but the printed problem.
 */
const highs = await highsLoader();

function atlasOf(question: Question): Atlas {
  const search = searchAtlas(question);
  if (!search.ok) throw new Error(search.problem.message);
  let step = search.value.next();
  while (!step.done) step = search.value.next();
  return step.value;
}

function printed(question: Question, atlas: Atlas): PrintedProblem {
  const problem = printProblem(question, atlas, { layer: atlas.layer });
  if (!problem.ok) throw new Error(problem.problem.message);
  return problem.value;
}

/** A drawn part of the atlas, its cells replaced by the best of a layer where one is asked for. */
function drawn(question: Question, layer: LayerId, count: number, seed: number): PrintedProblem {
  const chance = seededChance(seed);
  const atlas = atlasOf(question);
  const harmony = atlas.cells.filter((cell) => cell.family === "harmony" && cell.key.notes < 10);
  const some = Array.from({ length: count }, () => harmony[Math.floor(chance() * harmony.length)]!);
  if (layer === "free") return printed(question, { ...atlas, cells: some });
  const cells = some.flatMap(({ key }) => {
    const best = bestOfCell(question, key, 1, { layer });
    return best.ok ? best.value.filter((cell) => cell.family === "harmony") : [];
  });
  return printed(question, { ...atlas, layer, cells });
}

function check(problem: PrintedProblem): number {
  for (const cell of problem.cells) {
    const solution = highs.solve(asProgramme(problem, cell));
    const name = `${cell.span} semitones, ${cell.notes} notes, ${cell.players} players`;
    expect(solution.Status, name).toBe("Optimal");
    expect(Math.round(solution.ObjectiveValue), name).toBe(cell.claimed.cost);
  }
  return problem.cells.length;
}

describe("the claimed optimum of a full big band", () => {
  it("equals that of a general-purpose solver on the free layer of F13 under D5", () => {
    expect(check(drawn(ask("F13", "D5", "f"), "free", 12, 1))).toBe(12);
  });

  it("equals it for a minor ninth at mf and a diminished chord at p", () => {
    expect(check(drawn(ask("Cm9", "Bb4", "mf"), "free", 8, 2))).toBe(8);
    expect(check(drawn(ask("C°7", "C5", "p"), "free", 4, 3))).toBe(4);
  });

  it("equals it in the layer by section", () => {
    expect(check(drawn(ask("F13", "D5", "f"), "by-section", 9, 4))).toBeGreaterThan(5);
  });

  it("equals it in the crossed layer", () => {
    expect(check(drawn(ask("F13", "D5", "f"), "crossed", 9, 5))).toBeGreaterThan(5);
  });
}, 120_000);
