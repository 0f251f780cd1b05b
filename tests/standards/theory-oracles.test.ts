import { createRequire } from "node:module";
import type * as chordSymbol from "chord-symbol";
import { Chord, Interval, Note } from "tonal";
import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import { pitchName, readChord, readPitch } from "../../src/theory/index.ts";
import { parseDegree } from "../../src/theory/degree.ts";
import { chord, degrees, plainTones } from "../theory/support/chords.ts";

// Two general-purpose libraries judge the reader: tonal 6.4.3 and chord-symbol 4.0.0 (both MIT).
// Neither is the truth where they differ; every difference is listed below with its reason.
const { chordParserFactory } = createRequire(import.meta.url)(
  "chord-symbol/lib/chord-symbol.js",
) as typeof chordSymbol;
const parse = chordParserFactory({ notationSystems: ["english"] });

const accepted =
  `C Cm C- Cmin C+ Caug C° Cdim Co C6 Cm6 C-6 C6/9 C69 Cm6/9 C-69 Cmaj7 CMaj7 CM7 CΔ7 CΔ C^7 Cma7
  Cj7 Cmaj9 CΔ9 Cmaj13 Cmaj9#11 Cmaj7#11 Cmaj7(#11) Cmaj7#5 Bbmaj7#5 C+maj7 Cmaj7b5 C7 C9 C11 C13
  C7b9 C7#9 C7#11 C9#11 C13#11 C13b9 C7b13 C7b9b13 C7#9b13 C7(b9,#11) C7(b9,b13) C7(#9#5) C7b5 C7#5
  C+7 C7+ Caug7 C7alt Calt C7sus4 C7sus C9sus4 C9sus C13sus4 C13sus C7susb9 Csus2 Csus4 Csus Cm7 C-7
  Cmin7 Cmi7 Cm9 C-9 Cm11 C-11 Cm13 Cm7b5 Cmin7b5 C-7b5 C-7(b5) Cø7 Cø Cm9b5 C°7 Cdim7 Co7 CmMaj7
  Cm(maj7) CminMaj7 C-Δ7 C-maj7 CmMaj9 C°maj7 Cadd9 C(add9) Cmadd9 C2 C5 C7omit3 C7no5 C/E F#m7/C#
  Bb13/Ab D7/C C7/Bb Am7/D Ebmaj7/F C♯m7 B♭7 Cb7 E#7 Fbmaj7 B##7 CMA7 Cmi C7(#9) C7#9#5 Bbmaj7/D
  C7-9 C7+9 C∆7 C△7 C7/9 Cmaj7(9,#11)`.split(/\s+/);

const classes = (semitones: readonly number[]) =>
  [...new Set(semitones.map((one) => ((one % 12) + 12) % 12))].sort((a, b) => a - b).join(" ");
const ours = (symbol: string) => classes(plainTones(chord(symbol)).map((tone) => tone.aboveRoot));

describe("chords against tonal 6.4.3", () => {
  /** Symbols tonal does not know: brackets, ♭ ♯, some spellings. */
  const unread = new Set(
    `Cm6/9 CΔ7 Cj7 Cmaj7(#11) Cmaj7b5 C7(b9,#11) C7(b9,b13) C7(#9#5) Calt C7susb9 Cmin7b5 C-7(b5)
    Cø7 Cm(maj7) CminMaj7 C°maj7 C(add9) C7omit3 C♯m7 B♭7 CMA7 Cmi C7(#9) C7-9 C7+9 C∆7 C△7 C7/9
    Cmaj7(9,#11)`.split(/\s+/),
  );
  /** What it has instead, and why ours stands. */
  const differs: Readonly<Record<string, readonly [theirs: string, reason: string]>> = {
    C7b9b13: ["0 1 4 7 8 10", "it keeps the fifth here, yet drops it in C7b13; ♭13 replaces 5"],
    "C7#9b13": ["0 3 4 7 8 10", "the same"],
    C7alt: ["0 3 4 8 10", "it picks ♯9 and ♯5; altered means all four altered tensions"],
    Cm13: ["0 2 3 7 9 10", "it leaves out the eleventh, which does not rub against a minor third"],
    "Am7/D": ["0 3 5 7 10", "it counts the slash bass as a chord tone; ours has the role bass"],
    "Ebmaj7/F": ["0 2 4 7 11", "the same"],
  };

  it.each(accepted)("%s has the same notes", (symbol) => {
    const read = Chord.get(symbol);
    expect(read.empty || read.notes.length === 0).toBe(unread.has(symbol));
    if (unread.has(symbol)) return;
    const root = chord(symbol).rootPitchClass;
    const theirs = classes(read.notes.map((note) => Note.chroma(note) - root));
    expect(theirs).toBe(differs[symbol]?.[0] ?? ours(symbol));
    if (differs[symbol] !== undefined) expect(ours(symbol)).not.toBe(theirs);
  });

  it("spells the same notes wherever it reads a symbol and needs no triple accidental", () => {
    const checked = accepted.filter(
      (symbol) =>
        !unread.has(symbol) && differs[symbol] === undefined && !/^B##|^C11$/.test(symbol),
    );
    expect(checked.length).toBeGreaterThan(80);
    for (const symbol of checked) {
      const theirs = [...Chord.get(symbol).notes].sort().join(" ");
      const own = plainTones(chord(symbol)).map((tone) => tone.name);
      expect(own.sort().join(" "), symbol).toBe(theirs);
    }
  });
});

describe("chords against chord-symbol 4.0.0", () => {
  const unread = new Set(["Cj7", "B##7", "C∆7", "C△7", "C7/9", "Cmaj7(9,#11)"]);
  const differs: Readonly<Record<string, readonly [theirs: string, reason: string]>> = {
    "C7-9": ["0 2 3 7 10", "it takes the dash for a minor sign; players mean ♭9"],
    "C7+9": ["0 2 4 8 10", "it takes the plus for a raised fifth; players mean ♯9"],
  };

  it.each(accepted)("%s has the same notes", (symbol) => {
    const read = parse(symbol);
    const normalized = "normalized" in read ? read.normalized : undefined;
    expect(normalized === undefined).toBe(unread.has(symbol));
    if (normalized === undefined) return;
    const theirs = classes(normalized.semitones);
    expect(theirs).toBe(differs[symbol]?.[0] ?? ours(symbol));
    if (differs[symbol] !== undefined) expect(ours(symbol)).not.toBe(theirs);
    // It names the roots of rare keys plainly (B for Cb), so keys are compared, not names.
    const { rootPitchClass, bassPitchClass, hasSlashBass } = chord(symbol);
    expect(Note.chroma(normalized.rootNote)).toBe(rootPitchClass);
    expect(hasSlashBass).toBe(Boolean(normalized.bassNote));
    if (hasSlashBass) expect(Note.chroma(normalized.bassNote)).toBe(bassPitchClass);
  });

  it("refuses what ours refuses: roots outside A to G, rubbish behind the chord, nothing", () => {
    for (const symbol of ["H7", "C7b9#9xyz", ""]) {
      expect("error" in parse(symbol), symbol).toBe(true);
      expect(readChord(symbol).ok, symbol).toBe(false);
    }
  });
});

describe("pitches and degrees against tonal 6.4.3", () => {
  it("gives every spelling the MIDI number it has there", () => {
    for (const letter of "CDEFGAB")
      for (const signs of ["bb", "b", "", "#", "##"])
        for (let octave = 0; octave <= 8; octave++) {
          const text = `${letter}${signs}${octave}`;
          const read = readPitch(text);
          expect(read.ok && read.value.sounding, text).toBe(Note.midi(text));
        }
  });

  it("names every key as a note of that number", () => {
    for (let midi = 12; midi <= 127; midi++)
      expect(Note.midi(pitchName(soundingMidi(midi)))).toBe(midi);
  });

  it("counts the semitones of degrees as intervals", () => {
    const intervals = {
      b9: "9m",
      "9": "9M",
      "#9": "9A",
      b3: "3m",
      "3": "3M",
      "11": "11P",
      "#11": "11A",
      b5: "5d",
      "5": "5P",
      "#5": "5A",
      b13: "13m",
      "13": "13M",
      bb7: "7d",
      b7: "7m",
      "7": "7M",
    };
    for (const [degree, interval] of Object.entries(intervals))
      expect(parseDegree(degree).aboveRoot, degree).toBe((Interval.semitones(interval) ?? 0) % 12);
  });
});

describe("chords as players write them", () => {
  // Kinds: W3C MusicXML 4.0, kind-value; 11 and 13 as players sound them (see `choices`), alterations
  // and spellings: common practice, no single source.
  const known: readonly (readonly [spellings: string, degrees: string])[] = [
    ["C", "1 3 5"],
    ["Cm C- Cmi Cmin", "1 b3 5"],
    ["CMA7 Cmaj7 CM7 CΔ7", "1 3 5 7"],
    ["C-7 Cm7", "1 b3 5 b7"],
    ["Cm7b5 Cø Cø7", "1 b3 b5 b7"],
    ["C°7 Cdim7", "1 b3 b5 bb7"],
    ["C+", "1 3 #5"],
    ["C+7 C7#5", "1 3 #5 b7"],
    ["Cm(maj7) C-Δ7", "1 b3 5 7"],
    ["C6", "1 3 5 6"],
    ["C69 C6/9", "1 9 3 5 6"],
    ["Cm6", "1 b3 5 6"],
    ["C9", "1 9 3 5 b7"],
    ["C11", "1 9 11 5 b7"],
    ["C13", "1 9 3 5 13 b7"],
    ["C9sus4", "1 9 4 5 b7"],
    ["C13sus", "1 9 4 5 13 b7"],
    ["C7sus4", "1 4 5 b7"],
    ["Csus2", "1 2 5"],
    ["Cadd9", "1 9 3 5"],
    ["C5", "1 5"],
    ["C7alt", "1 b9 #9 3 #11 b13 b7"],
    ["C7b9", "1 b9 3 5 b7"],
    ["C7(#9) C7(♯9)", "1 #9 3 5 b7"],
    ["C7(b9,b13) C7(♭9,♭13)", "1 b9 3 b13 b7"],
    ["C13#11", "1 9 3 #11 5 13 b7"],
    ["C7#9#5", "1 #9 3 #5 b7"],
    ["Cmaj7#11", "1 3 #11 5 7"],
    ["Cmaj13", "1 9 3 5 13 7"],
    ["C/E", "1 3 5"],
    ["F#m7/C#", "1 b3 5 b7"],
    ["Bbmaj7/D", "1 3 5 7"],
  ];

  it.each(known)("%s is %s", (spellings, expected) => {
    for (const symbol of spellings.split(" ")) expect(degrees(symbol), symbol).toBe(expected);
  });
});
