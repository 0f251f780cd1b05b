import type { Chance } from "../base/index.ts";
import type { RenderedBlock } from "../audio/index.ts";
import { ditherChance, encodeWavFrames, wavHeader } from "./wav.ts";
import type { WavOptions } from "./wav.ts";

/** Turns rendered blocks into a WAV file piece by piece, so that no whole file is held. */
export class WavStream {
  private readonly chance: Chance = ditherChance();

  /** @param options - sampling rate and format */
  constructor(private readonly options: WavOptions) {}

  /**
   * The next bytes of the file.
   * @param block - blocks in order, without gaps, from frame 0 on
   * @returns the block's bytes, after the head of the file when it is the first; all together are
   *   the bytes that `encodeWav` gives for the whole
   */
  next(block: RenderedBlock): Uint8Array {
    const { from, of, left, right } = block;
    const body = encodeWavFrames([left, right], this.options.format, this.chance);
    if (from > 0) return body;
    // Two channels fill an even number of bytes in every format, so none is needed at the end.
    const head = wavHeader({ ...this.options, channels: 2, frames: of });
    const bytes = new Uint8Array(head.length + body.length);
    bytes.set(head);
    bytes.set(body, head.length);
    return bytes;
  }
}
