import { describe, expect, it } from "vitest";
import { listenTo, roomLevel } from "../../src/metrics/listener.ts";
import { voicingOf } from "../voicing/techniques/questions.ts";

describe("the average listener", () => {
  it("hears a room of 300 cubic metres and 0.6 s as 13 dB under sound power (Sabine)", () => {
    // 14 + 10 lg 0.6 − 10 lg 300 = −13.0 dB re sound power, so −2.0 dB re one metre.
    expect(roomLevel()).toBeCloseTo(-1.99, 2);
  });

  it("takes players of one kind on one note as one source, other kinds apart", () => {
    const { sources } = listenTo(voicingOf("tpt1=G4 tpt2=G4 alto1=G4 tenor1=G4 tbn1=G4"), "f");
    const ids = sources.map((source) => [...source.playerIds].sort().join(" ")).sort();
    expect(ids).toEqual(["alto1 tenor1", "tbn1", "tpt1 tpt2"]);
  });

  it("answers the same voicing from memory", () => {
    const voicing = voicingOf("tpt1=G4 alto1=D4");
    expect(listenTo(voicing, "f")).toBe(listenTo(voicing, "f"));
    expect(listenTo(voicing, "p")).not.toBe(listenTo(voicing, "f"));
  });
});
