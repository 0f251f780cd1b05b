import { describe, expect, it } from "vitest";
import { cymbalMaterial } from "../../src/audio/cymbal-material.ts";
import { CYMBALS } from "../../src/audio/cymbal-table.ts";
import { positionOf } from "../../src/audio/dynamic-steps.ts";
import { dbSplToPeak } from "../../src/audio/level-calibration.ts";

const noise = new Float32Array(16384);

describe.each(Object.entries(CYMBALS))("the %s", (_id, row) => {
  const material = cymbalMaterial(row, positionOf("f"), noise);

  it("is a cloud of inharmonic modes within its band, the same every time", () => {
    expect(material.modes).toHaveLength(row.modeCount);
    for (const { hz } of material.modes) {
      expect(hz).toBeGreaterThanOrEqual(row.lowest);
      expect(hz).toBeLessThanOrEqual(row.highest);
    }
    expect(cymbalMaterial(row, positionOf("f"), noise)).toEqual(material);
  });

  it("has its stated level at f, and is softer struck softer", () => {
    const level = (modes: typeof material.modes): number =>
      Math.sqrt(modes.reduce((sum, { peak }) => sum + peak * peak, 0));
    expect(level(material.modes)).toBeCloseTo(dbSplToPeak(row.modesAtF), 9);
    expect(level(cymbalMaterial(row, positionOf("p"), noise).modes)).toBeLessThan(
      level(material.modes) / 2,
    );
  });
});
