import { describe, expect, it } from "vitest";
import { groupColumns } from "../../src/drawing/group-columns.ts";

const rows = (count: number) => Array.from({ length: count }, (_, index) => index);
const sizes = (groups: readonly number[], columns: number) =>
  groupColumns(groups.map(rows), columns).map((column) => column.map((group) => group.length));

describe("sections shared out over columns", () => {
  it("stand one to a column where there is room", () => {
    expect(sizes([5, 4, 4], 3)).toEqual([[5], [4], [4]]);
    expect(sizes([5, 4, 4], 7)).toEqual([[5], [4], [4]]);
  });

  it("keep the tallest column short and the order", () => {
    expect(sizes([5, 4, 4], 2)).toEqual([[5], [4, 4]]);
    expect(sizes([2, 2, 5], 2)).toEqual([[2, 2], [5]]);
  });

  it("stand under each other in one column", () => {
    expect(sizes([5, 4, 4], 1)).toEqual([[5, 4, 4]]);
    expect(sizes([5, 4, 4], 0)).toEqual([[5, 4, 4]]);
  });

  it("need no column for nobody", () => {
    expect(sizes([], 3)).toEqual([]);
  });
});
