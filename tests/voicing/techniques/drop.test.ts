import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closeVoicing, dropVoices } from "../../../src/voicing/index.ts";
import { pitches, someChord, someLead } from "./questions.ts";

describe("dropping voices", () => {
  it("counts from the top and lowers by an octave", () =>
    expect(dropVoices(pitches("C4 E4 G4 B4"), [2, 4])).toEqual(pitches("C3 G3 E4 B4")));

  it("refuses voices that are not there", () => {
    expect(() => dropVoices(pitches("C4 E4 G4"), [4])).toThrow(RangeError);
    expect(() => dropVoices(pitches("C4 E4 G4"), [0])).toThrow(RangeError);
  });

  it("is undone by raising what was dropped", () =>
    fc.assert(
      fc.property(
        someChord,
        someLead,
        fc.constantFrom([2], [3], [2, 3]),
        ({ chord, options }, lead, voices) => {
          const close = closeVoicing(chord, lead, options);
          if (!close) return;
          const opened = dropVoices(close, voices);
          const raised = opened.map((one, index) => (index < voices.length ? one + 12 : one));
          expect(raised.sort((a, b) => a - b)).toEqual(close);
        },
      ),
      { seed: 7, numRuns: 300 },
    ));
});
