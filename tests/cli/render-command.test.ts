import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { answerTo, run } from "./run-main.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "render-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** First channel of a 24-bit stereo file, ±1; positions after the RIFF WAVE specification. */
function leftOf(bytes: Buffer): Float64Array {
  const dataAt = bytes.indexOf("data") + 8;
  const frames = bytes.readUInt32LE(dataAt - 4) / 6;
  return Float64Array.from(
    { length: frames },
    (_, n) => bytes.readIntLE(dataAt + 6 * n, 3) / 2 ** 23,
  );
}

/** Level of one frequency over a whole number of tenths of a second, dB re full scale. */
function levelAt(hz: number, samples: Float64Array): number {
  let real = 0;
  let imaginary = 0;
  samples.forEach((value, n) => {
    // Hann window, so that a strong neighbour does not leak in.
    const weight = 1 - Math.cos((2 * Math.PI * n) / samples.length);
    const angle = (2 * Math.PI * hz * n) / 48000;
    real += weight * value * Math.cos(angle);
    imaginary += weight * value * Math.sin(angle);
  });
  return 20 * Math.log10((2 * Math.hypot(real, imaginary)) / samples.length);
}

interface Turns {
  readonly turns: readonly (readonly { readonly player: string }[])[];
  readonly gainsDb: readonly number[];
}

const own = ["--chord", "A", "--notes", "tpt1=A4,bari=A2"];

describe("render", () => {
  it("writes a stereo WAV file at 48 kHz with the notes asked for in it", async () => {
    const out = join(folder, "a.wav");
    const answer = await answerTo("render", ...own, "--seconds", "1.5", "--out", out);
    expect(answer).toMatchObject({ out, sampleRate: 48000 });
    const bytes = readFileSync(out);
    // Microsoft and IBM, RIFF WAVE, 1991: channels at 22, sampling rate at 24, bits at 34.
    expect(bytes.toString("latin1", 0, 4) + bytes.toString("latin1", 8, 12)).toBe("RIFFWAVE");
    expect([bytes.readUInt16LE(22), bytes.readUInt32LE(24), bytes.readUInt16LE(34)]).toEqual([
      2, 48000, 24,
    ]);
    // A4 = 440 Hz (ISO 16), A2 = 110 Hz; between them nothing of theirs.
    const held = leftOf(bytes).subarray(0.4 * 48000, 1.2 * 48000);
    expect(levelAt(440, held)).toBeGreaterThan(levelAt(495, held) + 20);
    expect(levelAt(110, held)).toBeGreaterThan(levelAt(85, held) + 20);
  });

  it("never clips, even when everybody plays at fff", async () => {
    const out = join(folder, "loud.wav");
    const loud = ["--chord", "F13", "--melody", "D5", "--dynamic", "fff", "--seconds", "0.8"];
    const answer = (await answerTo("render", ...loud, "--out", out)) as { truePeakDb: number };
    expect(answer.truePeakDb).toBeLessThan(0);
  });

  it.each([
    ["rolled", 110, 349.2],
    ["rolled-down", 349.2, 110],
  ])("%s lets the note at %d Hz begin before the one at %d Hz", async (manner, first, second) => {
    const out = join(folder, `${manner}.wav`);
    // F4 is no partial of A2.
    const two = ["--chord", "A", "--notes", "tpt1=F4,bari=A2", "--seconds", "1"];
    await answerTo("render", ...two, "--manner", manner, "--out", out);
    // A roll of two notes takes 0.16 s; the second is heard from then on.
    const beginning = leftOf(readFileSync(out)).subarray(0.04 * 48000, 0.14 * 48000);
    expect(levelAt(first, beginning)).toBeGreaterThan(levelAt(second, beginning) + 20);
    const held = leftOf(readFileSync(out)).subarray(0.4 * 48000, 0.9 * 48000);
    expect(levelAt(second, held)).toBeGreaterThan(-60);
  });

  it("plays several voicings in turn, as loud as each other when asked", async () => {
    const out = join(folder, "turns.wav");
    const notes = "tpt1=A4,bari=A2; alto1=A4";
    const asked = ["--chord", "A", "--notes", notes, "--seconds", "3", "--out", out];
    const played = (await answerTo("render", ...asked)) as Turns;
    expect(played.turns.map((turn) => turn.map(({ player }) => player))).toEqual([
      ["tpt1", "bari"],
      ["alto1"],
    ]);
    expect(played.gainsDb).toEqual([0, 0]);
    const matched = (await answerTo("render", ...asked, "--matched")) as Turns;
    expect(matched.gainsDb[1]).toBeGreaterThan(matched.gainsDb[0]!);
    // Two times three seconds, the gap between and the room's tail (ITU-R BS.1770 for loudness).
    const left = leftOf(readFileSync(out));
    expect(left.length / 48000).toBeGreaterThan(6.6);
    expect(left.length / 48000).toBeLessThan(7.6);
    const [first, second] = [
      left.subarray(48000, 2.5 * 48000),
      left.subarray(4.6 * 48000, 6 * 48000),
    ];
    expect(levelAt(110, first)).toBeGreaterThan(-50);
    expect(levelAt(110, second)).toBeLessThan(-70);
    expect(levelAt(440, second)).toBeGreaterThan(-50);
  });

  it("lets one stand out, the others 12 dB under or silent", async () => {
    const out = join(folder, "front.wav");
    const level = async (...more: readonly string[]): Promise<number> => {
      await answerTo("render", ...own, "--seconds", "1.5", "--out", out, ...more);
      return levelAt(110, leftOf(readFileSync(out)).subarray(0.4 * 48000, 1.2 * 48000));
    };
    const all = await level();
    expect((await level("--front", "tpt1")) - all).toBeCloseTo(-12, 0);
    expect(await level("--front", "tpt1", "--only")).toBeLessThan(all - 40);
    expect((await level("--front", "bari", "--only")) - all).toBeCloseTo(0, 0);
  });

  it("lets bass, piano and drums play along when asked", async () => {
    const out = join(folder, "company.wav");
    const loudness = async (...more: readonly string[]): Promise<number> => {
      const answer = await answerTo("render", ...own, "--seconds", "1.5", "--out", out, ...more);
      return (answer as { lufs: number }).lufs;
    };
    // The bass has the chord's root: A1, 55 Hz.
    await loudness();
    const without = levelAt(55, leftOf(readFileSync(out)).subarray(0.2 * 48000, 1 * 48000));
    await loudness("--with", "bass");
    const along = levelAt(55, leftOf(readFileSync(out)).subarray(0.2 * 48000, 1 * 48000));
    expect(along).toBeGreaterThan(without + 20);
    expect(await loudness("--with", "bass,piano,drums")).toBeGreaterThan(await loudness());
  });

  it("renders a list of kept voicings one by one from a batch", async () => {
    const files = ["one", "two"].map((name) => join(folder, `${name}.wav`));
    const lines = files.map((out, i) =>
      JSON.stringify({ chord: "A", notes: { tpt1: i === 0 ? "A4" : "E5" }, out, manner: "hit" }),
    );
    const { code, output } = await run(
      ["render", "--batch", "--seconds", "0.4"],
      `${lines.join("\n")}\n{"chord":"A","notes":"tpt1=A4","out":"no.mp3"}\n`,
    );
    expect(code).toBe(0);
    const answers = output
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line) as { out?: string });
    expect(answers.slice(0, 2).map(({ out }) => out)).toEqual(files);
    expect(answers[2]).toMatchObject({ error: { code: "file-kind-unknown" } });
    for (const file of files) expect(readFileSync(file).length).toBeGreaterThan(48000);
  });

  it("plays the best voicing when no notes are given", async () => {
    const out = join(folder, "best.wav");
    const asked = ["--chord", "F13", "--melody", "D5", "--band", "three-horn", "--seconds", "0.3"];
    const { notes } = (await answerTo("render", ...asked, "--manner", "hit", "--out", out)) as {
      notes: readonly { midi: number }[];
    };
    expect(Math.max(...notes.map(({ midi }) => midi))).toBe(74);
    expect(notes).toHaveLength(3);
  });

  it.each([
    [[...own, "--out", "a.mp3"], "render writes .wav files"],
    [[...own, "--out", "a.wav", "--seconds", "0"], "--seconds is from"],
    [[...own, "--out", "a.wav", "--seconds", "3600"], "--seconds is from"],
    [["--chord", "F13", "--out", "a.wav"], "--melody"],
    [[...own, "--out", "a.wav", "--with", "tuba"], "--with is one of bass, piano, drums"],
    [[...own, "--out", "a.wav", "--front", "alto1"], '--front names "alto1"'],
    [["--chord", "A", "--notes", "tpt1=A4; ", "--out", "a.wav"], "Give at least one note"],
    [[...own, "--out", "nowhere/a.wav"], "could not be written"],
  ])("refuses %j with one sentence and writes nothing", async (flags, words) => {
    const { code, errors } = await run(["render", ...flags]);
    expect(code).toBe(2);
    expect(errors).toContain(words);
    expect(existsSync("a.wav")).toBe(false);
  });
});
