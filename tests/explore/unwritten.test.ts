import { describe, expect, it } from "vitest";
import { referencePoints, searchSteps, unwritten } from "../../src/explore/index.ts";
import { brokenRules, isCrossSection, voicingOf, type Atlas } from "../../src/voicing/index.ts";
import { ask } from "../voicing/support/questions.ts";

function atlasOf(question: ReturnType<typeof ask>): Atlas {
  const search = searchSteps(question, "free");
  let step = search.next();
  while (!step.done) step = search.next();
  return step.value;
}

describe("what one would not have written", () => {
  const question = ask("F13", "D5", "f");
  const { cells } = atlasOf(question);
  const found = unwritten(question, cells, referencePoints(question), 8);

  it("is a walk of several textures whose sections interlock and that break no rule", () => {
    expect(found.length).toBeGreaterThan(4);
    for (const { cell } of found) {
      const voicing = voicingOf(question, cell);
      expect(isCrossSection(voicing)).toBe(true);
      expect(brokenRules(voicing, question)).toEqual([]);
    }
  });

  it("gives each its reason and never the same texture twice", () => {
    for (const { reason } of found) expect(reason).toMatch(/^Its sections interlock \(.*\.$/);
    expect(new Set(found.map(({ cell }) => JSON.stringify(cell.key))).size).toBe(found.length);
  });

  it("has nothing to offer where only lines are possible", () => {
    const lines = cells.filter((cell) => cell.family === "line");
    expect(unwritten(question, lines, [], 8)).toEqual([]);
  });
});
