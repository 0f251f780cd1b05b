import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../../src/base/index.ts";
import { canSound } from "../../../src/band/index.ts";
import { assignPitches } from "../../../src/voicing/index.ts";
import { highestFirst } from "../../../src/voicing/techniques/chair-order.ts";
import { pitch, pitches, players } from "./questions.ts";

const section = (name: string, lineUp = "big-band") =>
  players(lineUp).filter((player) => player.section === name);
const text = (found: ReturnType<typeof assignPitches>) =>
  found.placements.map(({ player, sounding }) => [player.id, sounding]);

describe("handing a construction to players", () => {
  it("gives the highest chair the highest note", () => {
    const found = assignPitches(pitches("Eb4 G4 A4 D5"), section("trumpets"), pitch("D5"));
    expect(text(found)).toEqual([
      ["tpt1", 74],
      ["tpt2", 69],
      ["tpt3", 67],
      ["tpt4", 63],
    ]);
    expect([found.moved, found.leftOut, found.displaced, found.resting]).toEqual([[], [], [], []]);
  });

  it("lets players share notes near their homes when there are more of them", () => {
    const found = assignPitches(pitches("F3 Eb4 A4 D5"), players("big-band"), pitch("D5"));
    expect(found.placements).toHaveLength(13);
    expect(found.leftOut).toEqual([]);
    expect(new Set(found.placements.map(({ sounding }) => sounding)).size).toBe(4);
  });

  it("moves a pitch that is too low up an octave, never a semitone under the lead", () => {
    const low = assignPitches(pitches("C2 G4 C5"), section("trumpets").slice(0, 3), pitch("C5"));
    expect(low.moved).toEqual([{ pitch: pitch("C2"), instead: pitch("C4") }]);
    const under = assignPitches(pitches("B2 C4"), section("trumpets").slice(0, 2), pitch("C4"));
    expect(under.moved).toEqual([{ pitch: pitch("B2") }]);
    expect(text(under)).toEqual([
      ["tpt1", 60],
      ["tpt2", 60],
    ]);
  });

  it("lets a player rest who reaches no octave of any pitch below the lead", () => {
    const saxes = section("saxes").filter(({ id }) => id === "alto1" || id === "bari");
    const found = assignPitches(pitches("D2"), saxes, pitch("D2"));
    expect(found.resting.map(({ id }) => id)).toEqual(["alto1"]);
  });

  it("keeps everyone inside the range and nobody above the lead, whatever the pitches", () =>
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 36, max: 80 }), { minLength: 1, maxLength: 9 }),
        fc.constantFrom("big-band", "school-band", "six-horn", "four-horn", "three-horn"),
        (notes, lineUp) => {
          const lead = soundingMidi(Math.max(...notes));
          const band = players(lineUp);
          const found = assignPitches(notes.map(soundingMidi), band, lead);
          for (const { player, sounding } of found.placements) {
            expect(canSound(player, sounding)).toBe(true);
            expect(sounding).toBeLessThanOrEqual(lead);
          }
          expect(found.placements.length + found.resting.length).toBe(band.length);
        },
      ),
      { seed: 7, numRuns: 200 },
    ));

  it("puts no chair above a higher chair of the same instrument unless someone is displaced", () =>
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 50, max: 80 }), { minLength: 4, maxLength: 6 }),
        (notes) => {
          const lead = soundingMidi(Math.max(...notes));
          const found = assignPitches(notes.map(soundingMidi), section("trumpets"), lead);
          if (found.displaced.length > 0) return;
          const order = highestFirst(found.placements.map(({ player }) => player));
          const heights = order.map(
            (player) => found.placements.find((one) => one.player === player)?.sounding ?? 0,
          );
          expect(heights).toEqual([...heights].sort((a, b) => b - a));
        },
      ),
      { seed: 7, numRuns: 200 },
    ));
});
