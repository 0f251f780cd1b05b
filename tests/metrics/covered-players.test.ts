import { describe, expect, it } from "vitest";
import { quantity, type SoundingMidi } from "../../src/base/index.ts";
import { makePlayer, type SeatId } from "../../src/band/index.ts";
import { coveredPlayers } from "../../src/metrics/index.ts";

const placed = (seat: SeatId, sounding: number) => ({
  player: makePlayer({ seat }),
  sounding: quantity<SoundingMidi>(sounding),
});

describe("players who are covered", () => {
  it("are none when one plays alone or nobody plays", () => {
    expect(coveredPlayers({ placements: [] }, "f")).toEqual([]);
    expect(coveredPlayers({ placements: [placed("tpt1", 74)] }, "f")).toEqual([]);
  });

  it("include a flute in unison with trumpets, by the trumpets: common orchestration advice", () => {
    // N. Rimsky-Korsakov, Principles of Orchestration: a low flute is lost under brass.
    const placements = [
      placed("fl1", 67),
      placed("tpt1", 67),
      placed("tpt2", 67),
      placed("tpt3", 67),
    ];
    const covered = coveredPlayers({ placements }, "f");
    const flute = covered.find(({ playerId }) => playerId === "fl1");
    expect(flute?.by.map((player) => player.id)).toContain("tpt1");
    expect(covered.map(({ playerId }) => playerId)).not.toContain("tpt1");
  });
});
