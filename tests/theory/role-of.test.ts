import { describe, expect, it } from "vitest";
import { roleOf } from "../../src/theory/role-of.ts";
import { chord } from "./support/chords.ts";

const parts = (symbol: string) => {
  const read = chord(symbol);
  return Array.from({ length: 12 }, (_, above) => roleOf(above, read)).join("");
};

describe("roleOf", () => {
  //                                          C  Db D  Eb E  F  F# G  Ab A  Bb B
  const known: readonly (readonly [string, string])[] = [
    ["C7", "RATA3XA5AT7X"],
    ["F13", "RXTX3XA5XT7X"],
    ["C7alt", "RAXA3XAXAX7X"],
    ["Cmaj7", "RXTX3XT5XTX7"],
    ["C6", "RXTX3XT5X7XT"],
    ["Cm6", "RXT3XTX5X7XT"],
    ["Cm9", "RXT3XTX5XX7X"],
    ["Cm7b5", "RXT3XT5XTX7X"],
    ["Cdim7", "RXT3XT5XT7XT"],
    ["C7sus4", "RATAT3X5AT7X"],
    ["C11", "RXTXT3X5AT7X"],
    ["Csus2", "RX3XXXX5XTXX"],
    ["C+", "RXTX3XTX5XXX"],
    ["C7#5", "RATA3XAX5X7X"],
    ["C7b13", "RATA3XA5AX7X"],
  ];

  it.each(known)("finds the part of every note in %s", (symbol, expected) => {
    expect(parts(symbol)).toBe(expected);
  });

  it("lets a bass foreign to the chord act as its root, a tension in the bass stay one", () => {
    expect(roleOf(8, chord("E/C"))).toBe("R");
    expect(roleOf(2, chord("Ebmaj7/F"))).toBe("T");
    expect(roleOf(1, chord("C7/Db"))).toBe("A");
  });
});
