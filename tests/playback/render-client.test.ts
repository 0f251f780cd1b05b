import { describe, expect, it } from "vitest";
import type { Db } from "../../src/base/index.ts";
import type { Lufs, SoundPlan } from "../../src/audio/index.ts";
import { RenderClient } from "../../src/playback/render-client.ts";
import type { RenderPort } from "../../src/playback/render-client.ts";
import type { RenderReply, RenderRequest } from "../../src/playback/render-messages-types.ts";

const plan: SoundPlan = { events: [], seats: [], seed: 1 };

/** A worker that keeps what it is asked and says what it is told to. */
class FakePort implements RenderPort {
  onmessage: RenderPort["onmessage"] = null;
  readonly requests: RenderRequest[] = [];
  isTerminated = false;
  postMessage(request: RenderRequest): void {
    this.requests.push(request);
  }
  terminate(): void {
    this.isTerminated = true;
  }
  say(reply: RenderReply): void {
    this.onmessage?.({ data: reply });
  }
  block(id: number, from: number, of: number): void {
    const samples = Float32Array.from({ length: 4 }, (_, i) => from + i);
    this.say({ kind: "block", id, from, of, left: samples, right: samples });
  }
}

describe("the render client", () => {
  it("keeps the replies of several requests apart", async () => {
    const port = new FakePort();
    const client = new RenderClient(port);
    const heard: number[][] = [[], []];
    const first = client.render(plan, 0 as Db, ({ from }) => heard[0]!.push(from));
    const second = client.render(plan, 0 as Db, ({ from }) => heard[1]!.push(from));
    port.block(2, 0, 8);
    port.block(1, 0, 4);
    port.block(2, 4, 8);
    port.say({ kind: "done", id: 1, isWhole: true });
    port.say({ kind: "done", id: 2, isWhole: true });
    expect(await first.done).toEqual({ ok: true, value: true });
    expect(await second.done).toEqual({ ok: true, value: true });
    expect(heard).toEqual([[0], [0, 4]]);
  });

  it("hears no block after a cancel, and asks for it once", async () => {
    const port = new FakePort();
    const heard: number[] = [];
    const job = new RenderClient(port).render(plan, 0 as Db, ({ from }) => heard.push(from));
    job.cancel();
    job.cancel();
    port.block(1, 0, 4);
    port.say({ kind: "done", id: 1, isWhole: false });
    expect(await job.done).toEqual({ ok: true, value: false });
    expect(heard).toEqual([]);
    expect(port.requests.filter(({ kind }) => kind === "cancel")).toHaveLength(1);
  });

  it("asks for the rest of a sound only, when told so", () => {
    const port = new FakePort();
    const client = new RenderClient(port);
    client.render(plan, -3 as Db, () => undefined, 9600);
    client.render(plan, -3 as Db, () => undefined);
    expect(port.requests).toMatchObject([{ from: 9600, gain: -3 }, { from: 0 }]);
  });

  it("joins a whole render and says how far it is", async () => {
    const port = new FakePort();
    const shares: number[] = [];
    const whole = new RenderClient(port).renderWhole(plan, { onProgress: (s) => shares.push(s) });
    port.block(1, 0, 8);
    port.block(1, 4, 8);
    port.say({ kind: "done", id: 1, isWhole: true });
    const result = await whole;
    expect(result.ok && [...result.value.left]).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(result.ok && result.value.isWhole).toBe(true);
    expect(shares).toEqual([0.5, 1]);
  });

  it("stops a whole render by its signal", async () => {
    const port = new FakePort();
    const control = new AbortController();
    const whole = new RenderClient(port).renderWhole(plan, { signal: control.signal });
    control.abort();
    expect(port.requests.map(({ kind }) => kind)).toEqual(["render", "cancel"]);
    port.say({ kind: "done", id: 1, isWhole: false });
    const result = await whole;
    expect(result.ok && result.value.isWhole).toBe(false);
  });

  it("passes on loudness, and failures as a problem", async () => {
    const port = new FakePort();
    const client = new RenderClient(port);
    const loudness = client.measure(plan);
    port.say({ kind: "loudness", id: 1, loudness: -23 as Lufs });
    expect(await loudness).toEqual({ ok: true, value: -23 });
    const failing = client.render(plan, 0 as Db, () => undefined);
    port.say({ kind: "failed", id: 2, message: "no such instrument" });
    const result = await failing.done;
    expect(!result.ok && result.problem.code).toBe("render-failed");
    expect(!result.ok && result.problem.message).toContain("no such instrument");
  });

  it("measures the loudness of a plan once", async () => {
    const port = new FakePort();
    const client = new RenderClient(port);
    const first = client.measure(plan);
    port.say({ kind: "loudness", id: 1, loudness: -23 as Lufs });
    await first;
    expect(await client.measure({ ...plan })).toEqual({ ok: true, value: -23 });
    expect(port.requests).toHaveLength(1);
    void client.measure({ ...plan, seed: 2 });
    expect(port.requests).toHaveLength(2);
  });

  it("lets nobody wait when it is disposed of", async () => {
    const port = new FakePort();
    const client = new RenderClient(port);
    const job = client.render(plan, 0 as Db, () => undefined);
    const loudness = client.measure(plan);
    client.dispose();
    expect(port.isTerminated).toBe(true);
    expect((await loudness).ok).toBe(false);
    expect(await job.done).toEqual({ ok: true, value: false });
  });
});
