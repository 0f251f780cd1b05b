import { describe, expect, it } from "vitest";
import { ok } from "../../src/base/index.ts";
import type { Db, Hertz, Seconds } from "../../src/base/index.ts";
import {
  NoteMaker,
  planVoicing,
  plansInTurn,
  renderBlocks,
  renderPlan,
} from "../../src/audio/index.ts";
import type { Turn } from "../../src/audio/index.ts";
import { encodeWav, renderWav } from "../../src/files/index.ts";
import type { BlockRenderer, ByteSink, WavFormat } from "../../src/files/index.ts";
import { WavStream } from "../../src/files/wav-stream.ts";
import { fiveHorns, voicingOf } from "../audio/support/band.ts";

const sampleRate = 48000 as Hertz;
const maker = new NoteMaker();
const planOf = (voicing = fiveHorns) =>
  planVoicing(voicing, { dynamic: "mf", manner: "sustained", seconds: 0.6 as Seconds });
const kept: readonly Turn[] = [
  { plan: planOf() },
  { plan: planOf(voicingOf({ tpt1: 70, bari: 50 })), gain: -4 as Db },
];

/** Renders here, and lets others have their turn after every block, as a worker does. */
const render: BlockRenderer = async (plan, onBlock, { signal }) => {
  for (const block of renderBlocks(plan, { maker })) {
    if (signal.aborted) return ok(false);
    onBlock(block);
    await new Promise((resolve) => setTimeout(resolve));
  }
  return ok(true);
};

/** A sink that keeps all it gets. */
function pile(): { readonly sink: ByteSink; readonly pieces: Uint8Array[]; whole(): Uint8Array } {
  const pieces: Uint8Array[] = [];
  return {
    pieces,
    sink: (bytes) => void pieces.push(bytes),
    whole: () => Buffer.concat(pieces),
  };
}

const isSame = (a: Uint8Array, b: Uint8Array): boolean => Buffer.compare(a, b) === 0;

describe("a WAV file that is rendered piece by piece", () => {
  it.each(["pcm16", "pcm24"] as const)(
    "in %s is, for the kept voicings in turn, the file made at once",
    async (format: WavFormat) => {
      const { sink, pieces, whole } = pile();
      expect(await renderWav(kept, { render, sink, sampleRate, format })).toEqual(ok(true));
      const { left, right } = renderPlan(plansInTurn(kept), { maker });
      expect(pieces.length).toBeGreaterThan(10);
      expect(isSame(whole(), encodeWav([left, right], { sampleRate, format }))).toBe(true);
    },
  );

  it("holds the gap asked for", async () => {
    const length = async (gap: number): Promise<number> => {
      const { sink, whole } = pile();
      await renderWav(kept, { render, sink, sampleRate, format: "pcm16", gap: gap as Seconds });
      return whole().length;
    };
    const longer = (await length(1)) - (await length(0.5));
    expect(longer / (4 * sampleRate)).toBeCloseTo(0.5, 3);
  });

  it("says how far it is, and waits for a slow sink without mixing up the order", async () => {
    const shares: number[] = [];
    const { sink, whole } = pile();
    const slow: ByteSink = async (bytes) => {
      await new Promise((resolve) => setTimeout(resolve, bytes.length % 3));
      await sink(bytes);
    };
    const one = [{ plan: planOf() }];
    await renderWav(one, {
      render,
      sink: slow,
      sampleRate,
      onProgress: (share) => shares.push(share),
    });
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    expect(shares.at(-1)).toBe(1);
    const { left, right } = renderPlan(planOf(), { maker });
    expect(isSame(whole(), encodeWav([left, right], { sampleRate }))).toBe(true);
  });

  it("stops when it is told to, and says that the file is not whole", async () => {
    const { sink, pieces } = pile();
    const control = new AbortController();
    const onProgress = (share: number): void => {
      if (share > 0.3) control.abort();
    };
    const done = await renderWav(kept, {
      render,
      sink,
      sampleRate,
      onProgress,
      signal: control.signal,
    });
    expect(done).toEqual(ok(false));
    const blocks = [...renderBlocks(plansInTurn(kept), { maker })].length;
    expect(pieces.length).toBeLessThan(0.6 * blocks);
    const before = await renderWav(kept, { render, sink, sampleRate, signal: control.signal });
    expect(before).toEqual(ok(false));
  });

  it("tells when it cannot be written, and stops rendering", async () => {
    let blocks = 0;
    const counted: BlockRenderer = (plan, onBlock, options) =>
      render(plan, (block) => ((blocks += 1), onBlock(block)), options);
    const sink: ByteSink = () => Promise.reject(new Error("the disk is full"));
    const done = await renderWav(kept, { render: counted, sink, sampleRate });
    expect(!done.ok && done.problem.code).toBe("file-not-written");
    expect(!done.ok && done.problem.message).toContain("the disk is full");
    expect(blocks).toBeLessThan(5);
  });

  it("passes on what the renderer says, and refuses to write a file of nobody", async () => {
    const { sink, pieces } = pile();
    const failing: BlockRenderer = () =>
      Promise.resolve({ ok: false, problem: { code: "render-failed", message: "No." } });
    const done = await renderWav(kept, { render: failing, sink, sampleRate });
    expect(!done.ok && done.problem.code).toBe("render-failed");
    const nobody = await renderWav([], { render, sink, sampleRate });
    expect(!nobody.ok && nobody.problem.code).toBe("nothing-sounds");
    expect(pieces).toEqual([]);
  });
});

describe("a stream of WAV bytes", () => {
  it("writes the head before the first block only", () => {
    const stream = new WavStream({ sampleRate, format: "pcm16" });
    const block = { of: 4, left: Float32Array.of(0, 0), right: Float32Array.of(0, 0) };
    const first = stream.next({ ...block, from: 0 });
    expect(String.fromCharCode(...first.subarray(0, 4))).toBe("RIFF");
    // 44 bytes of head (RIFF 12, fmt 24, data 8) and four samples of two bytes.
    expect(first).toHaveLength(44 + 8);
    expect(stream.next({ ...block, from: 2 })).toHaveLength(8);
  });
});
