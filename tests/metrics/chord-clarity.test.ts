import { describe, expect, it } from "vitest";
import { chordClarity } from "../../src/metrics/chord-clarity.ts";
import { voicingOf } from "../voicing/techniques/questions.ts";
import { situation } from "./situations.ts";

const clarity = (voicing: string, bassSounds = true): number =>
  chordClarity.measure(voicingOf(voicing), { ...situation(), bassSounds }).value ?? 0;

describe("chord clarity", () => {
  it("is 0 when the seventh is missing and says so", () => {
    const missing = chordClarity.measure(voicingOf("tpt1=D5 tenor1=A3"), situation());
    expect(missing.value).toBe(0);
    expect(missing.detail).toBe("The ♭7 is not heard.");
  });

  // Common practice, no single source: rootless voicings lean on the bass.
  it("of a rootless voicing is greater with the bass than without", () => {
    const rootless = "tpt1=D5 alto1=G4 tbn1=Eb4 tenor1=A3";
    expect(clarity(rootless)).toBeGreaterThan(clarity(rootless, false));
  });

  it("is not defined without a chord", () => {
    const noChord = { ...situation().chord, family: "no-chord" as const };
    const measured = chordClarity.measure(voicingOf("tpt1=D5"), { ...situation(), chord: noChord });
    expect(measured.value).toBeNull();
  });
});
