import { describe, expect, it } from "vitest";
import {
  cellAt,
  cellWithPlayers,
  countsByPlayers,
  nearestCell,
  neighbourCell,
} from "../../src/ui/state/places.ts";
import { placesAround } from "../../src/ui/map/map-places.ts";
import type { AtlasCell } from "../../src/voicing/index.ts";

const cell = (
  span: number,
  notes: number,
  players: number,
  family: AtlasCell["family"] = "harmony",
): AtlasCell => ({ key: { span, notes, players }, cost: 0, chairCost: 0, pitches: [], family });

const cells = [
  cell(11, 4, 4),
  cell(12, 4, 4),
  cell(12, 5, 5),
  cell(26, 4, 4),
  cell(26, 5, 4),
  cell(24, 3, 4, "line"),
  cell(24, 3, 4),
];

describe("walking the map", () => {
  it("stays in its row, over gaps, and stops at the edge", () => {
    expect(neighbourCell(cells, { span: 12, notes: 4, players: 4 }, "wider")?.key.span).toBe(26);
    expect(neighbourCell(cells, { span: 12, notes: 4, players: 4 }, "narrower")?.key.span).toBe(11);
    expect(neighbourCell(cells, { span: 11, notes: 4, players: 4 }, "narrower")).toBeUndefined();
    expect(neighbourCell(cells, { span: 26, notes: 4, players: 4 }, "more")?.key.notes).toBe(5);
  });

  it("leaves a row only where it ends", () => {
    const next = neighbourCell(cells, { span: 26, notes: 5, players: 4 }, "narrower");
    expect(next?.key).toEqual({ span: 12, notes: 4, players: 4 });
  });

  it("takes the same texture with more players where there is one, else the nearest", () => {
    const more = cellWithPlayers(cells, { span: 11, notes: 4, players: 4 }, 1);
    expect(more?.key).toEqual({ span: 12, notes: 5, players: 5 });
    expect(cellWithPlayers(cells, { span: 12, notes: 5, players: 5 }, 1)).toBeUndefined();
  });

  it("prefers harmony where a line shares the place", () => {
    expect(cellAt(cells, { span: 24, notes: 3, players: 4 })?.family).toBe("harmony");
    expect(placesAround(cells, 4).cells.filter((one) => one.family === "line")).toEqual([]);
  });

  it("finds the nearest place with as many players first", () => {
    expect(nearestCell(cells, { span: 30, notes: 6, players: 5 })?.key.players).toBe(5);
    expect(nearestCell([], { span: 30, notes: 6, players: 5 })).toBeUndefined();
  });

  it("counts the textures of each number of players", () => {
    expect(countsByPlayers(cells)).toEqual([
      { players: 4, textures: 6 },
      { players: 5, textures: 1 },
    ]);
  });
});

describe("places that other numbers of players reach", () => {
  it("say which numbers in short", () => {
    const others = placesAround(cells, 5).others;
    expect(others.find((one) => one.span === 11)?.text).toBe("≤4");
    expect(placesAround(cells, 4).others[0]?.text).toBe("≥5");
  });
});
