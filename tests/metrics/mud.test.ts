import { describe, expect, it } from "vitest";
import { mud } from "../../src/metrics/mud.ts";
import { read } from "./situations.ts";

describe("mud", () => {
  // Common practice, no single source: a low third blurs, the same third two octaves up does not.
  it("blames the low third by its two notes and its players", () => {
    const low = read(mud, "btbn=C2 bari=E2 tbn1=Bb2 tenor1=D3");
    expect(low.notes).toEqual([36, 40]);
    expect([...low.playerIds].sort()).toEqual(["bari", "btbn"]);
    expect(low.detail).toMatch(/: muddy\.$/);
  });

  it("clears the same chord in the effective register", () => {
    expect(read(mud, "tbn1=E3 tbn2=Bb3 tenor1=D4 alto1=G4").detail).toMatch(/: clear\.$/);
  });

  it("is not defined for one note", () => {
    expect(read(mud, "tpt1=D5 tpt2=D5").value).toBeNull();
  });
});
