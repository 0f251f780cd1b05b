import { describe, expect, it } from "vitest";
import { sizedFor, thinned } from "../../../src/voicing/techniques/section-size.ts";
import { chordOf, pitches } from "./questions.ts";

describe("a voicing for any number of players", () => {
  const chord = chordOf("C7");
  const close = pitches("E4 G4 Bb4 C5");

  it("gives up the fifth first, then the seventh, never the lead", () => {
    expect(thinned(chord, close, 3)).toEqual(pitches("E4 Bb4 C5"));
    expect(thinned(chord, close, 2)).toEqual(pitches("E4 C5"));
    expect(thinned(chord, close, 1)).toEqual(pitches("C5"));
  });

  it("gives up the root before a guide tone", () =>
    expect(thinned(chord, pitches("Bb3 C4 E4 G4"), 3)).toEqual(pitches("Bb3 E4 G4")));

  it("doubles the lead an octave lower, then from the top in unison", () => {
    expect(sizedFor(chord, close, 5)).toEqual(pitches("C4 E4 G4 Bb4 C5"));
    expect(sizedFor(chord, close, 7)).toEqual(pitches("C4 E4 G4 Bb4 Bb4 C5 C5"));
  });

  it("has one pitch for each player", () => {
    for (let players = 1; players <= 9; players++)
      expect(sizedFor(chord, close, players)).toHaveLength(players);
  });
});
