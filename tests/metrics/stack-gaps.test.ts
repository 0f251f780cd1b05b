import { describe, expect, it } from "vitest";
import { gapsOf, notDefined, pitchText, spanOf } from "../../src/metrics/stack-gaps.ts";
import { chordOf, pitch, voicingOf } from "../voicing/techniques/questions.ts";

describe("gaps of a stack", () => {
  it("lie between different pitches, from the bottom up", () => {
    const gaps = gapsOf(voicingOf("tpt1=D5 tpt2=D5 tbn1=A4 bari=F2"));
    expect(gaps.map(({ semitones }) => semitones)).toEqual([28, 5]);
  });

  it("are none for one pitch or none", () => {
    expect(gapsOf(voicingOf("tpt1=D5 tpt2=D5"))).toEqual([]);
    expect(spanOf(voicingOf("tpt1=D5"))).toBe(0);
    expect(spanOf({ placements: [] })).toBe(0);
  });

  it("name pitches as the chord spells them", () => {
    expect(pitchText(pitch("Eb4"), chordOf("F7"))).toBe("E♭4");
    expect(pitchText(pitch("Eb4"), chordOf("B"))).toBe("D♯4");
  });

  it("say why something is not defined", () =>
    expect(notDefined("Why.")).toEqual({
      value: null,
      text: "none",
      detail: "Why.",
      notes: [],
      playerIds: [],
    }));
});
