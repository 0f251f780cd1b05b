import { describe, expect, it } from "vitest";
import { cochlearInput } from "../../src/acoustics/iso532-2-cochlea.ts";
import { excitationAt, lowerSideFactors } from "../../src/acoustics/iso532-2-excitation.ts";
import type { Spectrum } from "../../src/acoustics/spectrum.ts";
import { randomNotes } from "./support/sounds.ts";
import { grid, newPass, prepareAll } from "./support/workshop.ts";

const SPECTRA = randomNotes(13, 21);
const NOTES = prepareAll(SPECTRA);

const exactly = (spectrum: Spectrum): Float64Array => {
  const input = cochlearInput(spectrum);
  return excitationAt(input, lowerSideFactors(input), grid.hz);
};

describe("a pass of excitation", () => {
  it("is exact for a note alone", () => {
    const pass = newPass();
    NOTES.forEach((note, index) => {
      pass.run([note]);
      const exact = exactly(SPECTRA[index]!);
      const most = Math.max(...exact);
      pass.excitation.forEach((value, place) =>
        expect(Math.abs(value - exact[place]!)).toBeLessThan(most * 1e-6),
      );
    });
  });

  it("keeps within half a decibel of the full reckoning for thirteen notes", () => {
    const pass = newPass();
    pass.run(NOTES);
    const exact = exactly(SPECTRA.flat());
    for (let place = grid.firstChannel; place < grid.endChannel; place += 1)
      if (exact[place]! > 10)
        expect(Math.abs(10 * Math.log10(pass.excitation[place]! / exact[place]!))).toBeLessThan(
          0.5,
        );
  });

  it("shares its excitation out among the notes without a rest", () => {
    const pass = newPass();
    pass.run(NOTES);
    for (const place of [30, 50, 70, 90]) {
      const sum = NOTES.reduce((all, note) => all + pass.share(note, place), 0);
      expect(sum / pass.excitation[place]!).toBeCloseTo(1, 6);
    }
  });

  it("forgets the run before", () => {
    const pass = newPass();
    pass.run(NOTES);
    pass.run([NOTES[0]!]);
    const again = newPass();
    again.run([NOTES[0]!]);
    expect(pass.excitation).toEqual(again.excitation);
    pass.run([]);
    expect(pass.excitation.every((value) => value === 0)).toBe(true);
  });
});
