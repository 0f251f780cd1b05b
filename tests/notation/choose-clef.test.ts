import { describe, expect, it } from "vitest";
import { instrumentOf, type InstrumentId } from "../../src/band/index.ts";
import type { Letter, SpelledPitch } from "../../src/theory/index.ts";
import { concertClef, grandStaffClefs } from "../../src/notation/choose-clef.ts";

function pitch(name: string): SpelledPitch {
  const [letter = "C", octave = "4"] = name;
  return { letter: letter as Letter, alteration: 0, octave: Number(octave) };
}

const clefFor = (name: string, id: InstrumentId) => {
  const { clef, transposition } = instrumentOf(id);
  return concertClef(pitch(name), clef, transposition);
};

const split = (names: string) => grandStaffClefs(names.split(" ").map(pitch)).join(" ");

describe("clefs at concert pitch (common practice, no single source)", () => {
  it("leave trombones in bass clef, high notes too", () => {
    expect(clefFor("B4", "trombone")).toBe("bass");
    expect(clefFor("F2", "bass-trombone")).toBe("bass");
  });

  it("take the baritone and a low tenor to bass clef", () => {
    expect(clefFor("F2", "baritone-sax")).toBe("bass");
    expect(clefFor("A3", "tenor-sax")).toBe("bass");
    expect(clefFor("C4", "tenor-sax")).toBe("treble");
  });

  it("leave trumpets and altos in treble clef", () => {
    expect(clefFor("E3", "trumpet")).toBe("treble");
    expect(clefFor("F3", "alto-sax")).toBe("treble");
  });
});

describe("the two staves of a grand staff (common practice, no single source)", () => {
  it("divide at middle C", () => {
    expect(split("F2 A3 C4 E4 G4 D5")).toBe("bass bass treble treble treble treble");
  });

  it("keep a close chord around middle C together", () => {
    expect(split("B3 D4 F4 A4")).toBe("treble treble treble treble");
    expect(split("C3 E3 G3 C4")).toBe("bass bass bass bass");
  });

  it("put a low note alone in the bass", () => {
    expect(split("A3")).toBe("bass");
    expect(split("C4")).toBe("treble");
  });

  it("have nothing to divide in silence", () => {
    expect(grandStaffClefs([])).toEqual([]);
  });
});
