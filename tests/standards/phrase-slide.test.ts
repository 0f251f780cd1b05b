import { describe, expect, it } from "vitest";
import { spelledToMidi } from "../../src/theory/index.ts";
import { slidePositions } from "../../src/phrase/slide-positions.ts";
import { spelled } from "../phrase/support/phrases.ts";

// Wikibooks, "Trombone", Slide Positions: notes of each position, lowest first. Misprints of the page
// (B#3 for C3, B#5 and B#4 for C5 and B4) are read as the notes they stand for.
const rows: readonly (readonly [position: number, notes: string])[] = [
  [1, "Bb2 F3 Bb3 D4 F4 Bb4 D5"],
  [2, "A2 E3 A3 C#4 E4 C#5"],
  [3, "Ab2 Eb3 Ab3 C4 Eb4 C5"],
  [4, "G2 D3 G3 B3 D4 B4"],
  [5, "F#2 C#3 F#3 A#3 C#4 A#4"],
  [6, "F2 C3 F3 A3 C4 A4"],
  [7, "E2 B2 E3 G#3 B3 G#4"],
];

describe("slide positions of the tenor trombone (Wikibooks, Trombone, Slide Positions)", () => {
  it.each(rows)("position %i gives %s", (position, notes) => {
    for (const note of notes.split(" "))
      expect(slidePositions("trombone", spelledToMidi(spelled(note))), note).toContain(position);
  });

  it("has no E flat below the staff without the attachment", () =>
    expect(slidePositions("trombone", spelledToMidi(spelled("Eb2")))).toEqual([]));

  it("puts notes of sixth and seventh position into first and second with the F attachment", () => {
    expect(slidePositions("bass-trombone", spelledToMidi(spelled("F2")))).toContain(1);
    expect(slidePositions("bass-trombone", spelledToMidi(spelled("C3")))).toContain(1);
    expect(slidePositions("bass-trombone", spelledToMidi(spelled("E2")))).toContain(2);
    expect(slidePositions("bass-trombone", spelledToMidi(spelled("B2")))).toContain(2);
  });
});
