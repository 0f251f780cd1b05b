import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readChord } from "../../src/theory/read-chord.ts";
import { spelledPitchClass } from "../../src/theory/spelled-pitch.ts";
import type { Chord } from "../../src/theory/index.ts";
import {
  basses,
  chord,
  degrees,
  names,
  numbers,
  plainTones,
  qualities,
  refused,
  roots,
  tails,
} from "./support/chords.ts";

describe("readChord", () => {
  it("gives root, bass, family, symbol and display of a slash chord", () => {
    const read = chord(" B♭maj7/D ");
    expect(read).toMatchObject({
      written: "B♭maj7/D",
      symbol: "Bbmaj7/D",
      display: "B♭maj7/D",
      family: "major-seventh",
      root: { letter: "B", alteration: -1 },
      rootPitchClass: 10,
      bass: { letter: "D", alteration: 0 },
      bassPitchClass: 2,
      hasSlashBass: true,
    });
  });

  it("takes the root as the bass where none is printed", () => {
    expect(chord("Eb7")).toMatchObject({
      bass: { letter: "E", alteration: -1 },
      bassPitchClass: 3,
      hasSlashBass: false,
    });
  });

  it("keeps a chord tone in the bass as the tone it is", () => {
    expect(chord("C/E").tones.find((tone) => tone.name === "E")?.role).toBe("third");
  });

  it("adds a foreign bass to the tones, spelled as written", () => {
    const bass = chord("F/F#").tones.find((tone) => tone.role === "bass");
    expect(bass).toMatchObject({ name: "F#", aboveRoot: 1, degree: "b9", kind: "stated" });
    expect(chord("Ebmaj7/F").tones.find((tone) => tone.role === "bass")?.degree).toBe("9");
  });

  it("reads no chord in its spellings", () => {
    for (const symbol of ["N.C.", "NC", "n.c.", " N. C. "])
      expect(chord(symbol)).toMatchObject({ symbol: "N.C.", family: "no-chord", tones: [] });
  });

  it("spells tones by the letters of the chord: the third of A♭ minor is C♭", () => {
    expect(names("Abm")).toBe("Ab Cb Eb");
    expect(names("Cdim7")).toBe("C Eb Gb Bbb");
    expect(names("F#7")).toBe("F# A# C# E");
    expect(names("C7(#9)")).toBe("C D# E G Bb");
    expect(names("Dbm7b5")).toBe("Db Fb Abb Cb");
  });

  it("says so where notes had to leave their letter", () => {
    const read = chord("B##7");
    expect(names("B##7")).toBe("B## E# G# A##");
    expect(read.choices.join(" ")).toMatch(/three accidentals/);
    expect(chord("F#7").choices).toEqual([]);
  });

  it("understands ASCII and typographic signs alike", () => {
    const alike = [
      ["C7(♭9,♯11)", "C7(b9,#11)"],
      ["C∆7", "Cmaj7"],
      ["C△9", "CΔ9"],
      ["C−7", "C-7"],
      ["CØ7", "Cø7"],
      ["Cº7", "C°7"],
      ["A𝄫m", "Abbm"],
      ["F𝄪m7", "F##m7"],
      ["G♭♭", "Gbb"],
    ] as const;
    for (const [typed, plain] of alike) expect(chord(typed).symbol).toBe(chord(plain).symbol);
  });

  it("gives the place of trouble in what was typed, not in plain signs", () => {
    expect(refused("  C7♭9xyz").position).toBe(6);
    expect(refused("𝄞C7").position).toBe(0);
    expect(refused("A𝄫m7xyz").position).toBe(5);
  });

  it("refuses with a clear sentence and symbols that can be read", () => {
    expect(refused("F13b")).toEqual({
      code: "chord-number-missing",
      message: "A flat needs a number after it.",
      position: 3,
      suggestions: ["F13b9", "F7b13", "F13"],
    });
    expect(refused("H7")).toMatchObject({ code: "chord-root", position: 0, suggestions: ["B7"] });
    expect(refused("")).toMatchObject({ code: "chord-empty", position: 0 });
    expect(refused("C7b9#9xyz")).toMatchObject({ position: 6, suggestions: ["C7b9#9"] });
    expect(refused("C7b9xyz/E").suggestions).toEqual(["C7b9/E"]);
  });

  it("asks for a capital root, since a small one could mean minor", () => {
    expect(refused("bb7").suggestions).toEqual(["Bb7"]);
    expect(refused("am7").suggestions).toEqual(["Am7"]);
    expect(refused("c").suggestions).toEqual(["C", "Cm"]);
    expect(refused("C/e").suggestions).toEqual(["C/E", "C"]);
  });

  it("warns that two flats behind the letter belong to the root", () => {
    expect(chord("Bbb5").root.alteration).toBe(-2);
    expect(chord("Bbb5").choices.join(" ")).toMatch(/belong to the root/);
    expect(degrees("Bb(b5)")).toBe("1 3 b5");
  });

  const anySymbol = fc
    .tuple(
      fc.constantFrom(...roots),
      fc.constantFrom(...qualities),
      fc.constantFrom(...numbers),
      fc.array(fc.constantFrom(...tails), { maxLength: 2 }),
      fc.constantFrom(...basses),
    )
    .map(([root, quality, number, tail, bass]) => root + quality + number + tail.join("") + bass);

  it("answers any text at all, with its place and at most three readable suggestions", () => {
    const signs = fc.constantFrom(..."ABCDEFGHabcm°øΔ+-#b♭♯0123456789()[],/ .jMinoadsultx𝄫𝄪");
    const text = fc.oneof(
      fc.string(),
      fc.string({ unit: "binary" }),
      fc.string({ unit: signs, maxLength: 12 }),
      anySymbol,
    );
    fc.assert(
      fc.property(text, (typed) => {
        const read = readChord(typed);
        if (read.ok) return;
        const { message, position, suggestions = [] } = read.problem;
        expect(message).toMatch(/^\S.*[.]$/su);
        expect(position).toBeGreaterThanOrEqual(0);
        expect(position).toBeLessThanOrEqual(typed.length);
        expect(suggestions.length).toBeLessThanOrEqual(3);
        for (const one of suggestions) expect(readChord(one).ok).toBe(true);
      }),
      { seed: 7, numRuns: 3000 },
    );
  });

  const sameChord = ({ written: _written, choices: _choices, ...rest }: Chord) => rest;

  it("gives the same chord when its own symbol or display is read again", () => {
    let count = 0;
    fc.assert(
      fc.property(anySymbol, (typed) => {
        const read = readChord(typed);
        if (!read.ok) return;
        count += 1;
        expect(sameChord(chord(read.value.symbol))).toEqual(sameChord(read.value));
        expect(sameChord(chord(read.value.display))).toEqual(sameChord(read.value));
      }),
      { seed: 7, numRuns: 4000 },
    );
    expect(count).toBeGreaterThan(800);
  });

  it("moves every tone with the root", () => {
    fc.assert(
      fc.property(anySymbol, fc.constantFrom(...roots), (typed, root) => {
        const read = readChord(typed.replace(/\/.*$/, ""));
        if (!read.ok) return;
        const suffix = read.value.symbol.slice(1 + Math.abs(read.value.root.alteration));
        const moved = chord(root + suffix);
        const step = moved.rootPitchClass - read.value.rootPitchClass;
        expect(moved.tones.map((tone) => tone.pitchClass)).toEqual(
          read.value.tones.map((tone) => (tone.pitchClass + step + 12) % 12),
        );
        expect(moved.tones.map((tone) => tone.degree)).toEqual(
          read.value.tones.map((tone) => tone.degree),
        );
      }),
      { seed: 7, numRuns: 2000 },
    );
  });

  it("spells every tone so that it sounds its pitch class, each class once, root upwards", () => {
    fc.assert(
      fc.property(anySymbol, (typed) => {
        const read = readChord(typed);
        if (!read.ok || read.value.family === "no-chord") return;
        const { tones, rootPitchClass } = read.value;
        for (const tone of tones) {
          expect(spelledPitchClass(tone.spelled)).toBe(tone.pitchClass);
          expect((rootPitchClass + tone.aboveRoot) % 12).toBe(tone.pitchClass);
          expect(Math.abs(tone.spelled.alteration)).toBeLessThanOrEqual(2);
        }
        const above = tones.map((tone) => tone.aboveRoot);
        expect(above).toEqual([...new Set(above)].sort((a, b) => a - b));
        expect(plainTones(read.value)[0]?.role).toBe("root");
      }),
      { seed: 7, numRuns: 3000 },
    );
  });
});
