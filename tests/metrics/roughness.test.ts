import { describe, expect, it } from "vitest";
import { roughness } from "../../src/metrics/roughness.ts";
import { read } from "./situations.ts";

describe("roughness", () => {
  // Dyad order after W. Hutchinson and L. Knopoff 1978: a semitone is rougher than a fifth.
  it("is greater for a semitone than for a fifth, and falls an octave up for a low third", () => {
    const at = (voicing: string): number => read(roughness, voicing).value ?? 0;
    expect(at("tpt1=C5 tpt2=B4")).toBeGreaterThan(at("tpt1=C5 tpt2=F4"));
    expect(at("tbn1=E2 btbn=C2")).toBeGreaterThan(at("tbn1=E3 btbn=C3"));
  });
});
