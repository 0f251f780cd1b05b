import { describe, expect, it } from "vitest";
import { instrumentOf, type InstrumentId } from "../../src/band/index.ts";
import { fifthsAdded, keyReading, strictReading } from "../../src/notation/index.ts";
import { fifthsOf, type Key, type Letter } from "../../src/theory/index.ts";

function keyOf(tonic: string): Key {
  const [letter = "C", sign] = tonic;
  return { tonic: { letter: letter as Letter, alteration: sign === "b" ? -1 : 0 }, mode: "major" };
}

function writtenFifths(concert: string, instrument: InstrumentId): number {
  const key = keyOf(concert);
  const strict = strictReading(instrumentOf(instrument).transposition);
  return fifthsOf(key) + fifthsAdded(keyReading(strict, key));
}

describe("the key a player reads", () => {
  // B♭ instruments add two sharps, E♭ instruments three: common practice, no single source.
  it.each<[string, InstrumentId, number]>([
    ["F", "trumpet", 1],
    ["F", "alto-sax", 2],
    ["F", "baritone-sax", 2],
    ["F", "trombone", -1],
    ["Eb", "tenor-sax", -1],
    ["Db", "alto-sax", -2],
  ])("concert %s for %s has %d", (concert, instrument, fifths) =>
    expect(writtenFifths(concert, instrument)).toBe(fifths),
  );

  it("takes the enharmonic key where more than six signs would stand", () =>
    expect(writtenFifths("E", "alto-sax")).toBe(-5));
});
