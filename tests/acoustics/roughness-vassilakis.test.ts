import { describe, expect, it } from "vitest";
import { roughness } from "../../src/acoustics/roughness.ts";
import { VASSILAKIS } from "../../src/acoustics/roughness-vassilakis.ts";
import { pressures } from "./support/sounds.ts";

describe("Vassilakis' roughness", () => {
  it("falls fast as the two partials beat less deeply", () => {
    const deep = roughness([pressures([440, 460], [1, 1])], VASSILAKIS).total;
    const shallow = roughness([pressures([440, 460], [1, 0.25])], VASSILAKIS).total;
    expect(shallow).toBeLessThan(deep * (2 * 0.2) ** 3);
    expect(shallow).toBeGreaterThan(0);
  });

  it("finds nothing in a silent partial", () => {
    expect(VASSILAKIS.pair(440, 0, 460, 1)).toBe(0);
  });
});
