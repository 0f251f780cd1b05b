import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tickedTones } from "../../../src/theory/index.ts";
import { closeVoicing } from "../../../src/voicing/index.ts";
import { aboveRoot, categoryOf } from "../../../src/voicing/techniques/categories.ts";
import { highestBelow, lowToHigh } from "../../../src/voicing/techniques/close.ts";
import { chordOf, pitch, pitches, plain, someChord, someLead } from "./questions.ts";

const under = (symbol: string, lead: string, colour: "plain" | "tensions" = "plain") => {
  const chord = chordOf(symbol);
  return closeVoicing(chord, pitch(lead), { ticked: tickedTones(chord, colour) });
};

describe("close voicing", () => {
  it("has three notes for a triad", () => expect(under("C", "G4")).toEqual(pitches("C4 E4 G4")));

  it("takes the tensions a symbol prints", () =>
    expect(under("F13", "D5")).toEqual(pitches("Eb4 G4 A4 D5")));

  it("gives up a printed tension that lies a semitone under the lead", () =>
    expect(under("C7#9", "E5")).toEqual(pitches("G4 Bb4 C5 E5")));

  it("clears a semitone inside by the ninth once tensions are ticked", () => {
    expect(under("Cmaj7", "G4")).toEqual(pitches("B3 C4 E4 G4"));
    expect(under("Cmaj7", "G4", "tensions")).toEqual(pitches("B3 D4 E4 G4"));
  });

  it("reads a fourth over a major chord as a suspension without the major seventh", () =>
    expect(under("Cmaj7", "F4")).toEqual(pitches("G3 A3 C4 F4")));

  it("lets a melody that is the major seventh of a dominant replace the seventh", () =>
    expect(under("C7", "B4")).toEqual(pitches("C4 E4 G4 B4")));

  it("is not there for two-note chords and for no chord", () => {
    expect(under("C5", "G4")).toBeUndefined();
    expect(under("N.C.", "G4")).toBeUndefined();
  });

  it("keeps to Lindsay's rule over random chords and melodies: one octave, one note a place, no semitone under the lead", () =>
    fc.assert(
      fc.property(someChord, someLead, ({ chord, options }, lead) => {
        const close = closeVoicing(chord, lead, options);
        if (!close) return;
        const places = close.map((one) => categoryOf(chord, aboveRoot(chord, one)));
        expect(close.at(-1)).toBe(lead);
        expect(lead - (close[0] ?? 0)).toBeLessThan(12);
        expect(lead - (close.at(-2) ?? 0)).toBeGreaterThan(1);
        expect(new Set(places).size).toBe(close.length);
      }),
      { seed: 7, numRuns: 500 },
    ));

  it("does not depend on the order in which tones are ticked", () =>
    fc.assert(
      fc.property(someChord, someLead, ({ chord, options }, lead) => {
        const turned = { ticked: [...options.ticked].reverse() };
        expect(closeVoicing(chord, lead, turned)).toEqual(closeVoicing(chord, lead, options));
      }),
      { seed: 7 },
    ));
});

describe("placing tones", () => {
  it("finds the highest pitch strictly below another", () => {
    const chord = chordOf("C");
    expect(highestBelow(chord, 4, pitch("G4"))).toBe(pitch("E4"));
    expect(highestBelow(chord, 7, pitch("G4"))).toBe(pitch("G3"));
    expect(() => highestBelow(chord, 7, 5 as never)).toThrow(RangeError);
  });

  it("sorts a copy", () => {
    const given = pitches("G4 C4");
    expect(lowToHigh(given)).toEqual(pitches("C4 G4"));
    expect(given).toEqual(pitches("G4 C4"));
    expect(plain(chordOf("C")).ticked).toEqual([0, 4, 7]);
  });
});
