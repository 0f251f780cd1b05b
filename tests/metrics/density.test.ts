import { describe, expect, it } from "vitest";
import { density } from "../../src/metrics/density.ts";
import { read, readSilence } from "./situations.ts";

describe("density", () => {
  it("is 12 (n - 1) / span, doublings not counted", () => {
    expect(read(density, "tpt1=D5 tpt2=D5 alto1=A4 tbn1=D4")).toMatchObject({
      value: 2,
      text: "2",
      detail: "3 notes over 12 semitones.",
    });
    expect(read(density, "tpt1=D5 alto1=A4 tenor1=G4 tbn1=F4").text).toBe("4");
    expect(read(density, "tpt1=D5 alto1=A4 tbn1=F4 bari=F2").text).toBe("1.09");
  });

  it("is not defined in unison", () => {
    expect(read(density, "tpt1=D5 tpt2=D5")).toMatchObject({ value: null, text: "none" });
    expect(readSilence(density).text).toBe("none");
  });
});
