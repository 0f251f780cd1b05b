import type { Db } from "../base/index.ts";
import { LoudnessMeter, NoteMaker, renderBlocks } from "../audio/index.ts";
import type { Frames, RenderedBlock, SoundPlan } from "../audio/index.ts";
import type { RenderReply, RenderRequest } from "./render-messages-types.ts";

/** Blocks that follow the first are posted so many at a time. */
const BLOCKS_A_POST = 5;

const maker = new NoteMaker();
const cancelled = new Set<number>();

/** Lets waiting messages in, such as a cancel, without the delay that a timer has. */
function otherMessages(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });
}

function post(reply: RenderReply, buffers: Transferable[] = []): void {
  self.postMessage(reply, { transfer: buffers });
}

function postBlocks(id: number, blocks: readonly RenderedBlock[]): void {
  const first = blocks[0];
  if (!first) return;
  const frames = blocks.reduce((sum, { left }) => sum + left.length, 0);
  const left = new Float32Array(frames);
  const right = new Float32Array(frames);
  for (const block of blocks) {
    left.set(block.left, block.from - first.from);
    right.set(block.right, block.from - first.from);
  }
  const { from, of } = first;
  post({ kind: "block", id, from, of, left, right }, [left.buffer, right.buffer]);
}

async function render(id: number, plan: SoundPlan, gain: Db, from: Frames): Promise<void> {
  let waiting: RenderedBlock[] = [];
  let isFirst = true;
  for (const block of renderBlocks(plan, { maker, gain, from })) {
    waiting.push(block);
    if (!isFirst && waiting.length < BLOCKS_A_POST) continue;
    postBlocks(id, waiting);
    waiting = [];
    isFirst = false;
    await otherMessages();
    if (cancelled.has(id)) break;
  }
  const isWhole = !cancelled.delete(id);
  if (isWhole) postBlocks(id, waiting);
  post({ kind: "done", id, isWhole });
}

/** Loudness before the limiter, so that what is matched is the playing, not the limiting. */
async function measure(id: number, plan: SoundPlan): Promise<void> {
  const meter = new LoudnessMeter(maker.sampleRate, 2);
  for (const { from, left, right } of renderBlocks(plan, { maker, isLimited: false })) {
    meter.push([left, right]);
    if (from % (BLOCKS_A_POST * left.length) === 0) await otherMessages();
    if (cancelled.delete(id)) {
      post({ kind: "done", id, isWhole: false });
      return;
    }
  }
  post({ kind: "loudness", id, loudness: meter.integrated() });
}

self.onmessage = ({ data }: MessageEvent<RenderRequest>): void => {
  const { id } = data;
  if (data.kind === "cancel") {
    cancelled.add(id);
    return;
  }
  const work =
    data.kind === "render" ? render(id, data.plan, data.gain, data.from) : measure(id, data.plan);
  work.catch((error: unknown) => {
    const message = error instanceof Error ? error.message : String(error);
    post({ kind: "failed", id, message });
  });
};
