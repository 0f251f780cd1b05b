import { fail, ok } from "../base/index.ts";
import type { Hertz, Ratio, Result, Seconds } from "../base/index.ts";
import { plansInTurn } from "../audio/index.ts";
import type { RenderedBlock, SoundPlan, Turn } from "../audio/index.ts";
import type { WavFormat } from "./wav.ts";
import { WavStream } from "./wav-stream.ts";

/** Takes the bytes of a file in order; a promise says when it is ready for the next. */
export type ByteSink = (bytes: Uint8Array) => void | Promise<void>;

/**
 * Renders a plan block by block, wherever that is done: in the page's worker (`renderInto` of its
 * playback) or right here. True when it ran to its end, false when the signal stopped it.
 */
export type BlockRenderer = (
  plan: SoundPlan,
  onBlock: (block: RenderedBlock) => void,
  options: { readonly signal: AbortSignal },
) => Promise<Result<boolean>>;

/** How a WAV file is rendered and where it goes. */
export interface RenderWavOptions {
  readonly render: BlockRenderer;
  readonly sink: ByteSink;
  /** Sampling rate of what `render` gives. */
  readonly sampleRate: Hertz;
  /** 24 bits unless given. */
  readonly format?: WavFormat;
  /** Silence between two turns, 0.6 s unless given. */
  readonly gap?: Seconds;
  /** Hears the share done, 0 to 1. */
  readonly onProgress?: (share: Ratio) => void;
  /** Stops it. */
  readonly signal?: AbortSignal;
}

/**
 * Renders one voicing, or the kept ones in turn, into a WAV file that is handed out piece by piece
 * while it is made.
 * @param turns - plans in order, each with its level; one is a file of that voicing alone
 * @param options - renderer, where the bytes go, format, progress, stop signal
 * @returns true when the file is whole; false when it was stopped: then what the sink has is no
 *   file and is to be thrown away. Problems: "nothing-sounds", "file-not-written" (the sink failed)
 *   and those of the renderer
 */
export async function renderWav(
  turns: readonly Turn[],
  options: RenderWavOptions,
): Promise<Result<boolean>> {
  const plan = plansInTurn(turns, options.gap);
  if (plan.events.length === 0)
    return fail("nothing-sounds", "Nobody plays in this voicing, so there is nothing to write.");
  const { render, sink, sampleRate, format = "pcm24", onProgress, signal } = options;
  const stream = new WavStream({ sampleRate, format });
  const stop = new AbortController();
  const stopped = (): void => stop.abort();
  signal?.addEventListener("abort", stopped, { once: true });
  if (signal?.aborted) stop.abort();
  let fault: unknown;
  let writing = Promise.resolve();
  const write = async (bytes: Uint8Array, done: Ratio): Promise<void> => {
    if (fault !== undefined || signal?.aborted) return;
    try {
      await sink(bytes);
      onProgress?.(done);
    } catch (error) {
      fault = error ?? "no reason given";
      stop.abort();
    }
  };
  const rendered = await render(
    plan,
    (block) => {
      const bytes = stream.next(block);
      const done = (block.from + block.left.length) / block.of;
      writing = writing.then(() => write(bytes, done));
    },
    { signal: stop.signal },
  );
  await writing;
  signal?.removeEventListener("abort", stopped);
  if (fault !== undefined)
    return fail("file-not-written", `The file could not be written (${reasonOf(fault)}).`);
  if (!rendered.ok) return rendered;
  return ok(rendered.value && signal?.aborted !== true);
}

const reasonOf = (fault: unknown): string =>
  fault instanceof Error ? fault.message : String(fault);
