import { fail, ok, quantity } from "../base/index.ts";
import type { Db, DbFs, Gain, Result, Seconds } from "../base/index.ts";
import { dbToGain } from "../audio/index.ts";
import type { SoundPlan } from "../audio/index.ts";
import { Deck } from "./deck.ts";
import { openOutput } from "./output-chain.ts";
import type { OutputChain } from "./output-chain.ts";
import type { EndReason, PlayOptions, Playback, Sound } from "./playback-types.ts";
import { RenderClient } from "./render-client.ts";
import type { RenderJob, RenderPort } from "./render-client.ts";
import { openContext, startContext } from "./sound-context.ts";
import { loadTone } from "./tone-door.ts";
import { WARM_UP_PLAN } from "./warm-up-plan.ts";

/** Moderate to begin with: a user with loud headphones has time to turn down. */
export const START_VOLUME_DB: Db = -12 as Db;

/**
 * Makes the page's player. Nothing is opened or loaded before the first sound is asked for.
 * @returns the player
 */
export function createPlayback(): Playback {
  return new LivePlayback();
}

class LivePlayback implements Playback {
  private native: AudioContext | undefined;
  private opening: Promise<OutputChain> | undefined;
  private chain: OutputChain | undefined;
  private client: RenderClient | undefined;
  private volume: Gain = dbToGain(START_VOLUME_DB);
  private deck: Deck | undefined;
  private job: RenderJob | undefined;
  /** Counts plays and stops, so that one overtaken by another gives up quietly. */
  private turn = 0;
  private isStarting = false;
  /** Exchanges on their way: what they take the place of counts as sounding although it is over. */
  private exchanges = 0;
  private readonly listeners = new Set<(reason: EndReason) => void>();

  async play(sound: Sound, options: PlayOptions = {}): Promise<Result<void>> {
    const turn = ++this.turn;
    this.isStarting = true;
    this.job?.cancel();
    const opened = await this.open();
    if (turn !== this.turn) return ok(undefined);
    const started = opened.ok ? await this.start(opened.value, sound, options) : opened;
    if (turn === this.turn) this.isStarting = false;
    return started;
  }

  async swap(sound: Sound, options: Pick<PlayOptions, "gain"> = {}): Promise<Result<Seconds>> {
    const old = this.deck;
    if (!old || !this.chain) {
      const played = await this.play(sound, options);
      return played.ok ? ok(quantity<Seconds>(0)) : played;
    }
    this.turn++;
    // A play that has not begun to sound gives way.
    if (this.isStarting) this.job?.cancel();
    this.isStarting = false;
    const { gain = quantity<Db>(0) } = options;
    if (sound.kind === "plan") return this.swapPlan(this.chain, old, sound.plan, gain);
    const deck = this.newDeck(this.chain, dbToGain(gain), old.origin);
    const isHeard = deck.add(0, sound.samples);
    this.job?.cancel();
    this.replace(isHeard ? deck : undefined, isHeard ? "replaced" : "finished");
    deck.complete();
    return ok(placeOf(deck, old));
  }

  stop(): void {
    this.turn++;
    this.isStarting = false;
    this.job?.cancel();
    this.job = undefined;
    this.replace(undefined, "stopped");
  }

  level(): DbFs {
    return this.chain?.level() ?? (-Infinity as DbFs);
  }

  isSounding(): boolean {
    return this.isStarting || this.deck !== undefined;
  }

  position(): Seconds | undefined {
    const { deck, chain, native } = this;
    if (!deck || !chain) return undefined;
    // What is heard now left the context a little earlier.
    const latency = native?.outputLatency ?? 0;
    return quantity<Seconds>(chain.context.currentTime - latency - deck.origin);
  }

  onEnd(listener: (reason: EndReason) => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  setVolume(volume: Db): void {
    if (!(volume <= 0)) throw new RangeError(`volume must be 0 dB or below, got ${volume}`);
    this.volume = dbToGain(volume);
    this.chain?.setVolume(this.volume);
  }

  warmUp(): void {
    void this.renderer().measure(WARM_UP_PLAN);
    void loadTone().catch(() => undefined);
  }

  measure(plan: SoundPlan): ReturnType<Playback["measure"]> {
    return this.renderer().measure(plan);
  }

  renderInto(...asked: Parameters<Playback["renderInto"]>): ReturnType<Playback["renderInto"]> {
    return this.renderer().renderInto(...asked);
  }

  render(
    plan: SoundPlan,
    options: Parameters<Playback["render"]>[1] = {},
  ): ReturnType<Playback["render"]> {
    return this.renderer().renderWhole(plan, options);
  }

  dispose(): void {
    this.stop();
    this.client?.dispose();
    this.client = undefined;
    this.chain?.dispose();
    void this.native?.close().catch(() => undefined);
    this.native = undefined;
    this.opening = undefined;
    this.chain = undefined;
  }

  /** Opens and starts the output; everything up to the first wait runs within the gesture. */
  private async open(): Promise<Result<OutputChain>> {
    try {
      this.native ??= openContext();
      const starting = startContext(this.native);
      this.opening ??= openOutput(this.native, this.volume);
      const started = await starting;
      if (!started.ok) return started;
      this.chain = await this.opening;
      return ok(this.chain);
    } catch {
      this.opening = undefined;
      return fail(
        "sound-unavailable",
        "There is no audio output here: connect one, then play again.",
      );
    }
  }

  private start(chain: OutputChain, sound: Sound, options: PlayOptions): Promise<Result<void>> {
    return sound.kind === "plan"
      ? this.startPlan(chain, sound.plan, options.gain ?? (0 as Db))
      : Promise.resolve(this.startSamples(chain, sound, options));
  }

  private startSamples(
    chain: OutputChain,
    { samples }: Extract<Sound, { readonly kind: "samples" }>,
    { gain = 0 as Db, from = 0 as Seconds }: PlayOptions,
  ): Result<void> {
    const zero = from > 0 ? quantity<Seconds>(chain.context.currentTime - from) : undefined;
    const deck = this.newDeck(chain, dbToGain(gain), zero);
    deck.add(0, samples);
    this.replace(deck, "replaced");
    deck.complete();
    return ok(undefined);
  }

  private startPlan(chain: OutputChain, plan: SoundPlan, gain: Db): Promise<Result<void>> {
    return new Promise((resolve) => {
      let deck: Deck | undefined;
      const job = this.renderer().render(plan, gain, ({ from, left, right }) => {
        const isFirst = deck === undefined;
        // The level was matched before the limiter, so the fader stands at 1.
        deck ??= this.newDeck(chain, 1 as Gain);
        deck.add(from, { left, right });
        if (!isFirst) return;
        this.replace(deck, "replaced");
        resolve(ok(undefined));
      });
      this.job = job;
      void job.done.then((result) => {
        deck?.complete();
        resolve(result.ok ? ok(undefined) : result);
      });
    });
  }

  /** The old sound, and the making of the rest of it, go on until the new one can take over. */
  private swapPlan(
    chain: OutputChain,
    old: Deck,
    plan: SoundPlan,
    gain: Db,
  ): Promise<Result<Seconds>> {
    const { turn, job: oldJob } = this;
    const isOvertaken = (): boolean => turn !== this.turn || this.deck !== old;
    this.exchanges++;
    return new Promise((resolve) => {
      let deck: Deck | undefined;
      let isHeard = false;
      const job = this.renderer().render(
        plan,
        gain,
        (block) => {
          if (!isHeard && isOvertaken()) return job.cancel();
          deck ??= this.newDeck(chain, quantity<Gain>(1), old.origin);
          if (!deck.add(block.from, block) || isHeard) return;
          isHeard = true;
          oldJob?.cancel();
          this.replace(deck, "replaced");
          this.endExchange();
          resolve(ok(placeOf(deck, old)));
        },
        old.exchangeFrame,
      );
      this.job = { done: job.done, cancel: () => [oldJob, job].forEach((each) => each?.cancel()) };
      void job.done.then((result) => {
        if (isHeard) return deck?.complete();
        // The new sound is over where the old one stands.
        if (result.ok && result.value && !isOvertaken()) {
          oldJob?.cancel();
          this.replace(undefined, "finished");
        }
        this.endExchange();
        resolve(result.ok ? ok(quantity<Seconds>(0)) : result);
      });
    });
  }

  /** The last exchange has come or failed: what was over before is over now. */
  private endExchange(): void {
    this.exchanges--;
    if (this.exchanges > 0 || this.deck?.isOver !== true) return;
    this.deck = undefined;
    this.tell("finished");
  }

  private newDeck(chain: OutputChain, gain: Gain, zero?: Seconds): Deck {
    const deck: Deck = new Deck(
      chain,
      gain,
      () => {
        if (this.deck !== deck || this.exchanges > 0) return;
        this.deck = undefined;
        this.tell("finished");
      },
      zero,
    );
    return deck;
  }

  /** Puts a deck in the place of what sounds: the old one gives way just as the new one begins. */
  private replace(deck: Deck | undefined, reason: EndReason): void {
    const old = this.deck;
    this.deck = deck;
    if (!old) return;
    old.leave(deck?.start ?? (0 as Seconds));
    this.tell(reason);
  }

  private tell(reason: EndReason): void {
    for (const listener of [...this.listeners]) listener(reason);
  }

  private renderer(): RenderClient {
    this.client ??= new RenderClient(
      new Worker(new URL("./render-worker.ts", import.meta.url), {
        type: "module",
      }) as unknown as RenderPort,
    );
    return this.client;
  }
}

/** Where in its sound a deck took over from another. */
const placeOf = (deck: Deck, old: Deck): Seconds => quantity<Seconds>(deck.start - old.origin);
