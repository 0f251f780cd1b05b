import type { Ratio, Seconds } from "../base/index.ts";
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
  private isComplete = false;
  private isLeaving = false;

  /**
   * @param chain - where it plays
   * @param gain - linear gain of this sound
   * @param onFinished - called once when its last block has sounded
   */
  constructor(
    private readonly chain: OutputChain,
    private readonly gain: Ratio,
    private readonly onFinished: () => void,
  ) {
    const { tone, context, input } = chain;
    this.fader = new tone.Gain({ context, gain });
    this.fader.connect(input);
    const start = (context.currentTime + START_AHEAD_SECONDS) as Seconds;
    this.clock = new BlockClock(start, LIVE_SAMPLE_RATE as never);
  }

  /** When it begins to sound, context time. */
  get start(): Seconds {
    return this.clock.origin;
  }

  /** How many blocks came too late to join without a pause. */
  get lateBlocks(): number {
    return this.clock.lateBlocks;
  }

  /**
   * Schedules the next block.
   * @param from - its first frame within the sound
   * @param samples - the block
   */
  add(from: Frames, { left, right }: StereoSamples): void {
    if (this.isLeaving || left.length === 0) return;
    const { tone, context } = this.chain;
    const buffer = context.createBuffer(2, left.length, LIVE_SAMPLE_RATE);
    buffer.copyToChannel(left as Float32Array<ArrayBuffer>, 0);
    buffer.copyToChannel(right as Float32Array<ArrayBuffer>, 1);
    const source = context.createBufferSource();
    source.buffer = buffer;
    tone.connect(source, this.fader);
    source.onended = () => this.forget(source);
    this.sources.add(source);
    source.start(this.clock.timeOf(from, context.currentTime as Seconds));
  }

  /** Says that no more blocks come. */
  complete(): void {
    this.isComplete = true;
    this.finishIfDone();
  }

  /** Begins in the middle of a sound: rises from silence instead of stepping in. */
  fadeIn(): void {
    const curve = fadeInCurve().map((gain) => gain * this.gain);
    this.fader.gain.setValueCurveAtTime(curve, this.start, FADE_SECONDS);
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
