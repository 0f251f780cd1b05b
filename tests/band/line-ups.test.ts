import { describe, expect, it } from "vitest";
import type { Result } from "../../src/base/index.ts";
import type { LineUp } from "../../src/band/band-types.ts";
import { withInstrument, withMute } from "../../src/band/edit-player.ts";
import {
  addPlayer,
  freshPlayer,
  lineUpById,
  lineUps,
  removePlayer,
  replacePlayer,
  sectionOrder,
} from "../../src/band/line-ups.ts";
import { MOST_PLAYERS } from "../../src/band/line-up-table.ts";
import { makePlayer } from "../../src/band/players.ts";

const value = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
};
const ids = ({ players }: LineUp): string => players.map(({ id }) => id).join(" ");
const bigBand = value(lineUpById("big-band"));

describe("line-ups to start from", () => {
  it("hold a big band of 4 trumpets, 4 trombones and 5 saxes", () => {
    // Common practice, no single source.
    const count = (section: string): number =>
      bigBand.players.filter((each) => each.section === section).length;
    expect(sectionOrder.map(count)).toEqual([4, 4, 5, 0]);
    expect(ids(bigBand)).toBe(
      "tpt1 tpt2 tpt3 tpt4 tbn1 tbn2 tbn3 btbn alto1 alto2 tenor1 tenor2 bari",
    );
  });

  it("hold groups of six, four and three horns, and a school band", () => {
    expect(ids(value(lineUpById("six-horn")))).toBe("tpt1 tpt2 tbn1 alto1 tenor1 bari");
    expect(ids(value(lineUpById("four-horn")))).toBe("tpt1 tbn1 alto1 tenor1");
    expect(ids(value(lineUpById("three-horn")))).toBe("tpt1 tbn1 tenor1");
    expect(value(lineUpById("school-band")).players.every(({ level }) => level === "school")).toBe(
      true,
    );
  });

  it("have unique ids and players in score order", () => {
    expect(new Set(lineUps.map(({ id }) => id)).size).toBe(lineUps.length);
    for (const { players } of lineUps) {
      expect(new Set(players.map(({ id }) => id)).size).toBe(players.length);
      const places = players.map(({ section }) => sectionOrder.indexOf(section));
      expect(places).toEqual([...places].sort((a, b) => a - b));
    }
  });

  it("say which there are when asked for another", () => {
    const refused = lineUpById("marching");
    expect(refused).toMatchObject({ ok: false, problem: { code: "line-up-unknown" } });
    expect(refused.ok ? "" : refused.problem.message).toContain("four-horn");
  });
});

describe("editing a line-up", () => {
  it("puts a new player behind the section", () => {
    const four = value(lineUpById("four-horn"));
    const five = value(addPlayer(four, makePlayer({ seat: "flugel1" })));
    expect(ids(five)).toBe("tpt1 flugel1 tbn1 alto1 tenor1");
    expect(ids(value(addPlayer(four, makePlayer({ seat: "bari" }))))).toBe(
      "tpt1 tbn1 alto1 tenor1 bari",
    );
    expect(ids(four)).toBe("tpt1 tbn1 alto1 tenor1");
  });

  it("finds the section's place when it is empty", () => {
    const brass = value(removePlayer(value(lineUpById("three-horn")), "tbn1"));
    expect(ids(value(addPlayer(brass, makePlayer({ seat: "hn1" }))))).toBe("tpt1 hn1 tenor1");
  });

  it("takes a player out, down to nobody", () => {
    const two = value(removePlayer(value(lineUpById("three-horn")), "tbn1"));
    const none = value(removePlayer(value(removePlayer(two, "tpt1")), "tenor1"));
    expect(none.players).toEqual([]);
    expect(ids(value(addPlayer(none, makePlayer({ seat: "bass" }))))).toBe("bass");
  });

  it("refuses a player twice, an unknown one, and more than the most", () => {
    expect(addPlayer(bigBand, makePlayer({ seat: "bari" }))).toMatchObject({
      problem: { code: "player-twice" },
    });
    expect(removePlayer(bigBand, "tuba1")).toMatchObject({ problem: { code: "player-unknown" } });
    expect(replacePlayer(bigBand, makePlayer({ seat: "tuba1" }))).toMatchObject({
      problem: { code: "player-unknown" },
    });
    let full = bigBand;
    while (full.players.length < MOST_PLAYERS)
      full = value(addPlayer(full, freshPlayer(full, { seat: "tpt4" })));
    expect(full.players).toHaveLength(24);
    expect(addPlayer(full, freshPlayer(full, { seat: "tpt4" }))).toMatchObject({
      problem: { code: "too-many-players" },
    });
  });

  it("gives a further player of a chair the next free id", () => {
    expect(freshPlayer(bigBand, { seat: "tpt4" })).toMatchObject({ id: "tpt5", name: "Trumpet 5" });
    expect(freshPlayer(bigBand, { seat: "bari" })).toMatchObject({ id: "bari2", chair: 0 });
    expect(freshPlayer(bigBand, { seat: "flugel1" }).id).toBe("flugel1");
  });

  it("exchanges a player in place, or in the new section", () => {
    const tpt2 = value(withMute(makePlayer({ seat: "tpt2" }), "cup"));
    const muted = value(replacePlayer(bigBand, tpt2));
    expect(ids(muted)).toBe(ids(bigBand));
    expect(muted.players[1]?.mute).toBe("cup");
    const moved = value(withInstrument(makePlayer({ seat: "tpt4" }), "horn"));
    expect(ids(value(replacePlayer(bigBand, moved)))).toBe(
      "tpt1 tpt2 tpt3 tbn1 tbn2 tbn3 btbn tpt4 alto1 alto2 tenor1 tenor2 bari",
    );
  });
});
