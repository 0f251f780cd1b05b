import { describe, expect, it } from "vitest";
import { clusterVoicing } from "../../../src/voicing/index.ts";
import { isCluster } from "../../../src/voicing/techniques/cluster.ts";
import { chordOf, everyTone, pitch, pitches, plain } from "./questions.ts";

describe("cluster", () => {
  it("takes the ticked tones right below the lead, no semitone under it", () => {
    expect(clusterVoicing(chordOf("C"), pitch("E4"), 4, { ticked: [0, 2, 4, 7, 10, 11] })).toEqual(
      pitches("B3 C4 D4 E4"),
    );
    expect(clusterVoicing(chordOf("C"), pitch("E4"), 3, everyTone)).toEqual(pitches("C#4 D4 E4"));
  });

  it("is not there when the tones lie too far apart", () =>
    expect(clusterVoicing(chordOf("C7"), pitch("E4"), 4, plain(chordOf("C7")))).toBeUndefined());

  it("refuses fewer than three voices", () =>
    expect(() => clusterVoicing(chordOf("C7"), pitch("E4"), 2, everyTone)).toThrow(RangeError));

  it("is recognised by two seconds that are most of its gaps (Lindsay: groups of seconds)", () => {
    expect(isCluster(pitches("B3 C4 E4 F#4"))).toBe(true);
    expect(isCluster(pitches("C4 D4 E4"))).toBe(true);
    expect(isCluster(pitches("C4 D4 G4"))).toBe(false);
    expect(isCluster(pitches("D3 Eb3 G3 A3 D4 Eb4 G4 A4 D5"))).toBe(false);
  });
});
