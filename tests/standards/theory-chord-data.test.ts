import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readChord } from "../../src/theory/index.ts";
import { chord, plainTones } from "../theory/support/chords.ts";

// Open tables that others published, read in place where they are there.
const folder = "../shared/data/chords";
const rowsOf = (name: string): readonly (readonly string[])[] => {
  const file = `${folder}/${name}`;
  if (!existsSync(file)) return [];
  const lines = readFileSync(file, "utf8").trimEnd().split("\n").slice(1);
  return lines.map((line) => line.split("\t"));
};
const sorted = (values: readonly number[]) => [...values].sort((a, b) => a - b).join(" ");

const symbols = "reference_symbols_with_intervals.tsv";
describe.skipIf(!existsSync(`${folder}/${symbols}`))(`chord symbols of ${symbols}`, () => {
  const differs: Readonly<Record<string, readonly [ours: string | undefined, reason: string]>> = {
    "C bass": [undefined, "one note is no chord; it is refused"],
    "Bb(add 9,add b13)": ["0 2 5 6 10", "what is added takes nothing away: the fifth stays"],
  };
  /** Where the notes agree and only their names differ. */
  const names: Readonly<Record<string, readonly [ours: string, reason: string]>> = {
    Csus2: ["1 2 5", "the second stands in the third's place; there it is called 9"],
    "C7(b5,#5,b9,#9,b13)": ["1 b9 #9 3 b5 #5 b7", "♯5 and ♭13 are one note, named once"],
  };
  const altered = "1 b9 #9 3 #11 b13 b7";

  it.each(rowsOf(symbols))("%s", (symbol = "", _root, intervals = "", _canonical, classes = "") => {
    const read = readChord(symbol);
    const exception = differs[symbol];
    if (exception !== undefined && exception[0] === undefined) {
      expect(read.ok).toBe(false);
      return;
    }
    const tones = plainTones(chord(symbol));
    expect(sorted(tones.map((tone) => tone.pitchClass))).toBe(exception?.[0] ?? classes);
    if (exception !== undefined) return;
    // "alt" is listed there with ♭5 and ♯5 beside ♯11 and ♭13, the same notes under two names.
    const expected = names[symbol]?.[0] ?? (/alt/.test(symbol) ? altered : intervals);
    expect(tones.map((tone) => tone.degree).sort()).toEqual(expected.split(" ").sort());
  });
});

const spellings = "spelled_notes.tsv";
describe.skipIf(!existsSync(`${folder}/${spellings}`))(`spelled chords of ${spellings}`, () => {
  const differs: Readonly<Record<string, readonly [ours: string, reason: string]>> = {
    C11: ["C D F G Bb", "players sound a suspended ninth: no third"],
    C13: ["C D E G A Bb", "players leave the eleventh out"],
  };

  it.each(rowsOf(spellings))("%s", (symbol = "", _semitones, notes = "") => {
    const tones = plainTones(chord(symbol)).map((tone) => tone.name);
    const slash = chord(symbol).hasSlashBass ? chord(symbol).bass.letter : undefined;
    const all = new Set(slash === undefined ? tones : [slash, ...tones]);
    const expected = (differs[symbol]?.[0] ?? notes).split(" ");
    expect([...all].sort()).toEqual([...expected].sort());
  });
});

const kinds = "musicxml_kinds.tsv";
describe.skipIf(!existsSync(`${folder}/${kinds}`))("chord kinds of W3C MusicXML 4.0", () => {
  const suffixes: Readonly<Record<string, string>> = {
    major: "",
    minor: "m",
    augmented: "+",
    diminished: "dim",
    dominant: "7",
    "major-seventh": "maj7",
    "minor-seventh": "m7",
    "diminished-seventh": "dim7",
    "augmented-seventh": "7(#5)",
    "half-diminished": "m7(b5)",
    "major-minor": "m(maj7)",
    "major-sixth": "6",
    "minor-sixth": "m6",
    "dominant-ninth": "9",
    "major-ninth": "maj9",
    "minor-ninth": "m9",
    "dominant-11th": "11",
    "major-11th": "maj11",
    "minor-11th": "m11",
    "dominant-13th": "13",
    "major-13th": "maj13",
    "minor-13th": "m13",
    "suspended-second": "sus2",
    "suspended-fourth": "sus4",
    power: "5",
  };
  /** MusicXML stacks every third; players leave out what rubs (and say so with its subtract degree). */
  const differs: Readonly<Record<string, string>> = {
    "dominant-11th": "0 2 5 7 10",
    "dominant-13th": "0 2 4 7 9 10",
    "major-13th": "0 2 4 7 9 11",
  };
  const rows = rowsOf(kinds).filter(([kind = ""]) => suffixes[kind] !== undefined);

  it("are all there", () => expect(rows).toHaveLength(Object.keys(suffixes).length));

  it.each(rows)("%s", (kind = "", _text, classes = "") => {
    const tones = plainTones(chord(`C${suffixes[kind] ?? ""}`));
    expect(sorted(tones.map((tone) => tone.aboveRoot))).toBe(differs[kind] ?? classes);
  });
});

const shorthands = "harte_shorthands.tsv";
describe.skipIf(!existsSync(`${folder}/${shorthands}`))(
  "chord shorthands of C. Harte et al., Symbolic Representation of Musical Chords, ISMIR 2005",
  () => {
    const suffixes: Readonly<Record<string, string>> = {
      maj: "",
      min: "m",
      aug: "+",
      dim: "dim",
      sus4: "sus4",
      sus2: "sus2",
      "7": "7",
      maj7: "maj7",
      min7: "m7",
      minmaj7: "m(maj7)",
      maj6: "6",
      min6: "m6",
      dim7: "dim7",
      hdim7: "m7(b5)",
      aug7: "7(#5)",
      maj9: "maj9",
      min9: "m9",
      "9": "9",
      min11: "m11",
      maj13: "maj13",
      min13: "m13",
      "13": "13",
      "5": "5",
    };
    // The table keeps triad and seventh only; the 11 is a suspended chord here.
    const rows = rowsOf(shorthands).filter(([name = ""]) => suffixes[name] !== undefined);
    const isTension = (degree: string) => /^[b#]?(9|11|13)$/.test(degree);

    it("are all there but 1, 11 and the empty one", () =>
      expect(rows).toHaveLength(Object.keys(suffixes).length));

    it.each(rows)("%s", (name = "", _bitmap, classes = "") => {
      const tones = plainTones(chord(`C${suffixes[name] ?? ""}`));
      const core = tones.filter((tone) => !isTension(tone.degree)).map((tone) => tone.aboveRoot);
      expect(sorted(core)).toBe(classes);
    });
  },
);
