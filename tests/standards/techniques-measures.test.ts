import { describe, expect, it } from "vitest";
import { makePlayer, type SeatId } from "../../src/band/index.ts";
import { measureAll } from "../../src/metrics/index.ts";
import { interleavingOf, type Voicing } from "../../src/voicing/index.ts";
import { chordOf, onAnyone, pitches, voicingOf } from "../voicing/techniques/questions.ts";

const situation = (symbol: string, voicing: Voicing, dynamic: "f" | "p" = "f") => ({
  chord: chordOf(symbol),
  lead: voicing.placements.at(-1)?.sounding ?? (60 as never),
  dynamic,
  bassSounds: true,
});
const valueOf = (id: string, symbol: string, voicing: Voicing, dynamic: "f" | "p" = "f") =>
  measureAll(voicing, situation(symbol, voicing, dynamic)).find(({ metric }) => metric.id === id)
    ?.measured.value;

// W. Berry, Structural Functions in Music (1976), ch. 2: density-number, density-compression
// (formula from memory); span counted exclusively, an octave being 12. Worked by hand from them.
describe("span, density-compression and mean gap of nine worked examples", () => {
  it.each([
    ["drop 2", "Cmaj7", "G3 C4 E4 B4", 4, 16, "0.250", "5.33"],
    ["close", "Cmaj7", "C4 E4 G4 B4", 4, 11, "0.364", "3.67"],
    ["drop 3", "Cmaj7", "E3 C4 G4 B4", 4, 19, "0.211", "6.33"],
    ["drop 2 and 4", "Cmaj7", "C3 G3 E4 B4", 4, 23, "0.174", "7.67"],
    ["spread", "Cmaj7", "C3 B3 E4 G4 D5", 5, 26, "0.192", "6.50"],
    ["quartal with a third on top", "Dm11", "D3 G3 C4 F4 A4", 5, 19, "0.263", "4.75"],
    ["fifths pair", "Cm11", "C3 G3 D4 Eb4 Bb4 F5", 6, 29, "0.207", "5.80"],
    ["close sixth", "C6", "E4 G4 A4 C5", 4, 8, "0.500", "2.67"],
    ["double lead", "C6", "C4 E4 G4 A4 C5", 5, 12, "0.417", "3.00"],
  ])("%s of %s, %s", (_name, symbol, names, count, reach, compression, gap) => {
    const voicing = onAnyone(pitches(names));
    expect(valueOf("players", symbol, voicing)).toBe(count);
    expect(valueOf("span", symbol, voicing)).toBe(reach);
    expect(valueOf("density-compression", symbol, voicing)?.toFixed(3)).toBe(compression);
    expect(valueOf("mean-gap", symbol, voicing)?.toFixed(2)).toBe(gap);
  });

  // E. M. Harrington, "Density in a Musical Context".
  it("density-compression does not hear inner notes move", () => {
    const one = valueOf("density-compression", "C7", onAnyone(pitches("C3 E3 Bb3 C5")));
    const other = valueOf("density-compression", "C7", onAnyone(pitches("C3 G4 Bb4 C5")));
    expect(other).toBe(one);
  });
});

// D. Schiff, The Ellington Century: muted trumpet, trombone a third lower, clarinet an octave and
// a fourth under the trombone.
describe("W40, a trio across the sections", () => {
  const trio = voicingOf("tpt1=Bb4 tbn1=G4 cl1=D3");

  it("has its widest gap, an octave and a fourth, at the bottom", () => {
    const [widest] = measureAll(trio, situation("Bb", trio)).filter(
      ({ metric }) => metric.id === "widest-gap",
    );
    expect(widest?.measured.value).toBe(17);
    expect(widest?.measured.detail).toBe("octave + P4, D3 to G4.");
  });

  it("has one note a section, so that interleaving says nothing of it", () =>
    expect(interleavingOf(trio).value).toBeNull());
});

// N. Rimsky-Korsakov, Principles of Orchestration (1922), comparison of resonance.
describe("balance units", () => {
  const seats = (...ids: readonly SeatId[]): Voicing => ({
    placements: ids.map((seat, index) => ({
      player: makePlayer({ seat, id: `${seat}-${index}` }),
      sounding: 64 as never,
    })),
  });
  const weigh = (voicing: Voicing, dynamic: "f" | "p") => valueOf("weight", "C", voicing, dynamic);

  it("at f: one trumpet is one trombone, one tuba, two horns, four flutes or clarinets", () => {
    const trumpet = weigh(seats("tpt1"), "f");
    expect(weigh(seats("tbn1"), "f")).toBe(trumpet);
    expect(weigh(seats("tuba1"), "f")).toBe(trumpet);
    expect(weigh(seats("hn1", "hn1"), "f")).toBe(trumpet);
    expect(weigh(seats("cl1", "cl1", "cl1", "cl1"), "f")).toBe(trumpet);
    expect(weigh(seats("fl1", "fl1", "fl1", "fl1"), "f")).toBe(trumpet);
  });

  it("at p: all winds are equal", () => {
    const trumpet = weigh(seats("tpt1"), "p");
    for (const seat of ["cl1", "fl1", "hn1", "tbn1", "tuba1"] as const)
      expect(weigh(seats(seat), "p")).toBe(trumpet);
  });

  it("four trumpets and four trombones weigh 32 at f, 8 at p", () => {
    const brass = seats("tpt1", "tpt2", "tpt3", "tpt4", "tbn1", "tbn2", "tbn3", "btbn");
    expect(weigh(brass, "f")).toBe(32);
    expect(weigh(brass, "p")).toBe(8);
  });
});
