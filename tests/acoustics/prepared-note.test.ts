import { describe, expect, it } from "vitest";
import { cochlearInput } from "../../src/acoustics/iso532-2-cochlea.ts";
import { fundamentalOf } from "../../src/acoustics/prepared-note.ts";
import { hzOf, plainNote, sine } from "./support/sounds.ts";
import { grid, prepareAll } from "./support/workshop.ts";

const total = (values: ArrayLike<number>): number =>
  Array.from(values).reduce((sum, value) => sum + value, 0);

describe("a prepared note", () => {
  const spectrum = plainNote(hzOf(60), 70);
  const [note] = prepareAll([spectrum]);

  it("keeps all of its power on the grid", () => {
    const power = total(cochlearInput(spectrum).power);
    expect(total(note!.power) / power).toBeCloseTo(1, 12);
    expect(total(note!.placePowers) / power).toBeCloseTo(1, 12);
  });

  it("lays tempered harmonics on one place and others on two", () => {
    const places = [...note!.places].map((place) => grid.hz[place]!);
    expect(places[0]).toBeCloseTo(hzOf(60), 9);
    const seventh = places.filter((hz) => Math.abs(hz / (7 * hzOf(60)) - 1) < 0.06);
    expect(seventh).toHaveLength(2);
  });

  it("knows its fundamental and the places of its first eight harmonics", () => {
    expect(note!.fundamental).toBe(hzOf(60));
    expect(note!.channels).toHaveLength(8);
    [...note!.channels].forEach((place, index) =>
      expect(Math.abs(12 * Math.log2(grid.hz[place]! / (hzOf(60) * (index + 1))))).toBeLessThan(
        0.5,
      ),
    );
  });

  it("carries its moments of pressure and power", () => {
    const [pressure, , power] = note!.moments;
    expect(10 * Math.log10(power)).toBeCloseTo(70, 9);
    expect(pressure).toBeGreaterThan(Math.sqrt(power));
  });

  it("starts where its excitation does", () => {
    expect(note!.alone[note!.from]).toBeGreaterThan(0);
    expect(note!.power.slice(0, note!.from).every((value) => value === 0)).toBe(true);
  });

  it("needs a partial", () => {
    expect(() => prepareAll([[]])).toThrow(/at least one partial, got none/);
    expect(() => fundamentalOf([])).toThrow(RangeError);
    expect(fundamentalOf([sine(880, 50), sine(440, 50)])).toBe(440);
  });
});
