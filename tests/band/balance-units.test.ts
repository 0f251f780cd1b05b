import { describe, expect, it } from "vitest";
import { balanceUnits } from "../../src/band/balance-units.ts";
import { balanceTable } from "../../src/band/balance-table.ts";
import { dynamics } from "../../src/band/dynamics.ts";
import { instruments } from "../../src/band/instruments.ts";
import { makePlayer } from "../../src/band/players.ts";

describe("balance units", () => {
  it("go from one at p to the published weight at f in equal steps over mp and mf", () => {
    const trumpet = makePlayer({ seat: "tpt1" });
    const units = dynamics.map((dynamic) => balanceUnits(trumpet, dynamic));
    for (const [index, expected] of [1, 1, 1, 2, 3, 4, 4, 4].entries())
      expect(units[index]).toBeCloseTo(expected, 12);
  });

  it("leave rhythm out, because weight counts the winds", () => {
    expect(balanceUnits(makePlayer({ seat: "piano" }), "f")).toBe(0);
    expect(balanceUnits(makePlayer({ seat: "bass" }), "p")).toBe(0);
  });

  it("have a sourced row for every instrument", () => {
    for (const { id } of instruments) expect(balanceTable[id].source.length).toBeGreaterThan(5);
  });
});
