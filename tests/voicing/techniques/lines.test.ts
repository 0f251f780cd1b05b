import { describe, expect, it } from "vitest";
import { canSound, makePlayer } from "../../../src/band/index.ts";
import { octavesLine, unisonLine } from "../../../src/voicing/index.ts";
import { distanceFromHome } from "../../../src/voicing/techniques/lines.ts";
import { pitch, players } from "./questions.ts";

const band = players("big-band");

describe("unison", () => {
  // The bass trombone's row of seats ends at F4, a whole tone under the published top.
  it("takes every horn of the band between Bb3 and G4 (scoredchanges.com, Big band writing)", () => {
    const others = band.filter(({ id }) => id !== "btbn");
    for (const name of ["Bb3", "D4", "G4"])
      expect(unisonLine(others, pitch(name)).placements).toHaveLength(others.length);
    expect(unisonLine(band, pitch("F4")).placements).toHaveLength(band.length);
  });

  it("leaves out who does not reach the note", () => {
    const ids = unisonLine(band, pitch("D5")).placements.map(({ player }) => player.id);
    expect(ids).toContain("alto1");
    expect(ids).not.toContain("bari");
  });
});

describe("octaves", () => {
  it("put everyone in an octave of the melody inside the range, at the melody or below", () => {
    for (let lead = 60; lead <= 84; lead++) {
      const { placements } = octavesLine(band, lead as never);
      expect(placements.some(({ sounding }) => sounding === lead)).toBe(true);
      for (const { player, sounding } of placements) {
        expect((lead - sounding) % 12).toBe(0);
        expect(sounding).toBeLessThanOrEqual(lead);
        expect(canSound(player, sounding)).toBe(true);
      }
    }
  });

  it("give the melody itself to whoever lies nearest when nobody is at home there", () => {
    const low = [makePlayer({ seat: "tenor1" }), makePlayer({ seat: "tenor2" })];
    const { placements } = octavesLine(low, pitch("D5"));
    expect(placements.map(({ sounding }) => sounding)).toEqual([pitch("D5"), pitch("D4")]);
  });

  it("are silent where nobody reaches the melody", () =>
    expect(octavesLine(players("three-horn"), pitch("C7")).placements).toEqual([]));
});

it("distance from home is measured from its middle, in half semitones", () => {
  const player = makePlayer({ seat: "tpt1" });
  const middle = (player.home.low + player.home.high) / 2;
  expect(distanceFromHome(player, (middle + 2) as never)).toBe(4);
});
