import { mkdtempSync, readFileSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Hertz } from "../../src/base/index.ts";
import { integratedLoudness, MATCH_TARGET_LUFS } from "../../src/audio/index.ts";
import { readOwnVoicing } from "../../src/cli/own-voicing.ts";
import { findPair } from "../../src/cli/sample-finders.ts";
import { measuresOf, unmetClaims } from "../../src/cli/sample-sources.ts";
import { samplePairs } from "../../src/cli/sample-table.ts";
import { main as renderSamples, sampleRecording } from "../../src/cli/samples.ts";
import { bandPower, peak, powerToDb, spectrumOf, toDb } from "../audio/support/fourier.ts";

const folder = "samples-audio";
const names = samplePairs.flatMap((pair) => pair.names);
const pathOf = (name: string): string => join(folder, `${name}.wav`);

interface Wav {
  readonly channels: number;
  readonly rate: number;
  readonly bits: number;
  readonly left: Float32Array;
  readonly right: Float32Array;
}

/** A 16-bit stereo file; positions after Microsoft and IBM, RIFF WAVE, 1991. */
function wavOf(bytes: Buffer): Wav {
  const dataAt = bytes.indexOf("data") + 8;
  const frames = bytes.readUInt32LE(dataAt - 4) / 4;
  const channel = (offset: number) =>
    Float32Array.from(
      { length: frames },
      (_, n) => bytes.readInt16LE(dataAt + 4 * n + offset) / 2 ** 15,
    );
  return {
    channels: bytes.readUInt16LE(22),
    rate: bytes.readUInt32LE(24),
    bits: bytes.readUInt16LE(34),
    left: channel(0),
    right: channel(2),
  };
}

/** Levels of the thirds of an octave from 100 Hz to 8 kHz over the held sound, dB. */
function thirdOctaves({ left, rate }: Wav): readonly number[] {
  const spectrum = spectrumOf(left, rate, Math.round(0.5 * rate), 2 ** 16);
  return Array.from({ length: 20 }, (_, n) => 100 * 2 ** (n / 3)).map((hz) =>
    powerToDb(bandPower(spectrum, hz * 2 ** (-1 / 6), hz * 2 ** (1 / 6))),
  );
}

describe("the recordings in samples-audio", () => {
  it("are those of the table, all named in README and in SOURCES.md, and nothing else", () => {
    const there = readdirSync(folder).filter((name) => name.endsWith(".wav"));
    expect(there.sort()).toEqual(names.map((name) => `${name}.wav`).sort());
    const readme = readFileSync("README.md", "utf8");
    const section = readme.split("## ").find((part) => part.startsWith("Listening examples"))!;
    const sources = readFileSync(join(folder, "SOURCES.md"), "utf8");
    for (const name of names) {
      expect(section).toContain(`(samples-audio/${name}.wav)`);
      expect(sources).toContain(`[${name}](${name}.wav)`);
    }
  });

  it("are a dozen, short, in 16 bits and stereo, and small together", () => {
    expect(names).toHaveLength(12);
    let bytes = 0;
    for (const name of names) {
      const { channels, rate, bits, left } = wavOf(readFileSync(pathOf(name)));
      expect([channels, rate, bits]).toEqual([2, 48000, 16]);
      expect(left.length / rate).toBeGreaterThan(3);
      expect(left.length / rate).toBeLessThan(5);
      bytes += statSync(pathOf(name)).size;
    }
    expect(bytes).toBeLessThan(8_000_000);
  });

  // ITU-R BS.1770: equally loud within 0.2 LU of the target.
  it.each(names)("%s has the loudness of all the others, and no peak near full scale", (name) => {
    const { left, right, rate } = wavOf(readFileSync(pathOf(name)));
    const loudness = integratedLoudness([left, right], rate as Hertz);
    expect(Math.abs(loudness - MATCH_TARGET_LUFS)).toBeLessThan(0.2);
    expect(toDb(Math.max(peak(left), peak(right)))).toBeLessThan(-6);
  });

  it.each(["across-sections", "heard-flute"])(
    "%s is what the notes in SOURCES.md sound like when rendered again",
    (name) => {
      const pair = samplePairs.find((each) => (each.names as readonly string[]).includes(name))!;
      const sources = readFileSync(join(folder, "SOURCES.md"), "utf8");
      const line = new RegExp(`^- ${name}: (\\S+), \`(.+)\`$`, "m").exec(sources);
      const answered = readOwnVoicing({
        chord: line![1]!,
        notes: line![2]!.split(","),
        dynamic: pair.dynamic,
      });
      if (!answered.ok) throw new Error(answered.problem.message);
      const again = thirdOctaves(wavOf(Buffer.from(sampleRecording(answered.value).bytes)));
      const kept = thirdOctaves(wavOf(readFileSync(pathOf(name))));
      const loudest = Math.max(...kept);
      const heard = kept.flatMap((level, n) => (level > loudest - 50 ? [n] : []));
      expect(heard.length).toBeGreaterThan(10);
      for (const n of heard) expect(Math.abs(again[n]! - kept[n]!)).toBeLessThan(1);
    },
  );
});

describe("the pairs of listening examples", () => {
  it.each(samplePairs.map((pair) => [pair.names.join(" and "), pair] as const))(
    "%s are alike in what they claim and differ in one measure",
    (_, pair) => {
      const [first, second] = findPair(pair).map((answered, i) => ({
        name: pair.names[i]!,
        measures: measuresOf(answered),
      }));
      expect(unmetClaims(pair, [first!, second!])).toEqual([]);
    },
  );

  it("are refused when a claim does not hold", () => {
    const [pair] = samplePairs;
    const [tight] = findPair(pair!).map((answered) => measuresOf(answered));
    const twice = { name: "tight", measures: tight! };
    const unmet = unmetClaims(pair!, [twice, twice]);
    expect(unmet).toHaveLength(1);
    expect(unmet[0]).toContain("hardly differ in span");
  });
});

describe("npm run samples", () => {
  let out = "";
  beforeAll(() => {
    out = mkdtempSync(join(tmpdir(), "samples-"));
  });
  afterAll(() => rmSync(out, { recursive: true, force: true }));

  it("writes every file of the table and the page about them", async () => {
    const write = process.stdout.write.bind(process.stdout);
    const said: string[] = [];
    process.stdout.write = (text: unknown) => said.push(String(text)) > 0;
    try {
      expect(await renderSamples([out])).toBe(0);
    } finally {
      process.stdout.write = write;
    }
    expect(said).toHaveLength(names.length);
    expect(readdirSync(out).sort()).toEqual(
      [...names.map((name) => `${name}.wav`), "SOURCES.md"].sort(),
    );
    // The same voicing gives the same bytes as before.
    const page = readFileSync(join(out, "SOURCES.md"), "utf8");
    const line = /^- heard-flute: (\S+), `(.+)`$/m.exec(page)!;
    const answered = readOwnVoicing({ chord: line[1]!, notes: line[2]!.split(","), dynamic: "mf" });
    const again = answered.ok ? sampleRecording(answered.value).bytes : Buffer.alloc(0);
    expect(Buffer.compare(again, readFileSync(join(out, "heard-flute.wav")))).toBe(0);
  });
});
