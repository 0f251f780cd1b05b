import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Hertz } from "../../src/base/index.ts";
import { ditherChance, encodeWav, encodeWavFrames, wavHeader } from "../../src/files/wav.ts";

const sampleRate = 48000 as Hertz;

/** A plain reader of the chunks of a RIFF file, written from the 1991 specification. */
function read(bytes: Uint8Array) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const text = (at: number): string => String.fromCharCode(...bytes.subarray(at, at + 4));
  expect(text(0)).toBe("RIFF");
  expect(text(8)).toBe("WAVE");
  expect(view.getUint32(4, true)).toBe(bytes.length - 8);
  const chunks = new Map<string, { readonly at: number; readonly size: number }>();
  for (let at = 12; at < bytes.length;) {
    const size = view.getUint32(at + 4, true);
    chunks.set(text(at), { at: at + 8, size });
    at += 8 + size + (size % 2);
  }
  const format = chunks.get("fmt ")!.at;
  const data = chunks.get("data")!;
  return {
    view,
    data,
    chunks,
    code: view.getUint16(format, true),
    channels: view.getUint16(format + 2, true),
    rate: view.getUint32(format + 4, true),
    byteRate: view.getUint32(format + 8, true),
    frameBytes: view.getUint16(format + 12, true),
    bits: view.getUint16(format + 14, true),
  };
}

const left = Float32Array.of(0, 0.5, -0.5, 1, -1);
const right = Float32Array.of(0, 0.25, -0.25, 2, -2);

// Microsoft and IBM, Multimedia Programming Interface and Data Specifications 1.0, 1991.
describe("a WAV file", () => {
  it.each([
    ["pcm16", 1, 16],
    ["pcm24", 1, 24],
    ["float32", 3, 32],
  ] as const)("in %s says what it holds", (format, code, bits) => {
    const wav = read(encodeWav([left, right], { sampleRate, format }));
    expect([wav.code, wav.channels, wav.rate, wav.bits]).toEqual([code, 2, 48000, bits]);
    expect(wav.frameBytes).toBe((2 * bits) / 8);
    expect(wav.byteRate).toBe(48000 * wav.frameBytes);
    expect(wav.data.size).toBe(5 * wav.frameBytes);
  });

  it("in floating point keeps every sample to the bit, and counts its frames", () => {
    const { view, data, chunks } = read(
      encodeWav([left, right], { sampleRate, format: "float32" }),
    );
    for (let i = 0; i < 5; i++) {
      expect(view.getFloat32(data.at + 8 * i, true)).toBe(left[i]);
      expect(view.getFloat32(data.at + 8 * i + 4, true)).toBe(right[i]);
    }
    expect(view.getUint32(chunks.get("fact")!.at, true)).toBe(5);
  });

  it("in 24 bits is right to half a step and cut at full scale", () => {
    const { view, data } = read(encodeWav([right], { sampleRate }));
    const sample = (i: number): number =>
      view.getUint8(data.at + 3 * i) + 256 * view.getInt16(data.at + 3 * i + 1, true);
    expect([0, 1, 2, 3, 4].map(sample)).toEqual([0, 0x200000, -0x200000, 0x7fffff, -0x800000]);
  });

  it("in 16 bits is dithered by at most one step and a half, and leaves silence silent", () => {
    const level = fc.float({ min: Math.fround(-0.99), max: Math.fround(0.99), noNaN: true });
    fc.assert(
      fc.property(fc.array(level, { minLength: 1 }), (levels) => {
        const samples = Float32Array.from(levels);
        const { view, data } = read(encodeWav([samples], { sampleRate, format: "pcm16" }));
        samples.forEach((x, i) => {
          const found = view.getInt16(data.at + 2 * i, true);
          expect(Math.abs(found - 32768 * x)).toBeLessThanOrEqual(1.5);
        });
      }),
      { seed: 7 },
    );
    const silence = encodeWavFrames([new Float32Array(64)], "pcm16");
    expect(silence.every((byte) => byte === 0)).toBe(true);
  });

  // S. P. Lipshitz, R. A. Wannamaker and J. Vanderkooy, 1992: triangular dither of two steps
  // makes the mean of the written values follow the signal below one step.
  it("in 16 bits carries what is smaller than a step", () => {
    const faint = new Float32Array(40000).fill(0.3 / 32768);
    const { view, data } = read(encodeWav([faint], { sampleRate, format: "pcm16" }));
    let sum = 0;
    for (let i = 0; i < faint.length; i++) sum += view.getInt16(data.at + 2 * i, true);
    expect(sum / faint.length).toBeCloseTo(0.3, 1);
  });

  it("pads an odd number of bytes and does not count the padding", () => {
    const bytes = encodeWav([Float32Array.of(0.1)], { sampleRate, format: "pcm24" });
    expect(bytes.length % 2).toBe(0);
    expect(read(bytes).data.size).toBe(3);
  });

  it.each(["pcm16", "pcm24", "float32"] as const)("in %s is the same piece by piece", (format) => {
    const whole = encodeWav([left, right], { sampleRate, format });
    const head = wavHeader({ sampleRate, format, channels: 2, frames: 5 });
    const chance = ditherChance();
    const pieces = [
      ...head,
      ...encodeWavFrames([left.subarray(0, 2), right.subarray(0, 2)], format, chance),
      ...encodeWavFrames([left.subarray(2), right.subarray(2)], format, chance),
    ];
    expect(Uint8Array.from(pieces)).toEqual(whole);
  });

  it("refuses no channel, unlike channels, and more than a WAV file can hold", () => {
    expect(() => encodeWav([], { sampleRate })).toThrow("at least one channel, got none");
    expect(() => encodeWav([left, right.subarray(1)], { sampleRate })).toThrow("got 5 and 4");
    expect(() => wavHeader({ sampleRate, channels: 2, frames: 1e9 })).toThrow("at most 4 GB");
  });
});
