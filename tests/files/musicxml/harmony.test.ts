import { describe, expect, it } from "vitest";
import { chordKinds, kindOfBasic } from "../../../src/files/musicxml/chord-kind-table.ts";
import { chordOfHarmony } from "../../../src/files/musicxml/chord-of-harmony.ts";
import { labelText, parseLabel, semitonesOf } from "../../../src/files/musicxml/degree-label.ts";
import { harmonyKindOf, type HarmonyDegree } from "../../../src/files/musicxml/harmony-degrees.ts";
import { chordOf } from "../support/scores.ts";
import { dataText, hasData } from "../support/shared-data.ts";

/** Symbols of every family, with alterations, additions, omissions and slashes. */
const symbols = (
  "C Cm C+ Cdim C6 C69 Cm6 Cm69 C7 C9 C11 C13 C7b9 C7(b9,#11) C7b13 C7#5 C7b5 C9#5 C7alt C7sus4 " +
  "C9sus C13sus C7susb9 Csus2 Csus4 Cm7 Cm9 Cm11 Cm13 Cm7b5 Cm9b5 Cø11 Cdim7 Cm(maj7) CmMaj9 " +
  "Cdim(maj7) Cadd9 Cmadd9 C5 C7omit3 C7no5 C/E Cmaj7 Cmaj9 Cmaj11 Cmaj13 Cmaj13#11 Cmaj7#5 C13b9 " +
  "C9#11 N.C. C(addb9) C7(add13) C7(add11) Csus4(add9) C7(b5,b9) Cm7(add11) C(b5) Cm(#5) Cdim9 " +
  "Cdim7(b13) C(add11) Cmaj7sus4 C6sus4 Cm7(b5,b9) C13(no3) Bb13/Ab F#m7/C# Abmaj9(#11) D7/C"
).split(" ");

const written = ({ value, alter, type, isPrinted }: HarmonyDegree): string =>
  `${type} ${value} ${alter}${isPrinted ? "" : " unprinted"}`;

describe("the table of kinds", () => {
  it.skipIf(!hasData("chords/musicxml_kinds.tsv"))(
    "holds the tones that the W3C text of each kind spells",
    () => {
      const rows = dataText("chords/musicxml_kinds.tsv").trim().split("\n").slice(1);
      const spelled = rows
        .map((row) => row.split("\t"))
        .filter(([kind, , classes = ""]) => classes.trim() !== "" && kind !== "Tristan");
      expect(spelled.length).toBeGreaterThan(20);
      for (const [kind, , classes = ""] of spelled) {
        const row = chordKinds.find((each) => each.kind === kind);
        const own = new Set(row?.degrees.map((label) => semitonesOf(parseLabel(label))));
        expect([kind, [...own].sort((a, b) => a - b).join(" ")]).toEqual([kind, classes.trim()]);
      }
    },
  );

  it("has each kind once, and every first part of a symbol leads to one", () => {
    const kinds = chordKinds.map(({ kind }) => kind);
    expect(new Set(kinds).size).toBe(kinds.length);
    for (const kind of Object.values(kindOfBasic)) expect(kinds).toContain(kind);
  });
});

describe("a chord as kind and degrees", () => {
  it.each(symbols)("%s comes back as the same symbol", (symbol) => {
    const chord = chordOf(symbol);
    const bass = chord.hasSlashBass ? chord.bass : undefined;
    const read = chordOfHarmony(chord.root, harmonyKindOf(chord), bass);
    expect(read).toMatchObject({ isExact: true, chord: { symbol: chord.symbol } });
  });

  it.each(symbols)("%s comes back with the same tones when the text is lost", (symbol) => {
    const chord = chordOf(symbol);
    const bass = chord.hasSlashBass ? chord.bass : undefined;
    const read = chordOfHarmony(chord.root, { ...harmonyKindOf(chord), text: "" }, bass);
    const tones = ({ tones: all }: typeof chord): readonly number[] =>
      all.filter(({ kind }) => kind === "stated" || kind === "implied").map((t) => t.aboveRoot);
    expect(read?.isExact).toBe(true);
    expect(tones(read!.chord)).toEqual(tones(chord));
  });

  it("takes the eleventh out of a thirteenth, unprinted, since MusicXML counts it in", () => {
    const { kind, text, degrees } = harmonyKindOf(chordOf("C13"));
    expect([kind, text, degrees.map(written)]).toEqual([
      "dominant-13th",
      "13",
      ["subtract 11 0 unprinted"],
    ]);
  });

  it("counts added degrees from a dominant and altered ones from the kind", () => {
    const degrees = (symbol: string) => harmonyKindOf(chordOf(symbol)).degrees.map(written);
    expect(degrees("C7(b9,#11)")).toEqual(["add 9 -1", "add 11 1"]);
    expect(degrees("C7(b5)")).toEqual(["alter 5 -1"]);
    expect(degrees("Cdim(maj7)")).toEqual(["add 7 1 unprinted"]);
    expect(degrees("C7sus4(b9)")).toEqual(["add 9 -1", "add 7 0 unprinted"]);
    expect(degrees("C7(no3)")).toEqual(["subtract 3 0"]);
  });
});

describe("chords of other programs' files", () => {
  const C = { letter: "C", alteration: 0 } as const;
  const degree = (value: number, alter: number, type: HarmonyDegree["type"]): HarmonyDegree => ({
    value,
    alter,
    type,
    isPrinted: true,
  });

  it.each<[string, string, string, readonly HarmonyDegree[]]>([
    // W3C MusicXML 4.0: a suspended seventh is often a dominant with its third replaced.
    ["C7sus4", "dominant", "", [degree(4, 0, "add"), degree(3, 0, "subtract")]],
    ["C7(#5)", "augmented-seventh", "", []],
    ["Cm7(b5)", "half-diminished", "m7b5", []],
    ["Cm(maj7)", "major-minor", "", []],
    ["C69", "major-sixth", "6/9", [degree(9, 0, "add")]],
    ["C9", "dominant", "7", [degree(9, 0, "add")]],
    ["Cmaj7", "major-seventh", "Δ7", []],
    ["Cm", "minor", "mi", []],
  ])("%s", (symbol, kind, text, degrees) => {
    const read = chordOfHarmony(C, { kind, text, degrees }, undefined);
    expect(read?.chord.symbol).toBe(symbol);
  });

  it("are told apart when only the nearest reading can be had", () => {
    const read = chordOfHarmony(C, { kind: "Tristan", text: "m7b5", degrees: [] }, undefined);
    expect(read).toMatchObject({ isExact: false, chord: { symbol: "Cm7(b5)" } });
    const other = { kind: "other", text: "what?", degrees: [] };
    expect(chordOfHarmony(C, other, undefined)?.isExact).not.toBe(true);
  });
});

describe("a degree label", () => {
  it.each(["1", "b3", "bb7", "#11", "b13"])("%s is taken apart and printed again", (label) => {
    expect(labelText(parseLabel(label))).toBe(label);
  });

  it("is refused when it is none", () => {
    expect(() => parseLabel("x9")).toThrow(RangeError);
  });
});
