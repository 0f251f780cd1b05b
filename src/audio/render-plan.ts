import type { Db, Hertz, Ratio } from "../base/index.ts";
import type { Frames, StereoSamples } from "./audio-units.ts";
import { TruePeakLimiter } from "./limiter.ts";
import type { NoteMaker } from "./note-maker.ts";
import type { SoundPlan } from "./sound-plan-types.ts";
import { StageMixer } from "./stage-mixer.ts";

/** Frames of a block: 100 ms at 48 kHz. */
export const BLOCK_FRAMES: Frames = 4800;

/** Choices of a render. */
export interface RenderOptions {
  /** Makes and keeps the notes; share one between renders to profit from its cache. */
  readonly maker: NoteMaker;
  /** Level change of everything before the limiter, 0 dB unless given. */
  readonly gain?: Db;
  /** Leaves the room out: the players' direct sound only. */
  readonly isDry?: boolean;
  /** False leaves the limiter out; for measuring. */
  readonly isLimited?: boolean;
  /**
   * First frame that is wanted, 0 unless given. What lies before is computed all the same, so that
   * the rest is just what it would have been, but not given out.
   */
  readonly from?: Frames;
}

/** A stretch of rendered sound. */
export interface RenderedBlock extends StereoSamples {
  /** Place of its first frame in the whole. */
  readonly from: Frames;
  /** Frames of the whole. */
  readonly of: Frames;
}

/** A whole render. */
export interface RenderedSound extends StereoSamples {
  readonly sampleRate: Hertz;
  /** False when it was stopped early; what is there ends where it was stopped. */
  readonly isWhole: boolean;
}

/**
 * Renders a plan block by block, so that the first can sound while the rest is computed.
 * @param plan - what sounds when
 * @param options - note maker, level, room, limiter, first frame wanted
 * @returns blocks in order, without gaps; the last is shorter, and so is the first when it begins
 *   in the middle
 */
export function* renderBlocks(
  plan: SoundPlan,
  options: RenderOptions,
): Generator<RenderedBlock, void, void> {
  const { maker, gain = 0 as Db, isDry = false, isLimited = true, from: wanted = 0 } = options;
  const mixer = new StageMixer(plan, maker, { gain, isDry });
  const limiter = isLimited ? new TruePeakLimiter(maker.sampleRate) : undefined;
  const latency = limiter?.latency ?? 0;
  for (let from = 0; from < mixer.frames;) {
    const frames = Math.min(BLOCK_FRAMES, mixer.frames - from);
    // The first block reads ahead by what the limiter holds back, so that all blocks are full.
    const mixed = from === 0 ? frames + latency : frames;
    const left = new Float32Array(mixed);
    const right = new Float32Array(mixed);
    mixer.render(left, right);
    limiter?.process(left, right);
    const skip = mixed - frames;
    if (from + frames > wanted) {
      const cut = skip + Math.max(0, wanted - from);
      const at = from + cut - skip;
      yield { from: at, of: mixer.frames, left: left.subarray(cut), right: right.subarray(cut) };
    }
    from += frames;
  }
}

/**
 * Renders a plan as a whole.
 * @param plan - what sounds when
 * @param options - as for `renderBlocks`, and: `onProgress` hears the share done, 0 to 1, after
 * every block; `shouldStop` is asked before every block
 * @returns two channels at the maker's sampling rate; empty when nobody sounds
 * @example renderPlan(plan, { maker: new NoteMaker() })
 */
export function renderPlan(
  plan: SoundPlan,
  options: Omit<RenderOptions, "from"> & {
    readonly onProgress?: (share: Ratio) => void;
    readonly shouldStop?: () => boolean;
  },
): RenderedSound {
  const blocks: RenderedBlock[] = [];
  let isWhole = true;
  for (const block of renderBlocks(plan, options)) {
    blocks.push(block);
    const done = block.from + block.left.length;
    options.onProgress?.(done / block.of);
    if (done < block.of && options.shouldStop?.()) {
      isWhole = false;
      break;
    }
  }
  const { sampleRate } = options.maker;
  return { ...joined(blocks), sampleRate, isWhole };
}

function joined(blocks: readonly RenderedBlock[]): StereoSamples {
  const frames = blocks.reduce((sum, { left }) => sum + left.length, 0);
  const left = new Float32Array(frames);
  const right = new Float32Array(frames);
  for (const block of blocks) {
    left.set(block.left, block.from);
    right.set(block.right, block.from);
  }
  return { left, right };
}
