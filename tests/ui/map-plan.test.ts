import { describe, expect, it } from "vitest";
import { draftPath, draftRows } from "../../src/ui/map/draft.ts";
import { deskSizes, gapsOf, mapPlan, rowWindow, scrollFor } from "../../src/ui/map/map-plan.ts";
import { shadeEnds, shadeStep, shareOf } from "../../src/ui/map/shade-step.ts";
import { tableRows } from "../../src/ui/map/table-rows.ts";
import type { AtlasCell } from "../../src/voicing/index.ts";

const spans = [5, 11, 12, 14, 17, 19, 21, 23, 24, 26, 33];
const plan = mapPlan(spans, [2, 13], { width: 440, ...deskSizes });

describe("the map's plan", () => {
  it("gives every span its column, wider to the right, and every count its row, finer upwards", () => {
    const lefts = spans.map(plan.xOf);
    expect([...lefts].sort((a, b) => a - b)).toEqual(lefts);
    expect(plan.yOf(13)).toBe(0);
    expect(plan.yOf(2)).toBe(11 * deskSizes.rowStep);
    expect(plan.rows).toEqual([13, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2]);
  });

  it("hatches a wide stretch without places and none of the narrow ones", () => {
    expect(plan.gaps.map(({ from, to }) => [from, to])).toEqual([[27, 32]]);
    expect(gapsOf(spans)).toEqual([{ from: 27, to: 32 }]);
  });

  it("puts a span without a column between its neighbours", () => {
    expect(plan.xOf(30)).toBeGreaterThan(plan.xOf(26));
    expect(plan.xOf(30)).toBeLessThan(plan.xOf(33));
  });

  it("keeps targets of 24 pixels at least, scrolling sideways where spans are many", () => {
    const many = mapPlan(
      Array.from({ length: 40 }, (_, span) => span),
      [3, 9],
      { width: 440, ...deskSizes },
    );
    expect(many.placeWidth).toBeGreaterThanOrEqual(24);
    const to = scrollFor(many, 30, 0, 440);
    expect(many.xOf(30)).toBeGreaterThan(to);
    expect(many.xOf(30) + many.placeWidth).toBeLessThan(to + 440);
    expect(scrollFor(many, 30, to, 440)).toBe(to);
    expect(scrollFor(plan, 33, 0, 480)).toBe(0);
  });

  it("shows a window of rows around the place on a small screen", () => {
    const rows = [2, 3, 4, 5, 6, 7, 8, 9];
    expect(rowWindow(rows, 6, 5)).toEqual([4, 8]);
    expect(rowWindow(rows, 2, 5)).toEqual([2, 6]);
    expect(rowWindow(rows, 9, 5)).toEqual([5, 9]);
  });
});

describe("a weaving draft", () => {
  it("has a row for each note, top first, with the sections that sound it", () => {
    const rows = draftRows([
      { section: "trumpets", pitch: 74 },
      { section: "saxes", pitch: 74 },
      { section: "trombones", pitch: 41 },
    ]);
    expect(rows.map((row) => [...row])).toEqual([["trumpets", "saxes"], ["trombones"]]);
    const box = { x: 0, y: 0, width: 30, height: 20 };
    expect(draftPath(rows, "trumpets", box).match(/M/g)?.length).toBe(1);
    expect(draftPath(rows, "rhythm", box)).not.toContain("NaN");
  });
});

describe("shades", () => {
  it("are five equal steps of the measure's own scale", () => {
    expect([0, 0.19, 0.2, 0.5, 0.99, 1].map((value) => shadeStep(value, [0, 1]))).toEqual([
      0, 0, 1, 2, 4, 4,
    ]);
    expect(shadeStep(null, [0, 1])).toBeNull();
    expect(shareOf(60, [0, 50])).toBe(1);
    expect(shadeEnds([0, 1])).toEqual(["0.2", "0.4", "0.6", "0.8", "1"]);
  });
});

describe("the table", () => {
  it("sorts by any column and puts what is not measured last", () => {
    const cell = (span: number, notes: number): AtlasCell => ({
      key: { span, notes, players: 4 },
      cost: 0,
      chairCost: 0,
      pitches: [],
      family: "harmony",
    });
    const cells = [cell(12, 4), cell(5, 3), cell(26, 4)];
    const shades = new Map([
      ["12/4/4", { value: 0.5, text: "0.50" }],
      ["5/3/4", { value: null, text: "none" }],
      ["26/4/4", { value: 0.1, text: "0.10" }],
    ]);
    const order = (by: "span" | "measure", isFalling: boolean) =>
      tableRows(cells, shades, by, isFalling).map((row) => row.cell.key.span);
    expect(order("span", false)).toEqual([5, 12, 26]);
    expect(order("measure", false)).toEqual([26, 12, 5]);
    expect(order("measure", true)).toEqual([12, 26, 5]);
  });
});
