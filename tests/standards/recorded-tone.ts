import { readFileSync } from "node:fs";

/** A recorded note: samples from -1 to 1, first channel. */
export interface RecordedTone {
  readonly samples: Float64Array;
  readonly sampleRate: number;
}

/** Reads a WAV file of whole-number samples of 8, 16 or 24 bits. */
export function readTone(path: string): RecordedTone {
  const bytes = readFileSync(path);
  let at = 12;
  let [channels, sampleRate, bits] = [1, 44100, 16];
  for (;;) {
    const name = bytes.toString("latin1", at, at + 4);
    const size = bytes.readUInt32LE(at + 4);
    if (name === "fmt ") {
      channels = bytes.readUInt16LE(at + 10);
      sampleRate = bytes.readUInt32LE(at + 12);
      bits = bytes.readUInt16LE(at + 22);
    }
    if (name === "data") {
      const step = (bits / 8) * channels;
      const samples = Float64Array.from({ length: Math.floor(size / step) }, (_none, index) =>
        sampleAt(bytes, at + 8 + index * step, bits),
      );
      return { samples, sampleRate };
    }
    at += 8 + size + (size % 2);
  }
}

function sampleAt(bytes: Buffer, at: number, bits: number): number {
  if (bits === 8) return bytes.readUInt8(at) / 128 - 1;
  return bytes.readIntLE(at, bits / 8) / 2 ** (bits - 1);
}

/** Level in dB (any reference) at a frequency, Hann window over the middle of the note. */
function levelAt({ samples, sampleRate }: RecordedTone, hz: number): number {
  const from = Math.floor(samples.length * 0.35);
  const length = Math.min(16384, Math.floor(samples.length * 0.5));
  const turn = (2 * Math.PI * hz) / sampleRate;
  let [real, imaginary] = [0, 0];
  for (let n = 0; n < length; n += 1) {
    const window = 0.5 - 0.5 * Math.cos((2 * Math.PI * n) / length);
    const value = window * (samples[from + n] ?? 0);
    real += value * Math.cos(turn * n);
    imaginary -= value * Math.sin(turn * n);
  }
  return 10 * Math.log10(real * real + imaginary * imaginary + 1e-20);
}

/** Fundamental near a stated one: the tuning, within a semitone, that catches most of six partials. */
export function fundamentalNear(tone: RecordedTone, hz: number): number {
  let best = { hz, sum: -Infinity };
  for (let cents = -60; cents <= 60; cents += 2) {
    const tried = hz * 2 ** (cents / 1200);
    let sum = 0;
    for (let n = 1; n <= 6 && n * tried < tone.sampleRate * 0.45; n += 1)
      sum += 10 ** (levelAt(tone, n * tried) / 20);
    if (sum > best.sum) best = { hz: tried, sum };
  }
  return best.hz;
}

/** Level of the partial near a frequency: strongest within 1 %, for players are never quite still. */
function partialNear(tone: RecordedTone, hz: number): number {
  const tries = [-1, -0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75, 1];
  return Math.max(...tries.map((percent) => levelAt(tone, hz * (1 + percent / 100))));
}

/** Levels of the partials up to 10 kHz, in dB against the strongest. */
export function partialLevels(tone: RecordedTone, fundamental: number): readonly number[] {
  const highest = Math.min(10_000, tone.sampleRate * 0.45);
  const count = Math.floor(highest / fundamental);
  const found = Array.from({ length: count }, (_none, index) =>
    partialNear(tone, (index + 1) * fundamental),
  );
  const top = Math.max(...found);
  return found.map((level) => level - top);
}
