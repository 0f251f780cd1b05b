import type { Db, DbFs, Ratio, Result, Seconds } from "../base/index.ts";
import type {
  Lufs,
  RenderedBlock,
  RenderedSound,
  SoundPlan,
  StereoSamples,
} from "../audio/index.ts";

/** What can be played: a plan, rendered while it sounds, or samples at 48 kHz. */
export type Sound =
  | { readonly kind: "plan"; readonly plan: SoundPlan }
  | { readonly kind: "samples"; readonly samples: StereoSamples };

/** Choices of one play. */
export interface PlayOptions {
  /** Level change of this sound, for level-matching; 0 dB unless given. */
  readonly gain?: Db;
  /** Where in the samples to begin; a plan always begins at its start. */
  readonly from?: Seconds;
}

/** Why a sound is no longer heard. */
export type EndReason = "finished" | "stopped" | "replaced";

/** The one player of the page. */
export interface Playback {
  /**
   * Sounds something in place of what sounds now. Call it from the handler of a click or a key.
   * @param sound - a plan or samples
   * @param options - level and starting point
   * @returns once its first 100 ms are scheduled; problems "sound-blocked" (the browser waits for a
   * gesture), "sound-unavailable" (no audio output) and "render-failed"
   */
  play(sound: Sound, options?: PlayOptions): Promise<Result<void>>;
  /**
   * Exchanges what sounds for something else without a seam: the new sound begins where the old
   * one stands, and the two cross within 20 ms. Made for turning level-matching on and off, or for
   * comparing two voicings, while they sound. When nothing sounds it is `play`.
   * @param sound - a plan or samples
   * @param options - level of the new sound
   * @returns once the exchange is scheduled: the place in the sound where it happens, 0 for a new
   *   start; problems as of `play`, with the old sound going on
   */
  swap(sound: Sound, options?: Pick<PlayOptions, "gain">): Promise<Result<Seconds>>;
  /** Silence within 20 ms, whatever is going on. */
  stop(): void;
  /** Peak at the output, dB re full scale; minus infinity in silence. */
  level(): DbFs;
  /** True from `play` until the last frame has sounded. */
  isSounding(): boolean;
  /**
   * The place in the sound that is heard now, by the output's own clock.
   * @returns seconds from its start, below 0 until it is heard; undefined in silence
   */
  position(): Seconds | undefined;
  /**
   * Hears every end.
   * @param listener - is told why
   * @returns stops listening
   */
  onEnd(listener: (reason: EndReason) => void): () => void;
  /**
   * Volume of everything.
   * @param volume - 0 dB or below; minus infinity is silence
   */
  setVolume(volume: Db): void;
  /** Loads everything that the first sound needs, so that it starts at once; needs no gesture. */
  warmUp(): void;
  /** Integrated loudness of a plan as played, before the limiter, for level-matching. */
  measure(plan: SoundPlan): Promise<Result<Lufs>>;
  /**
   * Renders a plan block by block, faster than it sounds, for a file.
   * @param plan - what sounds when
   * @param onBlock - hears every block in order, at 48 kHz
   * @param options - level; a signal that stops it
   * @returns true when it ran to its end, false when it was stopped; problem "render-failed"
   */
  renderInto(
    plan: SoundPlan,
    onBlock: (block: RenderedBlock) => void,
    options?: { readonly gain?: Db; readonly signal?: AbortSignal },
  ): Promise<Result<boolean>>;
  /** The same as one whole recording. */
  render(
    plan: SoundPlan,
    options?: {
      readonly gain?: Db;
      readonly onProgress?: (share: Ratio) => void;
      readonly signal?: AbortSignal;
    },
  ): Promise<Result<RenderedSound>>;
  /** Lets go of the audio output and of the worker. */
  dispose(): void;
}
