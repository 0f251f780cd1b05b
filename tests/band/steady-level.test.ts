import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantity, soundingMidi, type Db } from "../../src/base/index.ts";
import { dynamics } from "../../src/band/dynamics.ts";
import { instruments } from "../../src/band/instruments.ts";
import { mutesOf } from "../../src/band/mutes.ts";
import { soundPowerTable } from "../../src/band/sound-power-table.ts";
import { steadyLevelOf } from "../../src/band/steady-level.ts";

describe("the level of a steady note", () => {
  it("is the sound power less 11 dB one metre away", () => {
    // Free field: -10 lg(4π) = -10.99 dB, rounded in textbooks.
    expect(-10 * Math.log10(4 * Math.PI)).toBeCloseTo(-11, 1);
    const request = { instrument: "trumpet", sounding: soundingMidi(67), mute: "open" } as const;
    expect(steadyLevelOf({ ...request, dynamic: "f" })).toBe(90);
  });

  it("rises with every dynamic on every note of every instrument and mute", () => {
    for (const { id, range } of instruments)
      for (const mute of mutesOf(id))
        for (let midi = Number(range.low); midi <= range.high; midi += 1) {
          const found = dynamics.map((dynamic) =>
            steadyLevelOf({ instrument: id, sounding: soundingMidi(midi), dynamic, mute }),
          );
          expect(
            found.every((level, index) => index === 0 || level > (found[index - 1] ?? 0)),
          ).toBe(true);
        }
  });

  it("follows the trim of a stronger or weaker player to the decibel", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...instruments),
        fc.double({ min: -12, max: 12, noNaN: true }),
        (instrument, db) => {
          const request = {
            instrument: instrument.id,
            sounding: instrument.range.low,
            dynamic: "mf",
            mute: "open",
          } as const;
          const trimmed = steadyLevelOf({ ...request, trim: quantity<Db>(db) });
          expect(trimmed - steadyLevelOf(request)).toBeCloseTo(db, 9);
        },
      ),
      { seed: 7 },
    );
  });

  it("comes from well-formed rows: registers in order, levels rising, source named", () => {
    for (const { id } of instruments) {
      const { levels, registers, source } = soundPowerTable[id];
      const steps = dynamics.map((dynamic) => levels[dynamic]);
      expect(steps).toEqual([...steps].sort((a, b) => a - b));
      const places = registers.map(([midi]) => midi);
      expect(places).toEqual([...new Set(places)].sort((a, b) => a - b));
      expect(source).not.toBe("");
    }
  });
});
