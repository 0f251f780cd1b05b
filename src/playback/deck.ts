import { quantity } from "../base/index.ts";
import type { Hertz, Ratio, Seconds } from "../base/index.ts";
import type { Frames, StereoSamples } from "../audio/index.ts";
import { BlockClock } from "./block-clock.ts";
import { FADE_SECONDS, fadeInCurve, fadeOutCurve } from "./fade.ts";
import type { OutputChain } from "./output-chain.ts";
import { LIVE_SAMPLE_RATE } from "./sound-context.ts";

/** Time between asking for a sound and its first frame. */
const START_AHEAD_SECONDS = 0.01;

/** One sound on its way to the loudspeakers, block after block, with a fader of its own. */
export class Deck {
  private readonly fader;
  private readonly sources = new Set<AudioBufferSourceNode>();
  private readonly clock: BlockClock;
  /** When the first frame that is heard begins, context time. */
  private begun: Seconds | undefined;
  private isComplete = false;
  private isLeaving = false;

  /**
   * @param chain - where it plays
   * @param gain - linear gain of this sound
   * @param onFinished - called once when its last block has sounded
   * @param zero - when its first frame would have sounded, context time: what lies before now is
   *   left out and the rest fades in; not given, it begins with its first frame, at once
   */
  constructor(
    private readonly chain: OutputChain,
    private readonly gain: Ratio,
    private readonly onFinished: () => void,
    private readonly zero?: Seconds,
  ) {
    const { tone, context, input } = chain;
    this.fader = new tone.Gain({ context, gain });
    this.fader.connect(input);
    this.clock = new BlockClock(zero ?? this.earliest, quantity<Hertz>(LIVE_SAMPLE_RATE));
  }

  /** When it begins to sound, context time. */
  get start(): Seconds {
    return this.begun ?? this.clock.origin;
  }

  /** When its first frame sounded or would have sounded, context time. */
  get origin(): Seconds {
    return this.clock.origin;
  }

  /** The frame of its sound that could be exchanged for another now. */
  get exchangeFrame(): Frames {
    return this.clock.frameAt(this.earliest);
  }

  /** Whether its last block has sounded, or it has given way. */
  get isOver(): boolean {
    return this.isLeaving;
  }

  /** How many blocks came too late to join without a pause. */
  get lateBlocks(): number {
    return this.clock.lateBlocks;
  }

  /**
   * Schedules the next block.
   * @param from - its first frame within the sound
   * @param samples - the block
   * @returns whether any of it will be heard
   */
  add(from: Frames, samples: StereoSamples): boolean {
    const over =
      this.zero !== undefined && this.begun === undefined ? this.exchangeFrame - from : 0;
    if (this.isLeaving || over >= samples.left.length) return false;
    const { left, right } = over > 0 ? withoutHead(samples, over) : samples;
    const { tone, context } = this.chain;
    const buffer = context.createBuffer(2, left.length, LIVE_SAMPLE_RATE);
    buffer.copyToChannel(left as Float32Array<ArrayBuffer>, 0);
    buffer.copyToChannel(right as Float32Array<ArrayBuffer>, 1);
    const source = context.createBufferSource();
    source.buffer = buffer;
    tone.connect(source, this.fader);
    source.onended = () => this.forget(source);
    this.sources.add(source);
    const time = this.clock.timeOf(from + Math.max(0, over), context.currentTime as Seconds);
    source.start(time);
    if (this.begun !== undefined) return true;
    this.begun = time;
    if (this.zero !== undefined) this.fadeIn();
    return true;
  }

  /** Says that no more blocks come. */
  complete(): void {
    this.isComplete = true;
    this.finishIfDone();
  }

  /**
   * Gives way: fades out, then stops and lets go of everything. It no longer counts as finished.
   * @param at - when, context time
   */
  leave(at: Seconds): void {
    if (this.isLeaving) return;
    this.isLeaving = true;
    const { context } = this.chain;
    const begin = Math.max(at, context.currentTime);
    this.fader.gain.cancelAndHoldAtTime(begin);
    const level = this.fader.gain.getValueAtTime(begin);
    this.fader.gain.setValueCurveAtTime(
      fadeOutCurve().map((gain) => gain * level),
      begin,
      FADE_SECONDS,
    );
    for (const source of this.sources) source.stop(begin + FADE_SECONDS);
    const wait = begin + 2 * FADE_SECONDS - context.currentTime;
    setTimeout(() => this.fader.dispose(), 1000 * wait);
  }

  /** In the middle of a sound it rises from silence instead of stepping in. */
  private fadeIn(): void {
    const curve = fadeInCurve().map((gain) => gain * this.gain);
    this.fader.gain.setValueCurveAtTime(curve, this.start, FADE_SECONDS);
  }

  private get earliest(): Seconds {
    return quantity<Seconds>(this.chain.context.currentTime + START_AHEAD_SECONDS);
  }

  private forget(source: AudioBufferSourceNode): void {
    this.sources.delete(source);
    source.disconnect();
    this.finishIfDone();
  }

  private finishIfDone(): void {
    if (!this.isComplete || this.isLeaving || this.sources.size > 0) return;
    this.isLeaving = true;
    this.fader.dispose();
    this.onFinished();
  }
}

const withoutHead = ({ left, right }: StereoSamples, frames: Frames): StereoSamples => ({
  left: left.subarray(frames),
  right: right.subarray(frames),
});
