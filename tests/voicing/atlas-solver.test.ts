import highsLoader from "highs";
import { describe, expect, it } from "vitest";
import type { Question, SearchOptions } from "../../src/voicing/index.ts";
import { drawnProblem, judged } from "./support/solver-check.ts";
import { ask } from "./support/questions.ts";

/**
 * The claimed optimum of a full band against an independent, general-purpose solver: HiGHS
 * (Q. Huangfu and J. A. J. Hall, Parallelizing the dual revised simplex method, 2018), fed with
 * nothing but the printed problem. Forty-four cells here; some 250 more in tests/bench.
 */
const highs = await highsLoader();

function check(question: Question, options: SearchOptions, count: number, seed: number): void {
  const verdict = judged(drawnProblem(question, options, count, seed), highs);
  expect(verdict.disagreements).toEqual([]);
  expect(verdict.cells).toBe(count);
}

const f13 = ask("F13", "D5", "f");

describe("the claimed optimum of a full big band", () => {
  it("equals that of a general-purpose solver on the free layer of F13 under D5", () => {
    check(f13, {}, 12, 1);
  });

  it("equals it for a minor ninth at mf and a diminished chord at p", () => {
    check(ask("Cm9", "Bb4", "mf"), {}, 8, 2);
    check(ask("C°7", "C5", "p"), {}, 4, 3);
  });

  it("equals it in the layer by section", () => {
    check(f13, { layer: "by-section" }, 8, 4);
  });

  it("equals it in the crossed layer", () => {
    check(f13, { layer: "crossed" }, 8, 5);
  });

  it("equals it when trumpets and saxes must sound and trombones rest", () => {
    check(f13, { sections: ["trumpets", "saxes"] }, 4, 6);
  });
}, 240_000);
