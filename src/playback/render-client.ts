import { fail, ok } from "../base/index.ts";
import type { Db, Ratio, Result } from "../base/index.ts";
import type { Frames, Lufs, RenderedBlock, RenderedSound, SoundPlan } from "../audio/index.ts";
import type { RenderReply, RenderRequest } from "./render-messages-types.ts";

/** The stretch of sound that a worker has just finished. */
export type BlockReply = Extract<RenderReply, { readonly kind: "block" }>;

/** Anything that takes requests and gives replies as a worker does. */
export interface RenderPort {
  postMessage(request: RenderRequest): void;
  onmessage: ((event: { readonly data: RenderReply }) => void) | null;
  terminate(): void;
}

/** A render on its way. */
export interface RenderJob {
  /** True when it ran to its end, false when it was cancelled. */
  readonly done: Promise<Result<boolean>>;
  cancel(): void;
}

/** Sampling rate of what the worker renders. */
const WORKER_SAMPLE_RATE = 48000 as RenderedSound["sampleRate"];

/** Loudnesses kept; when there are more, all are forgotten. */
const MOST_LOUDNESSES = 500;

interface Waiting {
  readonly hear: (reply: RenderReply) => void;
}

/** Talks to the render worker: several requests may be on their way at once. */
export class RenderClient {
  private readonly waiting = new Map<number, Waiting>();
  private readonly loudness = new Map<string, Promise<Result<Lufs>>>();
  private lastId = 0;

  /** @param port - the worker */
  constructor(private readonly port: RenderPort) {
    port.onmessage = ({ data }) => this.waiting.get(data.id)?.hear(data);
  }

  /**
   * Renders a plan block by block.
   * @param plan - what sounds when
   * @param gain - level change before the limiter
   * @param onBlock - hears every block in order
   * @param from - first frame wanted, 0 unless given
   * @returns the job
   */
  render(
    plan: SoundPlan,
    gain: Db,
    onBlock: (block: BlockReply) => void,
    from: Frames = 0,
  ): RenderJob {
    const id = ++this.lastId;
    let isCancelled = false;
    const done = new Promise<Result<boolean>>((resolve) => {
      this.expect(id, (reply) => {
        if (reply.kind === "block" && !isCancelled) onBlock(reply);
        if (reply.kind === "done") resolve(ok(reply.isWhole));
        if (reply.kind === "failed") resolve(failed(reply.message));
        return reply.kind === "block";
      });
    });
    this.port.postMessage({ kind: "render", id, plan, gain, from });
    return {
      done,
      cancel: () => {
        if (isCancelled || !this.waiting.has(id)) return;
        isCancelled = true;
        this.port.postMessage({ kind: "cancel", id });
      },
    };
  }

  /**
   * Renders a plan block by block until a signal stops it, for a file.
   * @param plan - what sounds when
   * @param onBlock - hears every block in order
   * @param options - `gain` before the limiter, 0 dB unless given; `signal` stops it
   * @returns true when it ran to its end, false when it was stopped; or the problem "render-failed"
   */
  async renderInto(
    plan: SoundPlan,
    onBlock: (block: RenderedBlock) => void,
    options: { readonly gain?: Db; readonly signal?: AbortSignal } = {},
  ): Promise<Result<boolean>> {
    const { gain = 0 as Db, signal } = options;
    const job = this.render(plan, gain, onBlock);
    signal?.addEventListener("abort", job.cancel, { once: true });
    if (signal?.aborted) job.cancel();
    const result = await job.done;
    signal?.removeEventListener("abort", job.cancel);
    return result;
  }

  /**
   * Renders a plan as a whole.
   * @param plan - what sounds when
   * @param options - as of `renderInto`, and `onProgress` hears the share done, 0 to 1
   * @returns the sound, `isWhole` false when it was stopped; or the problem "render-failed"
   */
  async renderWhole(
    plan: SoundPlan,
    options: {
      readonly gain?: Db;
      readonly onProgress?: (share: Ratio) => void;
      readonly signal?: AbortSignal;
    } = {},
  ): Promise<Result<RenderedSound>> {
    const blocks: RenderedBlock[] = [];
    const hear = (block: RenderedBlock): void => {
      blocks.push(block);
      options.onProgress?.((block.from + block.left.length) / block.of);
    };
    const result = await this.renderInto(plan, hear, options);
    if (!result.ok) return result;
    return ok({ ...joined(blocks), sampleRate: WORKER_SAMPLE_RATE, isWhole: result.value });
  }

  /**
   * Integrated loudness of a plan as played; measured once, then remembered.
   * @param plan - for level-matching, the three-second sustained one
   * @returns LUFS before the limiter; or the problem "render-failed"
   */
  measure(plan: SoundPlan): Promise<Result<Lufs>> {
    const key = JSON.stringify(plan);
    const known = this.loudness.get(key);
    if (known) return known;
    const measured = this.measureAnew(plan);
    if (this.loudness.size >= MOST_LOUDNESSES) this.loudness.clear();
    this.loudness.set(key, measured);
    void measured.then(({ ok: isMeasured }) => isMeasured || this.loudness.delete(key));
    return measured;
  }

  private measureAnew(plan: SoundPlan): Promise<Result<Lufs>> {
    const id = ++this.lastId;
    return new Promise((resolve) => {
      this.expect(id, (reply) => {
        if (reply.kind === "loudness") resolve(ok(reply.loudness));
        if (reply.kind === "failed") resolve(failed(reply.message));
        if (reply.kind === "done") resolve(failed("it was stopped"));
        return false;
      });
      this.port.postMessage({ kind: "measure", id, plan });
    });
  }

  /** Ends the worker; what was on its way is cancelled. */
  dispose(): void {
    this.port.terminate();
    for (const [id, { hear }] of [...this.waiting]) hear({ kind: "done", id, isWhole: false });
    this.waiting.clear();
  }

  /** Hears the replies to a request until `hear` says that nothing more will come. */
  private expect(id: number, hear: (reply: RenderReply) => boolean): void {
    this.waiting.set(id, {
      hear: (reply) => {
        if (!hear(reply)) this.waiting.delete(id);
      },
    });
  }
}

function failed(detail: string): ReturnType<typeof fail> {
  return fail("render-failed", `This sound could not be computed: ${detail}.`);
}

function joined(blocks: readonly RenderedBlock[]): Pick<RenderedSound, "left" | "right"> {
  const frames = blocks.reduce((sum, { left }) => sum + left.length, 0);
  const left = new Float32Array(frames);
  const right = new Float32Array(frames);
  for (const block of blocks) {
    left.set(block.left, block.from);
    right.set(block.right, block.from);
  }
  return { left, right };
}
