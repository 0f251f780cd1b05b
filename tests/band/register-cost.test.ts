import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import { dynamics } from "../../src/band/dynamics.ts";
import { mutesOf } from "../../src/band/mutes.ts";
import { makePlayer } from "../../src/band/players.ts";
import { canSound, costOfHome, costOfLevel, costOfRegister } from "../../src/band/register-cost.ts";
import { seatIds, seatRow } from "../../src/band/seats.ts";

describe("costs of a player on a pitch", () => {
  it("are whole numbers from 0 up on every note a player can sound", () => {
    const levels = ["school", "semi-pro", "pro"] as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...seatIds),
        fc.constantFrom(...levels),
        fc.constantFrom(...dynamics),
        fc.nat(),
        fc.nat(),
        (seat, level, dynamic, anyMute, anyNote) => {
          const mutes = mutesOf(seatRow(seat).instrument);
          const mute = mutes[anyMute % mutes.length] ?? "open";
          const player = makePlayer({ seat, level, mute });
          const { low, high } = player.range;
          const midi = soundingMidi(low + (anyNote % (high - low + 1)));
          expect(canSound(player, midi)).toBe(true);
          for (const cost of [
            costOfRegister(player, midi, dynamic),
            costOfHome(player, midi),
            costOfLevel(player, midi),
          ])
            expect(Number.isInteger(cost) && cost >= 0).toBe(true);
        },
      ),
      { seed: 7 },
    );
  });

  it("end where the range ends", () => {
    const bari = makePlayer({ seat: "bari" });
    const can = [35, 36, 68, 69].map((midi) => canSound(bari, soundingMidi(midi)));
    expect(can).toEqual([false, true, true, false]);
    expect(() => costOfRegister(bari, soundingMidi(69), "f")).toThrow(RangeError);
  });

  it("read the column of the dynamic", () => {
    const lead = makePlayer({ seat: "tpt1" });
    const at79 = dynamics.map((dynamic) => costOfRegister(lead, soundingMidi(79), dynamic));
    expect(at79).toEqual([6, 6, 6, 2, 2, 1, 1, 1]);
  });

  it("never fall with a mute, and rise most for a Harmon low and loud", () => {
    const open = makePlayer({ seat: "tpt3" });
    const cost = (mute: "open" | "cup" | "harmon", midi: number): number =>
      costOfRegister({ ...open, mute }, soundingMidi(midi), "f");
    for (let midi = 52; midi <= 82; midi += 1)
      for (const mute of ["cup", "harmon"] as const)
        expect(cost(mute, midi)).toBeGreaterThanOrEqual(cost("open", midi));
    expect(cost("harmon", 54) - cost("open", 54)).toBe(6);
    expect(cost("harmon", 70) - cost("open", 70)).toBe(3);
  });
});
