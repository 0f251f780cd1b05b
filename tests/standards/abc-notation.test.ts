// The ABC music standard 2.1 (December 2011), by its sections; examples of the standard's own are
// quoted where it has them.
import { describe, expect, it } from "vitest";
import { readAbc, type MelodyReading } from "../../src/files/index.ts";
import { formatPitch, heardNotes } from "../../src/theory/index.ts";

async function reading(text: string): Promise<MelodyReading> {
  const read = await readAbc(text);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join(" "));
  return read.value;
}

/** Pitch and length in quarters of every note: "C4:1/2". */
async function notesOf(text: string): Promise<string> {
  const { melody } = await reading(text);
  return heardNotes(melody)
    .map(({ pitch, duration }) => {
      const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));
      const by = common(duration, melody.division);
      const [n, d] = [duration / by, melody.division / by];
      return `${formatPitch(pitch)}:${n}${d === 1 ? "" : `/${d}`}`;
    })
    .join(" ");
}

const pitchesOf = async (text: string): Promise<string> =>
  (await notesOf(text)).replaceAll(/:\S+/g, "");
const head = "X:1\nM:4/4\nL:1/8\nK:C\n";

describe("ABC 2.1, section 4: the tune body", () => {
  it("4.1: pitches go by letter, comma and apostrophe", async () => {
    const text = "C, D, E, F,|G, A, B, C|D E F G|A B c d|e f g a|b c' d' e'|f' g' a' b'|]";
    expect(await pitchesOf(`X:1\nM:4/4\nL:1/4\nK:C\n${text}`)).toBe(
      "C3 D3 E3 F3 G3 A3 B3 C4 D4 E4 F4 G4 A4 B4 C5 D5 E5 F5 G5 A5 B5 C6 D6 E6 F6 G6 A6 B6",
    );
  });

  it("4.2: accidentals are ^ = _ and doubled", async () => {
    expect(await pitchesOf(`${head}^c _d =e ^^f __g c2 z|`)).toBe("C#5 Db5 E5 F##5 Gbb5 C#5");
  });

  it("4.3: lengths are multiples and divisors of the unit; / is /2 and // is /4", async () => {
    expect(await notesOf(`${head}c4 c2 c c/ c/2|c3/2 c// c/4 c6|`)).toBe(
      "C5:2 C5:1 C5:1/2 C5:1/4 C5:1/4 C5:3/4 C5:1/8 C5:1/8 C5:3",
    );
  });

  it.each([
    ["L:1/16", "a3b cd3 a2b2c2d2"],
    ["L:1/8", "a3/2b/2 c/2d3/2 abcd"],
    ["L:1/8", "a>b c<d abcd"],
  ])("4.4: broken rhythm, three ways to write one hornpipe (%s, %s)", async (unit, text) => {
    expect(await notesOf(`X:1\nM:4/4\n${unit}\nK:C\n${text}|`)).toBe(
      "A5:3/4 B5:1/4 C5:1/4 D5:3/4 A5:1/2 B5:1/2 C5:1/2 D5:1/2",
    );
  });

  it("4.4: >> dots the first note twice", async () => {
    expect(await notesOf(`${head}a>>b c4 d2|`)).toBe("A5:7/8 B5:1/8 C5:2 D5:1");
  });

  it("4.5: z and x are rests, Z stands for whole bars", async () => {
    const { melody } = await reading(`${head}c2 z2 x2 d2|Z2|e8|`);
    const onsets = heardNotes(melody).map(({ onset }) => onset / melody.division);
    expect(onsets).toEqual([0, 3, 12]);
  });

  it("4.7: spaces and back quotes only group beams", async () => {
    expect(await notesOf(`${head}A2\`\`B\`\`C c4|`)).toBe(await notesOf(`${head}A2BC c4|`));
  });

  it("4.8 and 4.9: repeats with first and second endings", async () => {
    const { melody } = await reading(`${head}|:c8|1 d8:|2 e8|]`);
    expect(melody.repeats).toEqual([
      {
        fromBar: 1,
        toBar: 3,
        times: 2,
        endings: [
          { fromBar: 2, toBar: 2, passes: [1] },
          { fromBar: 3, toBar: 3, passes: [2] },
        ],
      },
    ]);
    expect((await reading(`${head}|:c8::d8:|`)).melody.repeats).toHaveLength(2);
  });

  it("4.10: variant endings [1,3 and [2", async () => {
    const { melody } = await reading(`${head}|:c8|[1,3 d8:|[2 e8|]`);
    expect(melody.repeats[0]?.endings?.map(({ passes }) => passes)).toEqual([[1, 3], [2]]);
  });

  it("4.11: ties join notes over a bar line; slurs join nothing", async () => {
    expect(await notesOf(`${head}c6 c2-|c2 c6|`)).toBe("C5:3 C5:2 C5:3");
    expect(await notesOf(`${head}(c4 c4)|`)).toBe("C5:2 C5:2");
  });

  it("4.12: grace notes take no time, and a remark says that they were left out", async () => {
    const text = `${head}{g}A3 A{g}AAA2|{gAGAG}A3 {g}A{d}A{e}AA2|`;
    expect(await pitchesOf(text)).toBe("A4 A4 A4 A4 A4 A4 A4 A4 A4 A4");
    expect((await reading(text)).remarks).toContain("Grace notes were left out.");
  });

  it.each([
    ["(3abc", "A5:1/3 B5:1/3 C5:1/3"],
    ["(3:2:3abc", "A5:1/3 B5:1/3 C5:1/3"],
    ["(3:2abc", "A5:1/3 B5:1/3 C5:1/3"],
    ["(3::2 G4c2", "G4:4/3 C5:2/3"],
    ["(3:2:2 G4c2", "G4:4/3 C5:2/3"],
    ["(3:2:4 G2A2Bc", "G4:2/3 A4:2/3 B4:1/3 C5:1/3"],
    ["(5:4:5 abcde", "A5:2/5 B5:2/5 C5:2/5 D5:2/5 E5:2/5"],
  ])("4.13: the tuplet %s", async (text, expected) => {
    const notes = await notesOf(`X:1\nM:none\nL:1/8\nK:C\n${text}|`.replace("M:none", "M:2/4"));
    expect(notes).toBe(expected);
  });

  it("4.14 and 4.16: decorations and unused signs change no note", async () => {
    const text = `${head}~c2 .d2 !trill!e2 Tf2|vg2 ua2 +fermata+b2 Mc'2|`;
    expect(await pitchesOf(text)).toBe("C5 D5 E5 F5 G5 A5 B5 C6");
  });

  it("4.17: of a chord the highest note is the melody", async () => {
    const text = `${head}[CEGc]4 [Ac]4|`;
    expect(await notesOf(text)).toBe("C5:2 C5:2");
    expect((await reading(text)).remarks.join(" ")).toMatch(/highest/);
  });

  it("4.18 and 4.19: chord symbols stand over notes, annotations are none", async () => {
    const { melody } = await reading(`${head}"Gm7"c2 "^Allegro"d2 "D7/F#"e2 "_low""G"f2|`);
    expect(melody.changes.map(({ text }) => text)).toEqual(["Gm7", "D7/F#", "G"]);
  });
});

describe("ABC 2.1, section 3: fields", () => {
  it.each([
    ["C", [4, 4]],
    ["C|", [2, 2]],
    ["6/8", [6, 8]],
    ["5/4", [5, 4]],
    ["(2+3+2)/8", [7, 8]],
    ["2+3+2/8", [7, 8]],
  ])("3.1.6: M:%s", async (metre, [beats, beatType]) => {
    const read = await reading(`X:1\nM:${metre}\nL:1/8\nK:C\nc2 z2|]`);
    expect(read.melody.metre).toEqual({ beats, beatType });
  });

  it.each([
    ["2/4", "C5:1/4"],
    ["3/4", "C5:1/2"],
    ["4/4", "C5:1/2"],
    ["6/8", "C5:1/2"],
  ])(
    "3.1.7: in %s without L: the unit is a sixteenth below 3/4, else an eighth",
    async (m, note) => {
      expect(await notesOf(`X:1\nM:${m}\nK:C\nc|]`)).toBe(note);
    },
  );

  it.each([
    ["1/4=120", 120],
    ['"Allegro" 1/4=120', 120],
    ['3/8=50 "Slowly"', 75],
    ["1/2=100", 200],
    ["1/4 3/8 1/4 3/8=40", 200],
    ["90", 90],
  ])("3.1.8: Q:%s", async (tempo, quarters) => {
    const { melody } = await reading(`X:1\nM:4/4\nL:1/8\nQ:${tempo}\nK:C\nc8|]`);
    expect(melody.tempo).toBe(quarters);
  });

  it.each([
    ["C", "C5 F5 B5"],
    ["G", "C5 F#5 B5"],
    ["Bb", "C5 F5 Bb5"],
    ["Am", "C5 F5 B5"],
    ["Em", "C5 F#5 B5"],
    ["D Mixolydian", "C5 F#5 B5"],
    ["DMix", "C5 F#5 B5"],
    ["A dorian", "C5 F#5 B5"],
    ["E phr", "C5 F5 B5"],
    ["F lydian", "C5 F5 B5"],
    ["F# Locrian", "C5 F#5 B5"],
    ["D Phr ^f", "C5 F#5 Bb5"],
    ["F#m", "C#5 F#5 B5"],
    ["none", "C5 F5 B5"],
  ])("3.1.14: K:%s gives its signature", async (key, expected) => {
    expect(await pitchesOf(`X:1\nM:4/4\nL:1/4\nK:${key}\nc f b z|]`)).toBe(expected);
  });

  it("3.2: fields within the tune change unit and key from there on", async () => {
    expect(await notesOf(`${head}c4 [L:1/4]c2|[K:G]f4|`)).toBe("C5:2 C5:2 F#5:4");
    expect(await notesOf(`${head}c8|\nL:1/4\nK:G\nf4|`)).toBe("C5:4 F#5:4");
  });

  it("5: words under the notes change nothing", async () => {
    expect(await notesOf(`${head}c4 d4|\nw: la la\n`)).toBe("C5:2 D5:2");
  });

  it("7: of several voices the first is read, and a remark says so", async () => {
    const text = `X:1\nM:4/4\nL:1/4\nV:1\nV:2\nK:C\nV:1\nc4|\nV:2\nE4|\n`;
    expect(await pitchesOf(text)).toBe("C5");
    expect((await reading(text)).remarks).toContain("Of several voices the first was read.");
  });

  it("2.2 and 6: comments and continued lines change nothing", async () => {
    expect(await notesOf(`${head}c4 % a comment\\\n d4|\n`)).toMatch(/^C5:2/);
    expect(await notesOf(`${head}c4 \\\nd4|\n% the end\n`)).toBe("C5:2 D5:2");
  });
});
