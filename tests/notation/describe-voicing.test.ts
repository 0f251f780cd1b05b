import { describe, expect, it } from "vitest";
import { describeStaves, describeVoicing } from "../../src/notation/describe-voicing.ts";
import { layoutByPlayer } from "../../src/notation/layout-by-player.ts";
import { chord, F13, voicing, WIDE_F13 } from "./support/voicings.ts";

describe("a voicing in words", () => {
  it("goes from the top down: pitch, degree, players", () => {
    expect(describeVoicing(voicing("tpt1=D5 alto1=D5 tbn1=A3"), F13)).toBe(
      "F13, 2 notes, 3 players, from the top: D5, thirteenth, trumpet 1 and alto 1; A3, third, trombone 1.",
    );
  });

  it("says flat and sharp in words", () => {
    const text = describeVoicing(WIDE_F13, F13);
    expect(text).toContain("E flat 4, flat seventh, alto 2");
    expect(text).not.toMatch(/[♭♯]/);
  });

  it("names every player once", () => {
    const text = describeVoicing(WIDE_F13, F13);
    for (const { player } of WIDE_F13.placements)
      expect(text.toLowerCase().split(player.name.toLowerCase()).length).toBe(2);
  });

  it("says so when nobody sounds", () => {
    expect(describeVoicing({ placements: [] }, F13)).toBe("F13: nobody sounds.");
  });

  it("leaves degrees out where there is no chord", () => {
    const none = chord("N.C.", "no-chord", "");
    expect(describeVoicing(voicing("tpt1=F#4"), none)).toBe(
      "N.C., 1 note, 1 player, from the top: F sharp 4, trumpet 1.",
    );
  });
});

describe("staves in words", () => {
  it("say what each player reads, in score order", () => {
    const staves = layoutByPlayer(voicing("tpt1=D5 alto1=D5"), F13, "written");
    expect(describeStaves(staves, F13, "written")).toBe(
      "Alto 1 reads B5, the thirteenth. Trumpet 1 reads E5, the thirteenth.",
    );
  });

  it("say what each player sounds at concert pitch", () => {
    const staves = layoutByPlayer(voicing("bari=F2"), F13, "concert");
    expect(describeStaves(staves, F13, "concert")).toBe("Baritone sounds F2, the root.");
  });

  it("say so when there are none", () => {
    expect(describeStaves([], F13, "written")).toBe("F13: nobody sounds.");
  });
});
