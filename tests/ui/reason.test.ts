import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reasonFor } from "../../src/ui/voicing/reason.ts";
import type { Cost } from "../../src/voicing/index.ts";

const costOf = (terms: readonly Omit<Cost["terms"][number], "subject">[]): Cost => ({
  terms: terms.map((term) => ({ ...term, subject: "" })),
  total: terms.reduce((sum, term) => sum + term.value, 0),
});

describe("the reason", () => {
  it("names what is dearer and what is saved against the best here", () => {
    const best = costOf([
      { id: "S1", value: 1, text: "F2 and A3 lie far apart" },
      { id: "N1", value: 2, text: "E♭4 has three players" },
    ]);
    const cost = costOf([
      { id: "S1", value: 1, text: "F2 and A3 lie far apart" },
      { id: "C1", value: 4, text: "trombone 1 is high" },
    ]);
    expect(reasonFor(cost, best)).toEqual({
      over: 2,
      parts: [
        { text: "trombone 1 is high", value: 4 },
        { text: "E♭4 has three players", value: -2 },
      ],
    });
  });

  it("lists the whole cost where there is nothing to compare with, or nothing over", () => {
    const cost = costOf([{ id: "S1", value: 3, text: "wide" }]);
    expect(reasonFor(cost, null)).toEqual({ over: null, parts: [{ text: "wide", value: 3 }] });
    expect(reasonFor(cost, cost)).toEqual({ over: 0, parts: [{ text: "wide", value: 3 }] });
  });

  it("always adds up to its number", () => {
    const terms = fc.array(
      fc.record({
        id: fc.constantFrom("S1", "C1", "N1"),
        value: fc.integer({ min: -3, max: 12 }),
        text: fc.constantFrom("a", "b", "c", "d"),
      }),
    );
    fc.assert(
      fc.property(terms, terms, (one, other) => {
        const [cost, best] = [costOf(one), costOf(other)];
        const { over, parts } = reasonFor(cost, best);
        const sum = parts.reduce((total, part) => total + part.value, 0);
        expect(sum).toBe(over === 0 ? cost.total : over);
      }),
      { seed: 7 },
    );
  });
});
