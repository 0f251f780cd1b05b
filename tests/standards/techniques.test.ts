import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Count, SoundingMidi } from "../../src/base/index.ts";
import {
  closeVoicing,
  doubleLead,
  dropTwoDoubleLead,
  dropVoices,
  fifthsPairs,
  fivePartWithTension,
  quartalWithThirdOnTop,
  spreadsFromBass,
  spreadsFromLead,
  techniquesOfStack,
  upperStructures,
} from "../../src/voicing/index.ts";
import { lowIntervalLimits } from "../../src/voicing/low-interval-table.ts";
import { tickedTones } from "../../src/theory/index.ts";
import { chordOf, everyTone, pitch, pitches, plain } from "../voicing/techniques/questions.ts";

const close = (symbol: string, lead: string): readonly SoundingMidi[] => {
  const chord = chordOf(symbol);
  const found = closeVoicing(chord, pitch(lead), plain(chord));
  if (!found) throw new Error(`${symbol} has no close voicing under ${lead}`);
  return found;
};

const tensions = (symbol: string) => ({ ticked: tickedTones(chordOf(symbol), "tensions") });

describe("drop voicings of published lesson pages", () => {
  type Row = readonly [symbol: string, lead: string, voices: readonly Count[], low: string];
  const rows: readonly (readonly [id: string, source: string, ...Row])[] = [
    ["W1", "experts123 and joshhindmarsh.com, drop voicings", "Cmaj7", "B4", [2], "G3 C4 E4 B4"],
    ["W2", "joshhindmarsh.com, drop voicings", "Cmaj7", "B4", [3], "E3 C4 G4 B4"],
    ["W3", "joshhindmarsh.com, drop voicings", "Amaj7", "G#4", [2], "E3 A3 C#4 G#4"],
    ["W4", "stuffguitarplayerswanttoknow, R 5 7 3", "Cmaj7", "E5", [2], "C4 G4 B4 E5"],
    ["W5", "macrimusic.com, 3 7 R 5", "Cmaj7", "G4", [2], "E3 B3 C4 G4"],
    ["W39", "sixth-diminished scale, drop 2 of W33", "C6", "G5", [2], "E4 A4 C5 G5"],
  ];
  it.each(rows)("gives %s (%s): %s under %s", (_id, _source, symbol, lead, voices, low) =>
    expect(dropVoices(close(symbol, lead), voices)).toEqual(pitches(low)),
  );

  it("gives W6 (macrimusic.com): drop 2 of the plain stack E G B C is 7 3 5 R", () =>
    expect(dropVoices(pitches("E4 G4 B4 C5"), [2])).toEqual(pitches("B3 E4 G4 C5")));

  it("does not take W7, the order R 5 3 7, for a drop 2 of C major seventh (misprint of macrimusic.com)", () =>
    expect(techniquesOfStack(pitches("C4 G4 E5 B5"), chordOf("Cmaj7"))).not.toContain("drop-2"));
});

describe("four-way close of G. Lindsay, Jazz Arranging Techniques (2005), ch. 10", () => {
  it("refuses W8, the major seventh a semitone under the root", () => {
    expect(close("Cmaj7", "C4")).not.toEqual(pitches("E3 G3 B3 C4"));
    expect(techniquesOfStack(pitches("E3 G3 B3 C4"), chordOf("Cmaj7"))).not.toContain("close");
  });

  it("repairs it as W9, the sixth for the seventh", () => {
    expect(close("Cmaj7", "C4")).toEqual(pitches("E3 G3 A3 C4"));
    expect(techniquesOfStack(pitches("E3 G3 A3 C4"), chordOf("Cmaj7"))).toContain("close");
  });

  it("never makes W10, drop 2 with the minor ninth B to C, of its own close voicing", () => {
    const opened = dropVoices(close("Cmaj7", "C4"), [2]);
    expect(opened).not.toEqual(pitches("B2 E3 G3 C4"));
    expect(opened.some((low) => opened.some((high) => high - low === 13))).toBe(false);
  });

  it("can still build W10 when told to, since constructions break rules", () =>
    expect(dropVoices(pitches("E3 G3 B3 C4"), [2])).toEqual(pitches("B2 E3 G3 C4")));

  it("keeps the doubled lead above the dropped voices, unlike W12", () => {
    const drop24 = dropVoices(close("Cmaj7", "B4"), [2, 4]);
    expect(drop24).toEqual(pitches("C3 G3 E4 B4"));
    expect(dropTwoDoubleLead(close("Cmaj7", "B4"))).toEqual(pitches("G3 B3 C4 E4 B4"));
    expect(techniquesOfStack(pitches("B2 C3 G3 E4 B4"), chordOf("Cmaj7"))).toEqual([]);
  });
});

describe("sixth-diminished block chords, chord tones of C6 (thejazzpianosite.com; Levine, The Jazz Piano Book)", () => {
  it.each([
    ["W29", "C5", "E4 G4 A4 C5"],
    ["W31", "E5", "G4 A4 C5 E5"],
    ["W33", "G5", "A4 C5 E5 G5"],
    ["W35", "A5", "C5 E5 G5 A5"],
  ])("gives %s under %s", (_id, lead, low) => expect(close("C6", lead)).toEqual(pitches(low)));

  it("gives W37, the lead doubled an octave lower", () =>
    expect(doubleLead(close("C6", "C5"))).toEqual(pitches("C4 E4 G4 A4 C5")));
});

describe("spread voicings after Lindsay, as carried by elm-music-theory (cbf09f1)", () => {
  it("has W11, R 7 3 5 9 under D5 over C major seventh, before all others", () =>
    expect(spreadsFromLead(chordOf("Cmaj7"), pitch("D5"), 5, tensions("Cmaj7"))[0]).toEqual(
      pitches("C3 B3 E4 G4 D5"),
    ));
});

describe("quartal voicings with a third on top", () => {
  const minor = chordOf("Dm11");
  it("gives W13: P4 P4 P4 M3 on D (thejazzpianosite.com)", () =>
    expect(quartalWithThirdOnTop(minor, pitch("A4"), 5, plain(minor))).toEqual(
      pitches("D3 G3 C4 F4 A4"),
    ));

  it("gives W15: the same a whole tone up (G. Lui, greglui.com)", () => {
    const chord = chordOf("Em11");
    expect(quartalWithThirdOnTop(chord, pitch("B4"), 5, plain(chord))).toEqual(
      pitches("E3 A3 D4 G4 B4"),
    );
  });

  it("fits W13 to all five chord names of W14 (thejazzpianosite.com)", () => {
    const classes = pitches("D3 G3 C4 F4 A4").map((one) => one % 12);
    for (const symbol of ["Dm11", "Bbmaj13", "Ebmaj13#11", "F69", "G9sus4"]) {
      const { tones } = chordOf(symbol);
      const known = tones.filter(({ kind }) => kind !== "avoid").map((tone) => tone.pitchClass);
      expect(known, symbol).toEqual(expect.arrayContaining(classes));
    }
  });

  it("has the shapes of W16 on the seven degrees of C major (G. Lui, greglui.com)", () => {
    const major = chordOf("C");
    const scale = { ticked: [0, 2, 4, 5, 7, 9, 11] };
    const tops = pitches("A4 B4 C5 D5 E5 F5 G5");
    const stacks = tops.map((top) => quartalWithThirdOnTop(major, top, 5, scale) ?? []);
    const gaps = stacks.map((stack) => stack.slice(1).map((one, i) => one - (stack[i] ?? 0)));
    const hasMinorNinth = stacks.map((stack) =>
      stack.some((low) => stack.some((high) => high - low === 13)),
    );
    expect(stacks.map((stack) => (stack[0] ?? 0) % 12)).toEqual([2, 4, 5, 7, 9, 11, 0]);
    expect([gaps[1], gaps[4]]).toEqual([gaps[0], gaps[0]]);
    expect(hasMinorNinth).toEqual([false, false, true, false, false, true, false]);
  });
});

describe("fifths pairs (F. Goodman, lesson page on a two-hand voicing in fifths)", () => {
  it.each([
    ["W17", "Cm11", "F5", "C3 G3 D4 Eb4 Bb4 F5"],
    ["W18", "Cmaj7#11", "F#5", "C3 G3 D4 E4 B4 F#5"],
    ["W19", "Gmaj7#11", "C#5", "G2 D3 A3 B3 F#4 C#5"],
    ["W20 (its misprint corrected)", "Fm11", "Bb4", "F2 C3 G3 Ab3 Eb4 Bb4"],
  ])("gives %s: %s under %s", (_id, symbol, lead, low) =>
    expect(fifthsPairs(chordOf(symbol), pitch(lead), tensions(symbol))[0]).toEqual(pitches(low)),
  );
});

describe("upper structures over C7 (Wikipedia, Upper structure: W21 to W23; velobot wiki, Upper-structure triads, and a table of cmuse.org: W24 to W27)", () => {
  it.each([
    ["W21", "C7#9", "Bb4", 3, "major", "E3 Bb3 Eb4 G4 Bb4"],
    ["W23", "C13(b9,#11)", "A4", 6, "minor", "E3 Bb3 C#4 F#4 A4"],
    ["W24", "C13#11", "A4", 2, "major", "E3 Bb3 D4 F#4 A4"],
    ["W25", "C7(b9,#11)", "Bb4", 6, "major", "E3 Bb3 Db4 Gb4 Bb4"],
    ["W26", "C13b9", "A4", 9, "major", "E3 Bb3 C#4 E4 A4"],
    ["W27", "C7(#9,b13)", "Ab4", 8, "major", "E3 Bb3 C4 Eb4 Ab4"],
  ] as const)("give %s: %s under %s", (_id, symbol, lead, triadRoot, triadQuality, low) => {
    const chord = chordOf(symbol);
    expect(upperStructures(chord, pitch(lead), plain(chord))).toContainEqual({
      triadRoot,
      triadQuality,
      pitches: pitches(low),
    });
    expect(techniquesOfStack(pitches(low), chord)).toContain("upper-structure");
  });

  it("read W21 over the dominant a tritone away as W22: 13, b9, third, guide tones exchanged", () => {
    const tritone = chordOf("F#13b9");
    const degrees = pitches("E3 Bb3 Eb4 G4 Bb4").map(
      (one) => tritone.tones.find((tone) => tone.pitchClass === one % 12)?.degree,
    );
    expect(degrees).toEqual(["b7", "3", "13", "b9", "3"]);
    expect(techniquesOfStack(pitches("E3 Bb3 Eb4 G4 Bb4"), tritone)).toContain("upper-structure");
  });
});

describe("published facts about sets and low intervals", () => {
  const classesOf = (symbol: string): readonly number[] =>
    chordOf(symbol)
      .tones.filter(({ kind }) => kind === "stated")
      .map((tone) => tone.pitchClass as number);
  const union = (...symbols: readonly string[]): readonly number[] =>
    [...new Set(symbols.flatMap(classesOf))].sort((a, b) => a - b);

  it("W41: F2 A2 lies five semitones under the limit of a major third (R. Hoffmann)", () =>
    expect((lowIntervalLimits.limits[4] ?? 0) - pitch("F2")).toBe(5));

  it("W42: the assumed root A2 under C3 is a minor third under its limit (Lowell & Pullig)", () =>
    expect(pitch("A2")).toBeLessThan(lowIntervalLimits.limits[3] ?? 0));

  it("W43: the C major scale with a flat sixth is C6 and A flat diminished (thejazzpianosite.com)", () =>
    expect(union("C6", "Abdim7")).toEqual([0, 2, 4, 5, 7, 8, 9, 11]));

  it("W44: G7 flat nine without its root is A flat diminished (thejazzpianosite.com)", () =>
    expect(union("G7b9").filter((one) => one !== 7)).toEqual(union("Abdim7")));

  it("W45: the minor sixth-diminished scale is C minor sixth and B diminished (rule of the sixth-diminished scale)", () =>
    expect(union("Cm6", "Bdim7")).toEqual([0, 2, 3, 5, 7, 8, 9, 11]));
});

const data = "../shared/data/voicings/worked_examples.tsv";
describe.skipIf(!existsSync(data))("worked examples of elm-music-theory's tests (2e79081)", () => {
  type Row = readonly [technique: string, symbol: string, given: string, low: readonly number[]];
  const rows: readonly Row[] = !existsSync(data)
    ? []
    : readFileSync(data, "utf8")
        .trim()
        .split("\n")
        .slice(1)
        .map((line): Row => {
          const [technique = "", symbol = "", given = "", , midi = ""] = line.split("\t");
          const low = midi.split(" ").map(Number).reverse();
          return [technique, symbol, given.split(" ")[1] ?? "", low];
        });

  const builders: Readonly<
    Record<string, (symbol: string, given: string) => readonly number[] | undefined>
  > = {
    "four-way close": close,
    "four-way drop 2": (symbol, lead) => dropVoices(close(symbol, lead), [2]),
    "four-way drop 3": (symbol, lead) => dropVoices(close(symbol, lead), [3]),
    "four-way drop 2 and 4": (symbol, lead) => dropVoices(close(symbol, lead), [2, 4]),
    "four-way close double lead (five voices)": (symbol, lead) => doubleLead(close(symbol, lead)),
    "four-way spread": (symbol, bass) =>
      spreadsFromBass(chordOf(symbol), pitch(bass), 4, tensions(symbol))[0],
    "five-way spread": (symbol, bass) =>
      spreadsFromBass(chordOf(symbol), pitch(bass), 5, plain(chordOf(symbol)))[0],
    "five-way double lead with substitute for the octave": (symbol, lead) =>
      fivePartWithTension(chordOf(symbol), close(symbol, lead), everyTone),
  };

  it("are all understood", () =>
    expect(rows.map(([technique]) => technique).filter((one) => !builders[one])).toEqual([]));

  it.each(rows)("give %s of %s from %s note for note", (technique, symbol, given, low) =>
    expect(builders[technique]?.(symbol, given)).toEqual(low),
  );
});
