import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createHistory, record, redo, undo, type History } from "../../src/explore/index.ts";

const afterSteps = (steps: readonly number[], limit?: number): History<number> =>
  steps.reduce((history, step) => record(history, step), createHistory(0, limit));

describe("a history", () => {
  it("has nothing to undo or redo at first", () => {
    const history = createHistory("a");
    expect(undo(history)).toBe(history);
    expect(redo(history)).toBe(history);
  });

  it("goes back and forth over any steps", () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { maxLength: 20 }), (steps) => {
        const whole = [0, ...steps];
        let history = afterSteps(steps);
        for (const step of [...whole].reverse()) {
          expect(history.present).toBe(step);
          history = undo(history);
        }
        for (const step of whole) {
          expect(history.present).toBe(step);
          history = redo(history);
        }
      }),
      { seed: 7 },
    );
  });

  it("forgets what could be redone once another step is taken", () => {
    const branched = record(undo(afterSteps([1, 2])), 3);
    expect(redo(branched)).toBe(branched);
    expect(undo(branched).present).toBe(1);
  });

  it("keeps no more steps than its limit, the latest ones", () => {
    let history = afterSteps([1, 2, 3, 4], 2);
    history = undo(undo(undo(history)));
    expect(history.present).toBe(2);
  });
});
