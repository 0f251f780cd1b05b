import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readAbc } from "../../../src/files/abc/read-abc.ts";
import { formatPitch, type Melody } from "../../../src/theory/index.ts";

const HEAD = "X:1\nT:Lamp Oil\nM:4/4\nL:1/8\nQ:1/4=160\nR:Swing\nK:Eb\n";

async function melodyOf(text: string): Promise<Melody> {
  const read = await readAbc(text);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join(" "));
  return read.value.melody;
}

/** Notes as text: onset and length in quarters, pitch, "^" where tied on. */
const notesOf = ({ notes, division }: Melody): string =>
  notes
    .map(({ onset, duration, pitch, isTied }) => {
      const time = `${onset / division}+${duration / division}`;
      return `${time} ${formatPitch(pitch)}${isTied ? "^" : ""}`;
    })
    .join(", ");

const pitchesOf = async (music: string, key = "C"): Promise<string> => {
  const { notes } = await melodyOf(`X:1\nM:none\nM:4/4\nL:1/4\nK:${key}\n${music}`);
  return notes.map(({ pitch }) => formatPitch(pitch)).join(" ");
};

const problemsOf = async (text: string): Promise<readonly string[]> => {
  const read = await readAbc(text);
  return read.ok ? ["read"] : read.problems.map(({ message }) => message);
};

// ABC music standard 2.1, section 2.2: a tune ends with an empty line.
describe("an empty line in typed ABC", () => {
  const remark = "Nothing behind the empty line was read: it ends the tune.";
  const remarksOf = async (text: string) => {
    const read = await readAbc(text);
    return read.ok ? read.value.remarks : read.problems;
  };

  it("ends the tune, and what stands behind it is said to be unread", async () => {
    expect(await remarksOf('X:1\nK:C\n"C"c4 |\n\n"Qx7"d4 |')).toEqual([remark]);
    const headless = '"C"c4 |\r\n \r\nd4 |';
    expect(await remarksOf(headless)).toEqual([remark]);
    expect((await melodyOf(headless)).notes).toHaveLength(1);
  });

  it("is nothing to be said of at the end, or before a remark of the file's own", async () => {
    expect(await remarksOf('X:1\nK:C\n"C"c4 |\n\n')).toEqual([]);
    expect(await remarksOf('X:1\nK:C\n"C"c4 |\n\n% for Tuesday')).toEqual([]);
  });
});

describe("a melody typed in ABC", () => {
  it("has title, metre, key, tempo and style", async () => {
    expect(await melodyOf(`${HEAD}c8|`)).toMatchObject({
      title: "Lamp Oil",
      metre: { beats: 4, beatType: 4 },
      key: { tonic: { letter: "E", alteration: -1 }, mode: "major" },
      tempo: 160,
      style: "swing",
    });
  });

  it("has pickup, rests, dots, ties over bar lines, triplets, and chords where they stand", async () => {
    const melody = await melodyOf(`${HEAD}B2|"Ebmaj7"E2 (3GAB "C7(b9)"^c2-c2|"Fm7"A3 z d4-|d4 z4|`);
    expect(melody.pickup / melody.division).toBe(1);
    expect(notesOf(melody)).toBe(
      "0+1 Bb4, 1+1 Eb4, 2+0.3333333333333333 G4, 2.3333333333333335+0.3333333333333333 Ab4, " +
        "2.6666666666666665+0.3333333333333333 Bb4, 3+2 C#5, 5+1.5 Ab4, 7+2 D5^, 9+2 D5",
    );
    expect(melody.notes.map(({ tuplet }) => tuplet?.notes ?? 0).slice(1, 6)).toEqual([
      0, 3, 3, 3, 0,
    ]);
    const changes = melody.changes.map(({ onset, text }) => `${onset / melody.division} ${text}`);
    expect(changes).toEqual(["1 Ebmaj7", "3 C7(b9)", "5 Fm7"]);
  });

  it("keeps repeats with their endings", async () => {
    const melody = await melodyOf(`${HEAD}|:c8|d8|1 e8:|2 f8|g8|`);
    expect(melody.repeats).toEqual([
      {
        fromBar: 1,
        toBar: 5,
        times: 2,
        endings: [
          { fromBar: 3, toBar: 3, passes: [1] },
          { fromBar: 4, toBar: 5, passes: [2] },
        ],
      },
    ]);
  });

  it("ends an ending at a double bar", async () => {
    const { repeats } = await melodyOf(`${HEAD}|:c8|1 e8:|2 f8||g8|`);
    expect(repeats[0]).toMatchObject({ fromBar: 1, toBar: 3 });
  });

  it("is read without a head: in C, in four, in eighths", async () => {
    const melody = await melodyOf('"F7"c2d2 e2f2|g8|');
    expect(melody).toMatchObject({ key: { tonic: { letter: "C" } }, metre: { beats: 4 } });
    expect(notesOf(melody)).toBe("0+1 C5, 1+1 D5, 2+1 E5, 3+1 F5, 4+4 G5");
  });

  it("counts a tempo in dotted beats by quarters", async () => {
    expect((await melodyOf("X:1\nM:6/8\nQ:3/8=80\nK:C\nCDE FGA|")).tempo).toBe(120);
  });

  it("fills bars of rest that stand for several", async () => {
    const melody = await melodyOf("X:1\nM:3/4\nL:1/4\nK:C\nCDE|Z2|F3|");
    expect(notesOf(melody)).toBe("0+1 C4, 1+1 D4, 2+1 E4, 9+3 F4");
  });

  it("writes out repeats that split a bar", async () => {
    const read = await readAbc("X:1\nM:3/4\nL:1/4\nK:C\nC|DEF|GA:|B|cde|fg|");
    expect(read).toMatchObject({ ok: true });
    expect(read.ok && read.value.remarks).toEqual(["The repeats are written out."]);
  });
});

// ABC 2.1, section 4.1: C is middle C, c an octave above, commas and apostrophes move by octaves.
describe("pitches", () => {
  it("follow letters, octaves and accidentals", async () => {
    expect(await pitchesOf("C, C c c'|^C _D =E ^^F|__B")).toBe("C3 C4 C5 C6 C#4 Db4 E4 F##4 Bbb4");
  });

  it("follow the key signature", async () => {
    expect(await pitchesOf("F C f c", "D")).toBe("F#4 C#4 F#5 C#5");
    expect(await pitchesOf("B E A D", "Fm")).toBe("Bb4 Eb4 Ab4 Db4");
    expect(await pitchesOf("F B c d", "D dor")).toBe("F4 B4 C5 D5");
  });

  // Section 11.3: an accidental holds for its letter in all octaves to the end of the bar.
  it("keep an accidental to the end of the bar, in all octaves, and over a tie", async () => {
    expect(await pitchesOf("^F F f =F|F4|")).toBe("F#4 F#4 F#5 F4 F4");
    expect(await pitchesOf("z3 ^c-|c2 c2|")).toBe("C#5 C#5 C5");
  });
});

describe("what is wrong is named with its bar", () => {
  it.each([
    ["a bar too long", `${HEAD}c8|c8c2|c8|`, ["Bar 2 holds 5 beats, but 4/4 has room for 4."]],
    [
      "bars too short",
      `${HEAD}c8|c6|c8|c2|c8|`,
      [
        "Bar 2 holds only 3 beats, but 4/4 has room for 4.",
        "Bar 4 holds only 1 beat, but 4/4 has room for 4.",
      ],
    ],
    ["a sign that means nothing", `${HEAD}c8|c4 ? c4|`, ["Bar 2: “?” means nothing here."]],
    ["a quarter tone", `${HEAD}c8|^/c8|`, ["Bar 2: quarter tones cannot be read."]],
    ["another metre", `${HEAD}c8|[M:3/4]c6|`, ["Bar 2: the metre changes."]],
  ])("%s", async (_, text, expected) => {
    expect(await problemsOf(text)).toEqual(expected);
  });

  it("a chord symbol that cannot be read", async () => {
    const [problem = ""] = await problemsOf(`${HEAD}c8|"Hey"c8|`);
    expect(problem).toMatch(/^Bar 2, chord “Hey”: /);
  });

  it("text without any note, too long, or with macros", async () => {
    const read = async (text: string) => {
      const found = await readAbc(text);
      return found.ok ? "read" : found.problems[0]!.code;
    };
    expect(await read("  ")).toBe("abc-empty");
    expect(await read(`${HEAD}|`)).toBe("melody-none");
    expect(await read("c".repeat(10_001))).toBe("abc-too-long");
    expect(await read("m:a=bbbb\nm:b=cccc\nX:1\nK:C\naaaa")).toBe("abc-macro");
  });

  it("never throws, whatever is typed", async () => {
    const piece = fc.constantFrom(
      ..."ABCdefg123/<>|:[](){}\"^_=~.-',".split(""),
      "X:1\n",
      "K:",
      "M:",
      "L:1/8\n",
      "(3",
      ":|",
      "|1",
      "Z4",
      "\n",
      " ",
    );
    await fc.assert(
      fc.asyncProperty(fc.array(piece, { maxLength: 40 }), async (pieces) => {
        expect(typeof (await readAbc(pieces.join(""))).ok).toBe("boolean");
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});
