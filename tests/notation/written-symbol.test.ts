import { describe, expect, it } from "vitest";
import { instrumentOf, type InstrumentId } from "../../src/band/index.ts";
import type { Chord } from "../../src/theory/index.ts";
import { readingOf } from "../../src/notation/transposed-spelling.ts";
import { symbolFor } from "../../src/notation/written-symbol.ts";
import { chord, F13 } from "./support/voicings.ts";

function symbol(concert: Chord, instrument: InstrumentId): string {
  return symbolFor(concert, readingOf(concert, instrumentOf(instrument).transposition));
}

describe("chord symbols of transposing parts", () => {
  it("move the root and keep the rest", () => {
    expect(symbol(F13, "alto-sax")).toBe("D13");
    expect(symbol(F13, "trumpet")).toBe("G13");
    expect(symbol(F13, "tenor-sax")).toBe("G13");
    expect(symbol(F13, "trombone")).toBe("F13");
  });

  it("move the bass of a slash chord too", () => {
    const slash = chord("B♭maj7/D", "major-seventh", "Bb 1, D 3, F 5, A 7", "D");
    expect(symbol(slash, "alto-sax")).toBe("Gmaj7/B");
    expect(symbol(slash, "trumpet")).toBe("Cmaj7/E");
  });

  it("do not take the slash of 6/9 for a bass", () => {
    const sixNine = chord("C6/9", "sixth", "C 1, E 3, G 5, A 6, D 9");
    expect(symbol(sixNine, "alto-sax")).toBe("A6/9");
  });

  it("agree with the notes where the chord is respelled", () => {
    const FSharp7 = chord("F♯7", "dominant", "F# 1, A# 3, C# 5, E b7");
    expect(symbol(FSharp7, "trumpet")).toBe("A♭7");
  });

  it("stay as they are for no chord", () => {
    expect(symbol(chord("N.C.", "no-chord", ""), "alto-sax")).toBe("N.C.");
  });
});
