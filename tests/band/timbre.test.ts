import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { midiToHz, soundingMidi } from "../../src/base/index.ts";
import type { Dynamic, InstrumentId, Partial } from "../../src/band/band-types.ts";
import { dynamics } from "../../src/band/dynamics.ts";
import { instruments } from "../../src/band/instruments.ts";
import { mutesOf } from "../../src/band/mutes.ts";
import { steadyLevelOf } from "../../src/band/steady-level.ts";
import { partialsOf, TIMBRE_DISTANCE_METRES } from "../../src/band/timbre.ts";
import { brightnessHz, totalDb } from "./spectrum.ts";

const open = (instrument: InstrumentId, midi: number, dynamic: Dynamic): readonly Partial[] =>
  partialsOf({ instrument, sounding: soundingMidi(midi), dynamic, mute: "open" });

/** Every instrument, any note of it or a little beyond, any mute it takes, any dynamic. */
const request = fc
  .record({
    instrument: fc.constantFrom(...instruments),
    dynamic: fc.constantFrom(...dynamics),
    note: fc.nat(),
    mute: fc.nat(),
  })
  .map(({ instrument, dynamic, note, mute }) => {
    const { low, high } = instrument.range;
    const mutes = mutesOf(instrument.id);
    return {
      instrument: instrument.id,
      sounding: soundingMidi(low + (note % (high - low + 5))),
      dynamic,
      mute: mutes[mute % mutes.length] ?? "open",
    };
  });

describe("partials of a note", () => {
  it("are stated one metre away", () => expect(TIMBRE_DISTANCE_METRES).toBe(1));

  it("ascend from the fundamental, stay under 12 kHz and within 70 dB of the strongest", () => {
    fc.assert(
      fc.property(request, (asked) => {
        const partials = partialsOf(asked);
        const top = Math.max(...partials.map(({ dbSpl }) => dbSpl));
        expect(partials[0]?.hz).toBeCloseTo(midiToHz(asked.sounding), 6);
        for (const [index, { hz, dbSpl }] of partials.entries()) {
          expect(hz).toBeGreaterThan(partials[index - 1]?.hz ?? 0);
          expect(hz).toBeLessThanOrEqual(12_000);
          expect(dbSpl).toBeGreaterThan(top - 70);
        }
      }),
      { seed: 7, numRuns: 400 },
    );
  });

  it("add up to the level of the note", () => {
    fc.assert(
      fc.property(request, (asked) => {
        expect(totalDb(partialsOf(asked))).toBeCloseTo(steadyLevelOf(asked), 9);
      }),
      { seed: 7, numRuns: 400 },
    );
  });

  it("are the same whenever they are asked for", () => {
    fc.assert(
      fc.property(request, (asked) => {
        expect(partialsOf({ ...asked })).toEqual(partialsOf(asked));
      }),
      { seed: 7 },
    );
  });

  it("are whole multiples of the fundamental on winds", () => {
    for (const { id, range, section } of instruments) {
      if (section === "rhythm") continue;
      const partials = open(id, range.low + 7, "f");
      const fundamental = partials[0]?.hz ?? NaN;
      for (const { hz } of partials) {
        const number = hz / fundamental;
        expect(number).toBeCloseTo(Math.round(number), 6);
      }
    }
  });

  it("spread upwards on stiff strings, most on the highest notes of the piano", () => {
    // Stretched partials n·f·sqrt(1 + B·n²); B = 4e-4 at C4, 1e-2 at C7, value from memory.
    const centsOfFourth = (midi: number): number => {
      const partials = open("piano", midi, "f");
      return 1200 * Math.log2((partials[3]?.hz ?? NaN) / (4 * (partials[0]?.hz ?? NaN)));
    };
    expect(centsOfFourth(60)).toBeCloseTo(600 * Math.log2((1 + 16 * 4e-4) / (1 + 4e-4)), 6);
    expect(centsOfFourth(84)).toBeGreaterThan(centsOfFourth(60));
  });

  it("never get darker by playing louder, on any instrument", () => {
    for (const { id, range } of instruments)
      for (let midi = Number(range.low); midi <= range.high; midi += 1) {
        const found = dynamics.map((dynamic) => brightnessHz(open(id, midi, dynamic)));
        for (const [index, value] of found.entries())
          expect(value, `${id} ${midi} ${dynamics[index] ?? ""}`).toBeGreaterThanOrEqual(
            (found[index - 1] ?? 0) - 1e-9,
          );
      }
  });

  it("lose their high end faster than their level when a wind plays softer", () => {
    const high = (partials: readonly Partial[]): number =>
      totalDb(partials.filter(({ hz }) => hz > 2000));
    for (const id of ["trumpet", "trombone", "alto-sax", "tenor-sax", "clarinet"] as const) {
      const [loud, soft] = [open(id, 62, "f"), open(id, 62, "p")];
      expect(high(loud) - high(soft)).toBeGreaterThan(totalDb(loud) - totalDb(soft));
    }
  });

  it("change their shape with a mute", () => {
    const asked = { instrument: "trumpet", sounding: soundingMidi(67), dynamic: "mf" } as const;
    const shape = (mute: "open" | "cup"): number => {
      const partials = partialsOf({ ...asked, mute });
      return (partials[8]?.dbSpl ?? NaN) - (partials[1]?.dbSpl ?? NaN);
    };
    expect(shape("cup")).toBeLessThan(shape("open"));
  });
});
