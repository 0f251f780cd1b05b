import { describe, expect, it } from "vitest";
import { brightness } from "../../src/metrics/brightness.ts";
import { loudness } from "../../src/metrics/loudness.ts";
import { read } from "./situations.ts";

describe("brightness", () => {
  it("falls faster than loudness when the same brass notes are played softer", () => {
    // Common practice, no single source: soft brass loses its edge first. Spectra by dynamic are
    // tested against measurements with the timbre tables.
    const notes = "tbn1=Bb3 tbn2=F3 tbn3=D4 btbn=Bb2";
    const [bright, dark] = [read(brightness, notes, "ff"), read(brightness, notes, "pp")];
    expect((bright.value ?? 0) / (dark.value ?? 1)).toBeGreaterThan(2);
    expect(read(loudness, notes, "ff").value).toBeGreaterThan(
      read(loudness, notes, "pp").value ?? 0,
    );
  });

  it("puts trumpets above trombones on the same note", () => {
    expect(read(brightness, "tpt1=Bb3").value).toBeGreaterThan(
      read(brightness, "tbn1=Bb3").value ?? 0,
    );
  });
});
