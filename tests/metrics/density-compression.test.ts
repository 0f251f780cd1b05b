import { describe, expect, it } from "vitest";
import { densityCompression } from "../../src/metrics/density-compression.ts";
import { read, readSilence } from "./situations.ts";

describe("density-compression", () => {
  it("counts players, doublings included, by semitones of span", () =>
    expect(read(densityCompression, "tpt1=D5 tpt2=D5 alto1=A4 tbn1=D4")).toMatchObject({
      value: 4 / 12,
      text: "0.333",
      detail: "4 players over 12 semitones.",
    }));

  it("is not defined in unison", () => {
    expect(read(densityCompression, "tpt1=D5 tpt2=D5").value).toBeNull();
    expect(readSilence(densityCompression).value).toBeNull();
  });
});
