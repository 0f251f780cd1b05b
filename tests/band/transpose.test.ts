import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantity, soundingMidi, type WrittenMidi } from "../../src/base/index.ts";
import { instruments } from "../../src/band/instruments.ts";
import { soundingMinusWritten, toSounding, toWritten } from "../../src/band/transpose.ts";

describe("written and sounding pitch", () => {
  const instrument = fc.constantFrom(...instruments.map(({ id }) => id));

  it("come back from each other on every instrument", () => {
    fc.assert(
      fc.property(instrument, fc.integer({ min: 0, max: 127 }), (id, midi) => {
        expect(toSounding(toWritten(soundingMidi(midi), id), id)).toBe(midi);
        const written = quantity<WrittenMidi>(midi);
        expect(toWritten(toSounding(written, id), id)).toBe(midi);
      }),
      { seed: 7 },
    );
  });

  it("keep intervals as they are", () => {
    fc.assert(
      fc.property(instrument, fc.integer({ min: 40, max: 90 }), fc.nat(24), (id, low, span) => {
        const at = (midi: number): number => toWritten(soundingMidi(midi), id);
        expect(at(low + span) - at(low)).toBe(span);
      }),
      { seed: 7 },
    );
  });

  it("differ by the transposition", () => {
    expect(toSounding(quantity<WrittenMidi>(60), "horn") - 60).toBe(soundingMinusWritten("horn"));
  });
});
