import fc from "fast-check";
import { Note } from "tonal";
import { describe, expect, it } from "vitest";
import { midiToHz, quantity, soundingMidi } from "../../src/base/index.ts";
import type { Hertz, SoundingMidi } from "../../src/base/index.ts";

describe("pitch to hertz", () => {
  // ISO 16:1975: A4 = 440 Hz; the others are the equal-tempered keys of a piano of 88 keys.
  it.each([
    [69, 440],
    [57, 220],
    [21, 27.5],
    [60, 261.6256],
    [108, 4186.009],
  ])("gives MIDI note %i its frequency, %f Hz", (midi, hz) => {
    expect(midiToHz(soundingMidi(midi))).toBeCloseTo(hz, 3);
  });

  it("agrees with the library tonal on every MIDI note", () => {
    for (let midi = 0; midi <= 127; midi++)
      expect(midiToHz(soundingMidi(midi))).toBeCloseTo(Note.freq(Note.fromMidi(midi)) ?? NaN, 9);
  });

  it("doubles with each octave and follows the tuning", () => {
    const note = fc.integer({ min: 0, max: 115 });
    fc.assert(
      fc.property(note, fc.double({ min: 400, max: 480, noNaN: true }), (midi, a4) => {
        const tuning = quantity<Hertz>(a4);
        const low = midiToHz(soundingMidi(midi), tuning);
        expect(midiToHz(soundingMidi(midi + 12), tuning) / low).toBeCloseTo(2, 9);
        expect(low / midiToHz(soundingMidi(midi))).toBeCloseTo(a4 / 440, 9);
      }),
      { seed: 7 },
    );
  });

  it("takes fractions of a key for players who are a little out of tune", () => {
    // 50 cents are a factor of the 24th root of two.
    const raised = midiToHz(quantity<SoundingMidi>(69.5));
    expect(raised / 440).toBeCloseTo(2 ** (1 / 24), 12);
  });
});
