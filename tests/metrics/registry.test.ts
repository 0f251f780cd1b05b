import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { measureAll, metrics } from "../../src/metrics/index.ts";
import { stackOf } from "../../src/voicing/index.ts";
import { someVoicing, voicingOf } from "../voicing/techniques/questions.ts";
import { situation } from "./situations.ts";

describe("the registry of measures", () => {
  it.each(metrics.map((metric) => [metric.id, metric] as const))("describes %s", (_id, metric) => {
    expect(metric.id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(metric.meaning).toMatch(/^[A-Z].*\.$/);
    expect(metric.unit).not.toBe("");
    expect(metric.source.length).toBeGreaterThan(10);
    expect(metric.axis[0]).toBeLessThan(metric.axis[1]);
  });

  it("has no id and no label twice", () => {
    expect(new Set(metrics.map(({ id }) => id)).size).toBe(metrics.length);
    expect(new Set(metrics.map(({ label }) => label)).size).toBe(metrics.length);
  });

  it("takes further measures", () => {
    const [first] = metrics;
    if (!first) throw new Error("no measure");
    const readings = measureAll(voicingOf("tpt1=D5"), situation(), [first, { ...first, id: "x" }]);
    expect(readings.map(({ metric }) => metric.id)).toEqual([first.id, "x"]);
  });

  it("reads silence without a number that is not one", () => {
    for (const { measured } of measureAll({ placements: [] }, situation()))
      expect(measured.value ?? 0).toBe(0);
  });

  it("gives finite numbers, or null with a reason, and points only at what sounds", () =>
    fc.assert(
      fc.property(someVoicing, (voicing) => {
        const stack = stackOf(voicing);
        const ids = voicing.placements.map(({ player }) => player.id);
        for (const { measured } of measureAll(voicing, situation())) {
          if (measured.value === null) expect(measured.text).toBe("none");
          else expect(Number.isFinite(measured.value)).toBe(true);
          expect(measured.detail).toMatch(/\.$/);
          expect(stack).toEqual(expect.arrayContaining([...measured.notes]));
          expect(ids).toEqual(expect.arrayContaining([...measured.playerIds]));
        }
      }),
      { seed: 7 },
    ));

  it("does not depend on the order of players, to the last bit", () =>
    fc.assert(
      fc.property(someVoicing, fc.constantFrom("p", "mf", "f"), (voicing, dynamic) => {
        const turned = { placements: [...voicing.placements].reverse() };
        const values = (given: typeof voicing) =>
          measureAll(given, situation(dynamic)).map(({ measured }) => [
            measured.value,
            measured.text,
            measured.detail,
            [...measured.playerIds].sort(),
          ]);
        expect(values(turned)).toEqual(values(voicing));
      }),
      { seed: 7, numRuns: 300 },
    ));
});
