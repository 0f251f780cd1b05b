import { describe, expect, it } from "vitest";
import { condensed } from "../../src/notation/condense.ts";
import { demoPlayed } from "../audio/support/demo-performance.ts";

describe("several parts on one staff", () => {
  const { playing } = demoPlayed("ballad");
  const trumpets = playing.parts.filter(({ player }) => player.section === "trumpets");

  it("never overlaps, and holds whoever sounds", () => {
    const stretches = condensed(trumpets);
    stretches.forEach(({ from, to, heads }, index) => {
      expect(from).toBeLessThan(to);
      expect(stretches[index - 1]?.to ?? 0).toBeLessThanOrEqual(from);
      const ids = heads.flatMap(({ playerIds }) => playerIds);
      const sounding = trumpets.filter(({ notes }) =>
        notes.some(({ onset, duration }) => onset <= from && onset + duration >= to),
      );
      expect([...ids].sort()).toEqual(sounding.map(({ player }) => player.id).sort());
    });
  });

  it("shows a pitch that two share once", () => {
    const [first] = trumpets;
    const twin = { ...first!, player: { ...first!.player, id: "twin" } };
    const [stretch] = condensed([first!, twin]);
    expect(stretch?.heads).toHaveLength(1);
    expect(stretch?.heads[0]?.playerIds).toEqual([first!.player.id, "twin"]);
  });
});
