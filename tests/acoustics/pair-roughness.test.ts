import { describe, expect, it } from "vitest";
import { preparedRoughness } from "../../src/acoustics/pair-roughness.ts";
import { roughness } from "../../src/acoustics/roughness.ts";
import { HUTCHINSON_KNOPOFF } from "../../src/acoustics/roughness-hutchinson.ts";
import { SETHARES_MINIMUM, SETHARES_PRODUCT } from "../../src/acoustics/roughness-sethares.ts";
import { VASSILAKIS } from "../../src/acoustics/roughness-vassilakis.ts";
import { randomNotes, randomVoicings } from "./support/sounds.ts";
import { prepareAll } from "./support/workshop.ts";

const SPECTRA = randomNotes(20, 41);
const NOTES = prepareAll(SPECTRA);

describe("roughness from remembered pairs", () => {
  it.each([HUTCHINSON_KNOPOFF, SETHARES_MINIMUM, SETHARES_PRODUCT, VASSILAKIS])(
    "is that of the whole sound: $label",
    (method) => {
      const roughnessOf = preparedRoughness(method);
      for (const indices of randomVoicings(SPECTRA.length, 6, 5)) {
        const exact = roughness(
          indices.map((index) => SPECTRA[index]!),
          method,
        );
        const found = roughnessOf(indices.map((index) => NOTES[index]!));
        expect(found / exact.total).toBeCloseTo(1, 9);
      }
      expect(roughnessOf([])).toBe(0);
    },
  );
});
