import { describe, expect, it } from "vitest";
import { criticalBandSpacing } from "../../src/metrics/critical-band-spacing.ts";
import { read, readSilence } from "./situations.ts";

const value = (voicing: string) => read(criticalBandSpacing, voicing).value ?? NaN;

describe("spacing by critical bands", () => {
  it("is 0 for two notes, which have one step only", () =>
    expect(value("tpt1=D5 bari=F2")).toBe(0));

  // D. Huron and P. Sellmer 1992: wide below, narrow above is nearer to equal critical bands.
  it("is smaller for a bottom-heavy spread than for the same gaps turned over", () =>
    expect(value("tpt1=C5 alto1=G4 tbn1=C4 bari=C3")).toBeLessThan(
      value("tpt1=C5 alto1=C4 tbn1=G3 bari=C3"),
    ));

  it("is not defined for one note", () => {
    expect(read(criticalBandSpacing, "tpt1=D5").value).toBeNull();
    expect(readSilence(criticalBandSpacing).value).toBeNull();
  });
});
