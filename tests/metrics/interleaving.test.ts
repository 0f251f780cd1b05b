import { describe, expect, it } from "vitest";
import { interleaving } from "../../src/metrics/interleaving.ts";
import { read, readSilence } from "./situations.ts";

describe("interleaving as a measure", () => {
  it("reports the two whole numbers", () => {
    const found = read(interleaving, "tpt1=D5 alto1=A4 tpt2=G4 alto2=Eb4");
    expect(found).toMatchObject({ value: 0.5, text: "0.50" });
    expect(found.detail).toMatch(/^2 of 4/);
  });

  it("is 0.00 for runs and none where sections cannot interlock", () => {
    expect(read(interleaving, "tpt1=D5 tpt2=A4 alto1=G4 alto2=Eb4").text).toBe("0.00");
    expect(read(interleaving, "tpt1=D5 tpt2=A4").detail).toContain("two sections");
    expect(read(interleaving, "tpt1=D5 alto1=A4").detail).toContain("leaves a note");
    expect(readSilence(interleaving).text).toBe("none");
  });
});
