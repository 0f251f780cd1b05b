import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  interleavingOf,
  isCrossSection,
  stackOf,
  type Voicing,
} from "../../../src/voicing/index.ts";
import { someVoicing, voicingOf } from "./questions.ts";

describe("interleaving", () => {
  it("is the share of left notes that lie inside a section", () => {
    const crossed = voicingOf("tpt1=D5 alto1=A4 tpt2=G4 alto2=Eb4");
    expect(interleavingOf(crossed)).toEqual({ skipped: 2, left: 4, value: 0.5 });
    expect(isCrossSection(crossed)).toBe(true);
  });

  it("does not mind doubling and overlap", () => {
    const doubled = voicingOf("tpt1=D5 tpt2=A4 tpt3=G4 alto1=A4 alto2=G4 tenor1=Eb4");
    expect(interleavingOf(doubled).value).toBe(0);
    expect(isCrossSection(doubled)).toBe(false);
  });

  it("is not defined for one section, or where nothing is left to another", () => {
    expect(interleavingOf(voicingOf("tpt1=D5 tpt2=A4")).value).toBeNull();
    expect(interleavingOf(voicingOf("tpt1=D5 alto1=A4")).value).toBeNull();
    expect(interleavingOf({ placements: [] }).value).toBeNull();
  });

  it("is 0 exactly when every section is an unbroken run, else up to 1", () =>
    fc.assert(
      fc.property(someVoicing, (voicing) => {
        const { value } = interleavingOf(voicing);
        if (value === null) return;
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(1);
        expect(value === 0).toBe(everySectionIsARun(voicing));
      }),
      { seed: 7, numRuns: 500 },
    ));
});

/** The plain reading of "run": each section's places in the stack follow one another. */
function everySectionIsARun(voicing: Voicing): boolean {
  const stack = stackOf(voicing);
  const sections = [...new Set(voicing.placements.map(({ player }) => player.section))];
  return sections.every((section) => {
    const own = voicing.placements.filter(({ player }) => player.section === section);
    const places = [...new Set(own.map(({ sounding }) => stack.indexOf(sounding)))].sort(
      (a, b) => a - b,
    );
    return places.every((place, index) => place === (places[0] ?? 0) + index);
  });
}
