import { describe, expect, it } from "vitest";
import { lineUpById } from "../../src/band/index.ts";
import {
  bestOfCell,
  cellOf,
  firstInquiry,
  readInquiry,
  searchSteps,
  voicingOfCell,
  whyEmpty,
} from "../../src/explore/index.ts";
import type { Atlas, AtlasCell, Question } from "../../src/voicing/index.ts";

function questionOf(change: Partial<ReturnType<typeof firstInquiry>>): Question {
  const band = lineUpById("four-horn");
  if (!band.ok) throw new Error(band.problem.message);
  const reading = readInquiry({ ...firstInquiry(), players: band.value.players, ...change });
  if (!reading.ok) throw new Error(reading.problems[0]?.message);
  return reading.question;
}

function searched(question: Question, layer: Atlas["layer"] = "free") {
  const streamed: AtlasCell[] = [];
  const steps = searchSteps(question, layer);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return { atlas: step.value, streamed };
    streamed.push(...step.value.cells);
  }
}

const question = questionOf({});

describe("a search in steps", () => {
  it("streams every cell of the atlas once, and never takes one back", () => {
    const { atlas, streamed } = searched(question);
    const inOrder = (cells: readonly AtlasCell[]) =>
      cells.map((cell) => JSON.stringify(cell)).sort();
    expect(inOrder(streamed)).toEqual(inOrder(atlas.cells));
  });

  it("gives each cell a voicing that lies in it", () => {
    for (const cell of searched(question).atlas.cells)
      expect(cellOf(voicingOfCell(question, cell))).toEqual(cell.key);
  });

  it("agrees with the best of a cell asked for alone", () => {
    const cell = searched(question).atlas.cells.find(({ family }) => family === "harmony");
    if (cell === undefined) throw new Error("four horns can harmonise F13 under D5");
    const [best, next] = bestOfCell(question, cell.key, "free", 2);
    expect(best).toEqual(cell);
    if (next !== undefined) expect(next.cost).toBeGreaterThanOrEqual(cell.cost);
  });

  it("throws for a question that was never checked", () => {
    expect(() => searchSteps({ ...question, players: [] }, "free")).toThrow(RangeError);
  });
});

describe("an empty answer", () => {
  it("comes with the rules each of which alone would open it", () => {
    const low = questionOf({
      chordText: "Cmaj7",
      melodyText: "D3",
      players: firstInquiry().players,
    });
    expect(searched(low, "crossed").atlas.cells).toEqual([]);
    const rules = whyEmpty(low, "crossed");
    expect(rules.length).toBeGreaterThan(0);
    for (const rule of rules) {
      const opened = { ...low, rules: { ...low.rules, [rule]: false } };
      expect(searched(opened, "crossed").atlas.cells.length).toBeGreaterThan(0);
    }
  });
});
