import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import { articulationTable } from "../../src/band/articulation-table.ts";
import { articulationOf } from "../../src/band/articulation.ts";
import { dynamics } from "../../src/band/dynamics.ts";
import { instruments } from "../../src/band/instruments.ts";

describe("the way a note speaks", () => {
  it("never gets slower by playing louder, nor by playing higher", () => {
    for (const { id, range } of instruments) {
      const times = dynamics.map((each) => articulationOf(id, range.low, each).attackSeconds);
      for (const [index, time] of times.entries())
        expect(time).toBeLessThanOrEqual(times[index - 1] ?? Infinity);
      const [low, high] = [range.low, range.high].map(
        (midi) => articulationOf(id, midi, "mf").attackSeconds,
      );
      expect(low).toBeGreaterThanOrEqual(Number(high));
    }
  });

  it("has times above zero and noise below the tone everywhere", () => {
    for (const { id, range } of instruments)
      for (const dynamic of dynamics) {
        const found = articulationOf(id, range.high, dynamic);
        expect(found.attackSeconds).toBeGreaterThan(0.002);
        expect(found.attackSeconds).toBeLessThan(0.3);
        expect(found.releaseSeconds).toBeGreaterThan(0.02);
        expect(found.noiseDb).toBeLessThan(-20);
        expect(found.vibratoHz === 0).toBe(found.vibratoCents === 0);
      }
  });

  it("dies away on strings only, sooner on high ones", () => {
    for (const { id, range, section } of instruments) {
      const [low, high] = [range.low, range.high].map(
        (midi) => articulationOf(id, midi, "mf").decaySeconds,
      );
      if (section === "rhythm") expect(low).toBeGreaterThan(Number(high));
      else expect(low).toBe(Infinity);
    }
  });

  it("is reckoned at the middle of the instrument and takes 20 % longer an octave lower", () => {
    const at = (midi: number): number =>
      articulationOf("trombone", soundingMidi(midi), "f").attackSeconds;
    expect(at(57)).toBeCloseTo(0.035, 9);
    expect(at(45)).toBeCloseTo(0.042, 9);
    expect(at(40)).toBeCloseTo(0.042, 9);
  });

  it("comes from rows that name their source", () => {
    for (const { id } of instruments) expect(articulationTable[id].source).not.toBe("");
  });
});
