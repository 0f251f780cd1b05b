// Covers src/cli/read-phrase-request.ts, phrase-data.ts, phrase-text.ts, phrase-place.ts,
// write-phrase.ts and files.ts
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readMidi, readScoreFile, type ScoreModel } from "../../src/files/index.ts";
import { spelledToMidi } from "../../src/theory/index.ts";
import { answerTo, run } from "./run-main.ts";

let folder = "";
/** Two bars of our own with a pickup. */
const tune = `X:1
T:Quay Street
M:4/4
L:1/8
Q:1/4=150
K:Bb
"Bb6"F2 G2 | "Bb6"B3 c d2 z2 | "F7"e2 c2 "Bb6"B4 |]
`;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "phrase-"));
  writeFileSync(at("tune.abc"), tune);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const at = (name: string): string => join(folder, name);
const four = ["--band", "four-horn"];

interface Note {
  readonly at: number;
  readonly quarters: number;
  readonly midi: number;
}

interface Told {
  readonly melody: { readonly notes: readonly { readonly midi: number; readonly at: number }[] };
  readonly moments: readonly {
    readonly lead: number;
    readonly candidates: number;
    readonly voicing: Readonly<Record<string, number>>;
  }[];
  readonly parts: readonly { readonly player: string; readonly notes: readonly Note[] }[];
  readonly alternatives: readonly { readonly label: string }[];
  readonly written: readonly string[];
}

const told = async (...words: readonly string[]): Promise<Told> =>
  (await answerTo("phrase", at("tune.abc"), ...words)) as Told;

function scoreIn(path: string): ScoreModel {
  const read = readScoreFile(readFileSync(path));
  if (!read.ok) throw new Error(read.problem.message);
  return read.value.score;
}

describe("phrase", () => {
  it("tells melody, harmony, voicings, parts and lines as data", async () => {
    const answer = await told();
    // F4 G4 | Bb4 C5 D5 | Eb5 C5 Bb4, after a pickup of two quarters.
    expect(answer.melody.notes.map(({ midi }) => midi)).toEqual([65, 67, 70, 72, 74, 75, 72, 70]);
    expect(answer.melody.notes.map(({ at: time }) => time)).toEqual([0, 1, 2, 3.5, 4, 6, 7, 8]);
    for (const { lead, voicing, candidates } of answer.moments) {
      expect(Math.max(...Object.values(voicing))).toBe(lead);
      expect(candidates).toBeGreaterThanOrEqual(600);
    }
    expect(answer.parts).toHaveLength(13);
    expect(answer).toMatchObject({
      melody: { title: "Quay Street", metre: "4/4", key: "Bb major", tempo: 150, pickup: 2 },
      band: "big-band",
      written: [],
    });
  });

  it("changes style, tempo, line-up, level, dynamic and shape where asked", async () => {
    const own = ["--style", "ballad", "--tempo", "72", "--level", "school", "--dynamic", "p"];
    const answer = await told(...four, ...own, "--shape", "level", "--colour", "plain");
    expect(answer).toMatchObject({ melody: { style: "ballad", tempo: 72 }, band: "four-horn" });
    expect(answer.parts).toHaveLength(4);
  });

  it("writes scores and MIDI files that hold what it told", async () => {
    const outs = ["band.musicxml", "band.mxl", "band.mid"].map(at);
    const answer = await told(...four, "--out", outs.join(","));
    expect(answer.written).toEqual(outs);
    for (const path of outs.slice(0, 2)) {
      const { parts, division } = scoreIn(path);
      for (const { player, notes } of answer.parts) {
        const own = parts.find(({ id }) => id === player)!;
        expect(
          own.notes.map(({ onset, duration, pitch }) => [
            onset / division,
            duration / division,
            spelledToMidi(pitch),
          ]),
        ).toEqual(notes.map((note) => [note.at, note.quarters, note.midi]));
      }
    }
    const midi = readMidi(readFileSync(at("band.mid")));
    expect(midi.ok && midi.value.tracks).toHaveLength(1 + 4);
  });

  it("adds the rhythm section and writes even eighths where asked", async () => {
    const path = at("even.mid");
    await told(...four, "--out", path, "--with", "bass,drums", "--straight");
    const midi = readMidi(readFileSync(path));
    if (!midi.ok) throw new Error(midi.problem.message);
    const { tracks, ticksPerQuarter } = midi.value;
    expect(tracks.slice(-2).map(({ name }) => name)).toEqual(["Bass", "Drums"]);
    const onsets = tracks.flatMap(({ notes }) => notes.map(({ onsetTicks }) => onsetTicks));
    for (const onset of onsets) expect((2 * onset) % ticksPerQuarter).toBe(0);
  });

  it("sounds into a WAV file as long as the phrase, and stems beside it", async () => {
    const answer = await told(...four, "--out", at("band.wav"), "--stems");
    const stems = answer.parts
      .filter(({ notes }) => notes.length > 0)
      .map(({ player }) => at(`band-${player}.wav`));
    expect(answer.written).toEqual([at("band.wav"), ...stems]);
    const bytes = readFileSync(at("band.wav"));
    // RIFF WAVE: bytes a second stand at 28. Ten quarters at 150 a minute take 4 s.
    const seconds = (bytes.length - 44) / bytes.readUInt32LE(28);
    expect(seconds).toBeGreaterThan(4);
    expect(seconds).toBeLessThan(9);
    for (const stem of stems) expect(existsSync(stem)).toBe(true);
  });

  it("gives up to three answers that differ, and writes each", async () => {
    const answer = await told("--alternatives", "3", "--out", at("three.mid"));
    expect(answer.alternatives.length).toBeGreaterThan(0);
    const more = answer.alternatives.map((_, index) => at(`three-${index + 2}.mid`));
    expect(answer.written).toEqual([at("three.mid"), ...more]);
  });

  it("lays the voicings out for people: a row a moment, a column a player", async () => {
    const { code, output } = await run(["phrase", at("tune.abc"), ...four]);
    expect(code).toBe(0);
    const [head = "", columns = "", ...rows] = output.split("\n");
    expect(head).toMatch(/^Quay Street: as drawn, cost \d+$/);
    expect(columns).toMatch(/^bar +beat +chord +span +notes +tpt1 +/);
    expect(rows[0]).toMatch(/^ +0 +3 +Bb6 /);
  });

  it("answers a batch line by line, files and all", async () => {
    const lines = [
      { file: at("tune.abc"), band: "four-horn", out: [at("batch.mid")] },
      { file: at("nothing.abc") },
    ];
    const input = lines.map((line) => JSON.stringify(line)).join("\n");
    const { code, output } = await run(["phrase", "--batch"], input);
    expect(code).toBe(0);
    const [first, second] = output
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line) as { written?: unknown; error?: unknown });
    expect(first?.written).toEqual([at("batch.mid")]);
    expect(second?.error).toMatchObject({ code: "file-not-found" });
  });
});

describe("phrase says in one sentence what is wrong", () => {
  it.each([
    [
      "a bar that is too long",
      'X:1\nM:4/4\nL:1/4\nK:C\n"C"c c c c|"C"c c c c c|c4|',
      /^Bar 2 holds 5 beats/,
    ],
    ["a chord that cannot be read", 'X:1\nL:1/4\nK:C\n"C"c4|"Qx"c4|', /^Bar 2, chord “Qx”/],
    ["an empty file", "", /^The file is empty\.$/],
    ["XML of another kind", "<svg></svg>", /not a MusicXML score/],
    ["a MIDI file by another name", "MThd\u0000\u0000\u0000\u0006", /^This is a MIDI file/],
  ])("%s", async (_, text, expected) => {
    writeFileSync(at("bad.abc"), text);
    const { code, errors, output } = await run(["phrase", at("bad.abc"), ...four]);
    expect(code).toBe(2);
    expect(output).toBe("");
    expect(errors.trim()).toMatch(expected);
    expect(errors.trim().split("\n")).toHaveLength(1);
  });

  it.each([
    [["--out", "band.pdf"], /band\.pdf/],
    [["--tempo", "500"], /--tempo is from 20 to 400/],
    [["--alternatives", "4"], /from 1 to 3/],
    [["--shape", "spiral"], /--shape is one of level, build/],
    [["--out", "/no/such/folder/band.wav"], /could not be written/],
    [["--out", "/no/such/folder/band.mid"], /could not be written/],
  ])("%s", async (words, expected) => {
    const { code, errors } = await run(["phrase", at("tune.abc"), ...four, ...words]);
    expect(code).toBe(2);
    expect(errors).toMatch(expected);
  });
});
