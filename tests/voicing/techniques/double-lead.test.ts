import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  closeVoicing,
  doubleLead,
  dropTwoDoubleLead,
  fivePartWithTension,
} from "../../../src/voicing/index.ts";
import { chordOf, everyTone, pitch, pitches, plain, someChord, someLead } from "./questions.ts";

describe("doubled lead", () => {
  it("lies an octave under the lead, lowest in close, above the dropped voice in drop 2", () =>
    fc.assert(
      fc.property(someChord, someLead, ({ chord, options }, lead) => {
        const close = closeVoicing(chord, lead, options);
        if (!close) return;
        expect(doubleLead(close)).toEqual([lead - 12, ...close]);
        expect(dropTwoDoubleLead(close).indexOf((lead - 12) as never)).toBe(1);
      }),
      { seed: 7 },
    ));

  it("needs a voicing", () => expect(() => doubleLead([])).toThrow(RangeError));
});

describe("five-part close with a tension", () => {
  it("puts the ninth where the doubled root would be", () => {
    const chord = chordOf("C6");
    const close = closeVoicing(chord, pitch("C5"), plain(chord)) ?? [];
    expect(fivePartWithTension(chord, close, { ticked: [0, 2, 4, 7, 9] })).toEqual(
      pitches("D4 E4 G4 A4 C5"),
    );
  });

  it("is not there when every ticked tone sounds already", () => {
    const chord = chordOf("C6");
    const close = closeVoicing(chord, pitch("C5"), plain(chord)) ?? [];
    expect(fivePartWithTension(chord, close, plain(chord))).toBeUndefined();
  });

  it("adds one note below, never a minor ninth under another", () =>
    fc.assert(
      fc.property(someChord, someLead, ({ chord, options }, lead) => {
        const close = closeVoicing(chord, lead, options);
        const five = close && fivePartWithTension(chord, close, everyTone);
        if (!close || !five) return;
        expect(five.slice(1)).toEqual(close);
        expect(close.some((one) => one - (five[0] ?? 0) === 13)).toBe(false);
      }),
      { seed: 7 },
    ));
});
