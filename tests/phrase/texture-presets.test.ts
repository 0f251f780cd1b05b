import { describe, expect, it } from "vitest";
import { texturePlan } from "../../src/phrase/texture-presets.ts";
import { texturePresets, type TexturePresetId } from "../../src/phrase/texture-preset-table.ts";
import { curveAt } from "../../src/phrase/curves.ts";
import { playsAt } from "../../src/phrase/who-plays.ts";
import { at, melodyOf, playersOf } from "./support/phrases.ts";

const melody = melodyOf("C5:4 | C5:4 | C5:4 | C5:4 | C5:4 | C5:4");
const band = playersOf("big-band");

describe("texture shapes", () => {
  it("are well formed: shares rise from 0 to 1, levels lie within 0 and 1, names are unique", () => {
    for (const { span, density, weight } of texturePresets)
      for (const shape of [span, density, weight]) {
        expect(
          shape.every(([share, level]) => share >= 0 && share <= 1 && level >= 0 && level <= 1),
        ).toBe(true);
        expect(shape.every(([share], n) => n === 0 || share >= (shape[n - 1]?.[0] ?? 0))).toBe(
          true,
        );
      }
    expect(new Set(texturePresets.map(({ id }) => id)).size).toBe(texturePresets.length);
  });

  it("ask for no more players than there are, and for three at least", () => {
    for (const { id } of texturePresets)
      for (const { value } of texturePlan(id, melody, band).curves.weight) {
        expect(value).toBeLessThanOrEqual(13);
        expect(value).toBeGreaterThanOrEqual(3);
      }
    expect(texturePlan("build", melody, playersOf("three-horn")).curves.weight[0]?.value).toBe(3);
  });

  it("peak at two thirds when they build (the usual place of a climax: 0.618 to 0.67)", () => {
    const { span, weight } = texturePlan("build", melody, band).curves;
    const peak = at(Math.round(0.67 * melody.length));
    for (let bar = 0; bar < 24; bar++) {
      const here = at((bar * melody.length) / 24);
      expect(curveAt(weight, here)).toBeLessThanOrEqual(curveAt(weight, peak));
      expect(curveAt(span, here)).toBeLessThanOrEqual(curveAt(span, peak));
    }
  });

  it("let saxes and brass take turns of two bars in call and answer", () => {
    const { turns } = texturePlan("call-and-answer", melody, band);
    const sections = (bar: number): string =>
      [
        ...new Set(
          band
            .filter((player) => playsAt(player, at(4 * (bar - 1) * melody.division), turns))
            .map(({ section }) => section),
        ),
      ].join();
    expect([1, 2, 3, 4, 5, 6].map(sections)).toEqual([
      "saxes",
      "saxes",
      "trumpets,trombones",
      "trumpets,trombones",
      "saxes",
      "saxes",
    ]);
  });

  it("take no turns in a band without one of the sides", () => {
    const saxes = band.filter(({ section }) => section === "saxes");
    expect(texturePlan("call-and-answer", melody, saxes).turns).toEqual([]);
  });

  it("are known by name", () =>
    expect(() => texturePlan("wavy" as TexturePresetId, melody, band)).toThrow(RangeError));
});
