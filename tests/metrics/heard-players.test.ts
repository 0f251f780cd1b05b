import { describe, expect, it } from "vitest";
import { heardPlayers } from "../../src/metrics/heard-players.ts";
import { read } from "./situations.ts";

describe("players heard", () => {
  it("are all clear when two players are far apart", () => {
    const { value, text, detail, playerIds } = read(heardPlayers, "tpt1=D5 bari=F2");
    expect([value, text, detail]).toEqual([2, "2 of 2", "All are clear."]);
    expect(playerIds).toEqual([]);
  });

  // Common practice, no single source: a flute in unison with a trumpet is lost in the middle
  // register and comes out an octave above.
  it("leave out a flute under a trumpet in unison, and name both", () => {
    const { value, detail, playerIds, notes } = read(heardPlayers, "tpt1=G4 fl1=G4", "mf");
    expect(value).toBe(1);
    expect(detail).toMatch(/^Flute.* buried by Tpt 1\.$|^Fl.* buried by Tpt 1\.$/);
    expect(playerIds).toEqual(["fl1"]);
    expect(notes).toEqual([67]);
  });

  it("count the flute again an octave above the trumpet", () => {
    expect(read(heardPlayers, "tpt1=G4 fl1=G5", "mf").value).toBe(2);
  });
});
