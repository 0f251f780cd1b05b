import { describe, expect, it } from "vitest";
import { dynamics } from "../../src/band/index.ts";
import { LOUDEST_STEP, dynamicAt, positionOf } from "../../src/audio/dynamic-steps.ts";

describe("steps of dynamics", () => {
  it("number the marks from soft to loud and back", () => {
    expect(dynamics.map(positionOf)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    for (const dynamic of dynamics) expect(dynamicAt(positionOf(dynamic))).toBe(dynamic);
    expect(dynamicAt(LOUDEST_STEP)).toBe("fff");
  });

  it("stay on the row", () => {
    expect(dynamicAt(-2)).toBe("ppp");
    expect(dynamicAt(12)).toBe("fff");
  });
});
