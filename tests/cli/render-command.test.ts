import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { main as renderSamples } from "../../src/cli/samples.ts";
import { sampleTable } from "../../src/cli/sample-table.ts";
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
    [[...own, "--out", "nowhere/a.wav"], "could not be written"],
  ])("refuses %j with one sentence and writes nothing", async (flags, words) => {
    const { code, errors } = await run(["render", ...flags]);
    expect(code).toBe(2);
    expect(errors).toContain(words);
    expect(existsSync("a.wav")).toBe(false);
  });
});

describe("the listening examples", () => {
  it("are all rendered, each into a file of its own", async () => {
    const said: string[] = [];
    const write = process.stdout.write.bind(process.stdout);
    process.stdout.write = (text: unknown) => said.push(String(text)) > 0;
    try {
      expect(await renderSamples([folder])).toBe(0);
    } finally {
      process.stdout.write = write;
    }
    expect(said).toHaveLength(sampleTable.length);
    expect(new Set(sampleTable.map(({ name }) => name)).size).toBe(sampleTable.length);
    for (const { name } of sampleTable) {
      const bytes = readFileSync(join(folder, `${name}.wav`));
      expect(bytes.length).toBeGreaterThan(2 * 48000 * 4);
    }
  });
});
