import { describe, expect, it } from "vitest";
import fc from "fast-check";
import type { SoundingMidi } from "../../src/base/index.ts";
import { MoveMemory, type MoveSituation } from "../../src/phrase/move-cost.ts";
import {
  pathThrough,
  solveLast,
  solveStage,
  type Solved,
  type Step,
} from "../../src/phrase/path.ts";
import { linesCost } from "../../src/phrase/search-phrase.ts";
import type { Stage } from "../../src/phrase/stages.ts";
import { playersOf } from "./support/phrases.ts";

const players = playersOf("three-horn");
const width = players.length;

const pitch = (index: number) =>
  fc.oneof(
    fc.constant(0),
    fc.integer({ min: players[index]!.range.low, max: players[index]!.range.high }),
  );
const row = fc.tuple(pitch(0), pitch(1), pitch(2));
const drawnStage = fc.array(fc.tuple(row, fc.nat(6), fc.nat(6), fc.constantFrom(0, 4)), {
  minLength: 1,
  maxLength: 4,
});
const situation: fc.Arbitrary<MoveSituation> = fc.record({
  speed: fc.constantFrom("fast", "medium", "slow"),
  isMelodyMoving: fc.boolean(),
  isAfterRest: fc.boolean(),
});
const lead = fc.integer({ min: 60, max: 75 }).map((midi) => midi as SoundingMidi);
const drawnStep: fc.Arbitrary<Step> = fc.record({ situation, leadBefore: lead, leadAfter: lead });

type Drawn = readonly (readonly [readonly number[], number, number, number])[];

function stageOfRows(rows: Drawn, into?: readonly number[]): Stage {
  return {
    count: rows.length,
    pitches: Uint8Array.from(rows.flatMap(([pitches]) => pitches)),
    voicing: Int32Array.from(rows, ([, voicing]) => voicing),
    texture: Int32Array.from(rows, ([, , texture]) => texture),
    chairs: Int32Array.from(rows, ([, , , chairs]) => chairs),
    ...(into ? { into: Int32Array.from(into) } : {}),
    remark: "",
  };
}

function solve(stages: readonly Stage[], steps: readonly Step[]): readonly Solved[] {
  const memory = new MoveMemory();
  const solved = new Array<Solved>(stages.length);
  for (let n = stages.length - 1; n >= 0; n--)
    solved[n] =
      n === stages.length - 1
        ? solveLast(stages[n]!)
        : solveStage(players, stages[n]!, stages[n + 1]!, solved[n + 1]!, steps[n]!, memory);
  return solved;
}

const pitchesOf = (stage: Stage, at: number) => [
  ...stage.pitches.subarray(at * width, (at + 1) * width),
];

function costOfPath(
  stages: readonly Stage[],
  steps: readonly Step[],
  rows: readonly number[],
): number {
  return rows.reduce((sum, at, n) => {
    const stage = stages[n]!;
    const own = stage.voicing[at]! + stage.texture[at]! + stage.chairs[at]!;
    const lines =
      n === 0
        ? 0
        : linesCost(
            { players },
            pitchesOf(stages[n - 1]!, rows[n - 1]!),
            pitchesOf(stage, at),
            steps[n - 1]!,
          );
    return sum + own + lines;
  }, 0);
}

/** Every sequence of rows that keeps to the blocks, in order. */
function everyPath(stages: readonly Stage[]): readonly (readonly number[])[] {
  let paths: readonly (readonly number[])[] = [[]];
  stages.forEach((stage, n) => {
    const before = stages[n - 1];
    paths = paths.flatMap((path) =>
      Array.from({ length: stage.count }, (_, at) => [...path, at]).filter(
        (longer) => !before?.into || before.into[longer.at(-2)!] === longer.at(-1),
      ),
    );
  });
  return paths;
}

/** The cheapest path, the first in order among equals. */
function byBruteForce(stages: readonly Stage[], steps: readonly Step[]) {
  let best: { readonly rows: readonly number[]; readonly cost: number } | undefined;
  for (const rows of everyPath(stages)) {
    const cost = costOfPath(stages, steps, rows);
    if (!best || cost < best.cost) best = { rows, cost };
  }
  return best;
}

describe("the path through candidates", () => {
  it("costs what brute force finds, and is the first in order among equals", () =>
    fc.assert(
      fc.property(
        fc.array(drawnStage, { minLength: 1, maxLength: 5 }),
        fc.array(drawnStep, { minLength: 4, maxLength: 4 }),
        (drawn, steps) => {
          const stages = drawn.map((rows) => stageOfRows(rows));
          const solved = solve(stages, steps);
          const rows = pathThrough(solved);
          const best = byBruteForce(stages, steps);
          expect(solved[0]!.best[rows[0]!]).toBe(best?.cost);
          expect(costOfPath(stages, steps, rows)).toBe(best?.cost);
          expect(rows).toEqual(best?.rows);
        },
      ),
      { seed: 7, numRuns: 300 },
    ));

  it("keeps to blocks: a moment that moves as one goes into its own voicing, moved", () =>
    fc.assert(
      fc.property(
        drawnStage,
        drawnStage,
        drawnStage,
        drawnStep,
        drawnStep,
        fc.array(fc.nat(), { minLength: 4, maxLength: 4 }),
        (a, b, c, first, second, draws) => {
          const into = b.map((_, n) => draws[n]! % c.length);
          const stages = [stageOfRows(a), stageOfRows(b, into), stageOfRows(c)];
          const steps = [first, second];
          const solved = solve(stages, steps);
          const rows = pathThrough(solved);
          expect(into[rows[1]!]).toBe(rows[2]);
          expect(rows).toEqual(byBruteForce(stages, steps)?.rows);
        },
      ),
      { seed: 7, numRuns: 200 },
    ));

  it("is empty without stages", () => expect(pathThrough([])).toEqual([]));
});
