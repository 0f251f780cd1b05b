import { describe, expect, it } from "vitest";
import { answerTo, run } from "./run-main.ts";

interface MeasureAnswer {
  readonly notes: readonly {
    readonly player: string;
    readonly midi: number;
    readonly name: string;
    readonly written: string;
  }[];
  readonly techniques: readonly string[];
  readonly measures: Readonly<
    Record<string, { readonly value: number | null; readonly unit: string }>
  >;
  readonly partials?: Readonly<Record<string, readonly (readonly [number, number])[]>>;
}

const measure = (notes: string, ...more: readonly string[]) =>
  answerTo("measure", "--chord", "F13", "--notes", notes, ...more) as Promise<MeasureAnswer>;

describe("measure", () => {
  it("puts players in line-up order, with sounding and written pitch", async () => {
    const { notes } = await measure("bari=F3,tenor1=Eb4,alto1=A4,tpt1=D5,hn1=G4,bass=F2");
    // Written pitch after the transpositions of MusicXML 4.0 (trumpet in B♭ a major second, alto
    // in E♭ a major sixth, tenor in B♭ a ninth, baritone in E♭ an octave and a major sixth, horn in
    // F a fifth, double bass an octave).
    expect(notes.map(({ player, midi, name, written }) => [player, midi, name, written])).toEqual([
      ["tpt1", 74, "D5", "E5"],
      ["alto1", 69, "A4", "F#5"],
      ["tenor1", 63, "Eb4", "F5"],
      ["bari", 53, "F3", "D5"],
      ["hn1", 67, "G4", "D5"],
      ["bass", 41, "F2", "F3"],
    ]);
  });

  it("gives every measure with its unit", async () => {
    const { measures } = await measure("tpt1=D5,alto1=A4,tenor1=Eb4,bari=F3");
    expect(measures["span"]).toMatchObject({ value: 21, unit: "semitones" });
    expect(measures["players"]).toMatchObject({ value: 4 });
    for (const { unit } of Object.values(measures)) expect(unit).not.toBe("");
  });

  it("names the technique it recognises", async () => {
    // Four-way close under D5, the thirteenth for the fifth: G. Lindsay, Jazz Arranging Techniques.
    const { techniques } = await measure("tpt1=D5,alto1=A4,tenor1=Eb4,tbn1=G4");
    expect(techniques).toContain("close");
  });

  it("adds the partials of each player when asked, ascending from the note's own frequency", async () => {
    const notes = "tpt1=A4,bari=A2";
    expect((await measure(notes)).partials).toBeUndefined();
    const { partials = {} } = await measure(notes, "--partials");
    expect(Object.keys(partials)).toEqual(["tpt1", "bari"]);
    for (const [player, fundamental] of [
      ["tpt1", 440],
      ["bari", 110],
    ] as const) {
      const list = partials[player] ?? [];
      expect(list[0]?.[0]).toBeCloseTo(fundamental, 6);
      const frequencies = list.map(([hz]) => hz);
      expect(frequencies).toEqual([...frequencies].sort((a, b) => a - b));
      expect(list.length).toBeGreaterThan(5);
    }
  });

  it.each([
    ["tpt1", "is not a note"],
    ["tpt1=D5=E5", "is not a note"],
    ["alto1=A4,tpt1=H5", "tpt1=H5: "],
    ["tpt1=D5,tpt1=E5", "two notes"],
    ["tpt1=D1", "cannot sound D1"],
    ["", "at least one note"],
  ])("refuses the notes %j with one sentence", async (notes, words) => {
    const { code, errors } = await run(["measure", "--chord", "F13", `--notes=${notes}`]);
    expect(code).toBe(2);
    expect(errors).toContain(words);
    expect(errors.trimEnd()).not.toContain("\n");
  });

  it("lets a chair go past its own limits, as long as the instrument can", async () => {
    const school = ["measure", "--chord", "F13", "--level", "school", "--notes"];
    expect((await run([...school, "tpt4=Bb5"])).code).toBe(0);
    expect((await run([...school, "tpt4=Bb6"])).code).toBe(2);
  });

  it("prints notes and measures in columns for people", async () => {
    const { output } = await run(["measure", "--chord", "F13", "--notes", "tpt1=D5,alto1=A4"]);
    expect(output).toMatch(/^player +sounds +degree +reads$/m);
    expect(output).toMatch(/^tpt1 +D5 +13 +E5$/m);
    expect(output).toMatch(/^Span +5 +semitones/m);
  });
});
