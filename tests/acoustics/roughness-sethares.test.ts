import { describe, expect, it } from "vitest";
import { roughness } from "../../src/acoustics/roughness.ts";
import {
  setharesCurve,
  SETHARES_MINIMUM,
  SETHARES_PRODUCT,
} from "../../src/acoustics/roughness-sethares.ts";
import { pressures } from "./support/sounds.ts";

describe("Sethares' two rules of amplitude", () => {
  it("count the smaller pressure or the product, against the largest or its square", () => {
    const sound = [pressures([440, 460], [0.5, 2])];
    const curve = setharesCurve(440, 460);
    expect(roughness(sound, SETHARES_MINIMUM).total).toBeCloseTo((curve * 0.5) / 2, 9);
    expect(roughness(sound, SETHARES_PRODUCT).total).toBeCloseTo((curve * 1) / 4, 9);
  });

  it("find nothing rough in one frequency", () => expect(setharesCurve(440, 440)).toBe(0));
});
