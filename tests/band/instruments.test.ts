import { describe, expect, it } from "vitest";
import { instrumentTable } from "../../src/band/instrument-table.ts";
import { instrumentOf, instruments } from "../../src/band/instruments.ts";
import type { InstrumentId } from "../../src/band/band-types.ts";

describe("instruments", () => {
  it("have unique ids, names and abbreviations", () => {
    for (const of of ["id", "name", "abbreviation"] as const)
      expect(new Set(instruments.map((each) => each[of])).size).toBe(instruments.length);
  });

  it("name their source in every row", () => {
    for (const { id, source } of instrumentTable) expect(source.length, id).toBeGreaterThan(8);
  });

  it.each(instruments.map((each) => [each.id, each] as const))(
    "%s has a compass and registers without gap or overlap that cover it",
    (_id, { range, registers }) => {
      expect(range.low).toBeLessThan(range.high);
      expect(registers[0]?.low).toBe(range.low);
      expect(registers.at(-1)?.high).toBeGreaterThanOrEqual(range.high);
      for (const [index, register] of registers.entries()) {
        expect(register.low).toBeLessThanOrEqual(register.high);
        expect(register.label.length).toBeGreaterThan(2);
        const next = registers[index + 1];
        if (next) expect(next.low).toBe(register.high + 1);
      }
    },
  );

  it("sit in a section of their kind: flugelhorn with trumpets, reeds and flute with saxes, low brass with trombones", () => {
    const section = (id: InstrumentId): string => instrumentOf(id).section;
    expect(section("flugelhorn")).toBe("trumpets");
    expect(
      ["soprano-sax", "flute", "clarinet", "bass-clarinet"].map((id) =>
        section(id as InstrumentId),
      ),
    ).toEqual(Array(4).fill("saxes"));
    expect([section("horn"), section("tuba")]).toEqual(["trombones", "trombones"]);
    expect([section("piano"), section("double-bass")]).toEqual(["rhythm", "rhythm"]);
  });

  it("call the trumpet's lowest fourth weak and its top tiring, as published", () => {
    // University portfolio on the trumpet (dark low register, bright and penetrating top); the
    // boundaries are a value from memory.
    const [low, middle, high] = instrumentOf("trumpet").registers;
    expect([low?.strength, middle?.strength, high?.strength]).toEqual(["weak", "even", "tiring"]);
    expect([low?.high, middle?.high, high?.high]).toEqual([57, 77, 82]);
  });

  it("call the flute's lowest octave weak and the top fourth of its range risky", () => {
    // Jazz arranging tutorial: C4 to B4 not heard without a microphone, avoid the top fourth.
    const registers = instrumentOf("flute").registers;
    expect(registers[0]).toMatchObject({ low: 60, high: 71, strength: "weak" });
    expect(registers.at(-1)).toMatchObject({ high: 98, strength: "risky" });
  });

  it("refuse an id that is not in the table", () => {
    expect(() => instrumentOf("kazoo" as InstrumentId)).toThrow(RangeError);
  });
});
