import { seededChance } from "../base/index.ts";
import type { Chance, Count, Hertz } from "../base/index.ts";

/** How samples are written: whole numbers of 16 or 24 bits, or 32-bit floating point. */
export type WavFormat = "pcm16" | "pcm24" | "float32";

/** Choices of a WAV file. */
export interface WavOptions {
  readonly sampleRate: Hertz;
  /** 24 bits unless given. */
  readonly format?: WavFormat;
}

const BYTES: Readonly<Record<WavFormat, Count>> = Object.freeze({ pcm16: 2, pcm24: 3, float32: 4 });
const FORMAT_PCM = 1;
const FORMAT_IEEE_FLOAT = 3;
const DITHER_SEED = 16;
/** Sizes in a RIFF file are 32-bit numbers. */
const LARGEST_FILE = 0xffffffff;

/**
 * Writes a recording as a WAV file. 16 bits are written with triangular dither, seeded, so that
 * the same recording always gives the same bytes; 24 bits need none.
 * @param channels - one array a channel, all of one length, full scale ±1; whole-number formats
 * cut what lies beyond
 * @param options - sampling rate and format
 * @returns the bytes of the file
 * @throws RangeError without a channel, with channels of unlike length, or beyond 4 GB
 * @source Microsoft and IBM, Multimedia Programming Interface and Data Specifications 1.0, 1991
 * (RIFF WAVE); S. P. Lipshitz, R. A. Wannamaker and J. Vanderkooy, Quantization and Dither, 1992
 * @example encodeWav([left, right], { sampleRate: 48000 as Hertz, format: "pcm16" })
 */
export function encodeWav(channels: readonly Float32Array[], options: WavOptions): Uint8Array {
  const frames = frameCount(channels);
  const header = wavHeader({ ...options, channels: channels.length, frames });
  const body = encodeWavFrames(channels, options.format);
  // A chunk of odd length is followed by one empty byte that its size does not count.
  const bytes = new Uint8Array(header.length + body.length + (body.length % 2));
  bytes.set(header);
  bytes.set(body, header.length);
  return bytes;
}

/**
 * The head of a WAV file whose samples follow piece by piece.
 * @param shape - sampling rate, format, channels and the frames that will follow
 * @returns its first bytes, up to the first sample
 * @throws RangeError beyond 4 GB
 */
export function wavHeader(
  shape: WavOptions & { readonly channels: Count; readonly frames: Count },
): Uint8Array {
  const { sampleRate, format = "pcm24", channels, frames } = shape;
  const frameBytes = BYTES[format] * channels;
  const dataBytes = frames * frameBytes;
  const isFloat = format === "float32";
  // Formats other than PCM carry an extension size and a count of frames.
  const formatBytes = isFloat ? 18 : 16;
  const factBytes = isFloat ? 12 : 0;
  const headBytes = 12 + 8 + formatBytes + factBytes + 8;
  const riffBytes = headBytes - 8 + dataBytes + (dataBytes % 2);
  if (riffBytes > LARGEST_FILE)
    throw new RangeError(`a WAV file holds at most 4 GB, got ${frames} frames`);
  const writer = new ByteWriter(headBytes);
  writer.text("RIFF").uint32(riffBytes).text("WAVE");
  writer.text("fmt ").uint32(formatBytes);
  writer
    .uint16(isFloat ? FORMAT_IEEE_FLOAT : FORMAT_PCM)
    .uint16(channels)
    .uint32(sampleRate);
  writer
    .uint32(sampleRate * frameBytes)
    .uint16(frameBytes)
    .uint16(8 * BYTES[format]);
  if (isFloat) writer.uint16(0).text("fact").uint32(4).uint32(frames);
  writer.text("data").uint32(dataBytes);
  return writer.bytes;
}

/**
 * Samples as they stand in a WAV file, frame by frame, without a head.
 * @param channels - one array a channel, all of one length
 * @param format - 24 bits unless given
 * @param chance - draws the dither; hand the same one on from piece to piece, and a file written
 * piece by piece is the one written at once
 * @returns bytes, little-endian
 * @throws RangeError without a channel or with channels of unlike length
 */
export function encodeWavFrames(
  channels: readonly Float32Array[],
  format: WavFormat = "pcm24",
  chance: Chance = ditherChance(),
): Uint8Array {
  const frames = frameCount(channels);
  const bytes = new Uint8Array(frames * channels.length * BYTES[format]);
  const view = new DataView(bytes.buffer);
  const write = sampleWriter(view, format, chance);
  let at = 0;
  for (let frame = 0; frame < frames; frame++)
    for (const channel of channels) {
      write(at, channel[frame]!);
      at += BYTES[format];
    }
  return bytes;
}

/**
 * The dither of one file from its beginning.
 * @returns draws numbers from 0 to below 1, the same for every file
 */
export function ditherChance(): Chance {
  return seededChance(DITHER_SEED);
}

type SampleWriter = (at: number, sample: number) => void;

function sampleWriter(view: DataView, format: WavFormat, chance: Chance): SampleWriter {
  if (format === "float32") return (at, sample) => view.setFloat32(at, sample, true);
  if (format === "pcm24")
    return (at, sample) => {
      const whole = quantized(sample, 0x800000, 0);
      view.setUint8(at, whole & 0xff);
      view.setInt16(at + 1, whole >> 8, true);
    };
  return (at, sample) =>
    view.setInt16(at, quantized(sample, 0x8000, chance() + chance() - 1), true);
}

/** Nearest whole number, with dither of up to one step either side, cut at the ends. */
function quantized(sample: number, fullScale: number, dither: number): number {
  // Digital silence stays silent.
  const wanted = sample === 0 ? 0 : Math.round(sample * fullScale + dither);
  return Math.min(fullScale - 1, Math.max(-fullScale, wanted));
}

function frameCount(channels: readonly Float32Array[]): Count {
  const first = channels[0];
  if (!first) throw new RangeError("a WAV file needs at least one channel, got none");
  for (const { length } of channels)
    if (length !== first.length)
      throw new RangeError(`channels must have one length, got ${first.length} and ${length}`);
  return first.length;
}

/** Writes little-endian numbers one after the other. */
class ByteWriter {
  readonly bytes: Uint8Array;
  private readonly view: DataView;
  private at = 0;

  constructor(length: Count) {
    this.bytes = new Uint8Array(length);
    this.view = new DataView(this.bytes.buffer);
  }

  text(fourLetters: string): this {
    for (const letter of fourLetters) this.view.setUint8(this.at++, letter.charCodeAt(0));
    return this;
  }

  uint16(value: number): this {
    this.view.setUint16(this.at, value, true);
    this.at += 2;
    return this;
  }

  uint32(value: number): this {
    this.view.setUint32(this.at, value, true);
    this.at += 4;
    return this;
  }
}
