import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { page, userEvent } from "vitest/browser";
import type { Db, Gain, Seconds } from "../../src/base/index.ts";
import { NoteMaker, planVoicing, renderPlan } from "../../src/audio/index.ts";
import type { SoundPlan, StereoSamples } from "../../src/audio/index.ts";
import { createPlayback } from "../../src/playback/index.ts";
import type { EndReason, Playback } from "../../src/playback/index.ts";
import { Deck } from "../../src/playback/deck.ts";
import { FADE_SECONDS } from "../../src/playback/fade.ts";
import type { OutputChain } from "../../src/playback/output-chain.ts";
import { loadTone } from "../../src/playback/tone-door.ts";
import { fiveHorns } from "../audio/support/band.ts";
import {
  ENGINE_TOLERANCE,
  REFERENCE_SAMPLES,
  referenceRender,
} from "../audio/support/reference-render.ts";
import { clickLevel } from "../audio/support/click-level.ts";

const RATE = 48000;
const planOf = (seconds: number, dynamic: "mf" | "ff" = "mf"): SoundPlan =>
  planVoicing(fiveHorns, { dynamic, manner: "sustained", seconds: seconds as Seconds });

/** An output that writes into a buffer instead of the loudspeakers. */
async function offlineChain(seconds: number) {
  const tone = await loadTone();
  const { OfflineContext } = await import("tone/build/esm/core/context/OfflineContext.js");
  const native = new OfflineAudioContext(2, seconds * RATE, RATE);
  const context = new OfflineContext(native) as unknown as OutputChain["context"];
  const input = new tone.Gain({ context, gain: 1 });
  tone.connect(input, native.destination);
  const chain = { tone, context, input } as OutputChain;
  return { chain, finish: () => native.startRendering() };
}

function addInBlocks(deck: Deck, { left, right }: StereoSamples): void {
  for (let from = 0, length = 4800; from < left.length; from += length, length = 24000)
    deck.add(from, {
      left: left.slice(from, from + length),
      right: right.slice(from, from + length),
    });
}

describe("a deck", () => {
  const sound = renderPlan(planOf(0.8, "ff"), { maker: new NoteMaker() });
  const ignore = (): void => undefined;

  it("joins blocks without a seam: every sample as rendered", async () => {
    const { chain, finish } = await offlineChain(2);
    const deck = new Deck(chain, 1, ignore);
    addInBlocks(deck, sound);
    const heard = (await finish()).getChannelData(0);
    const start = Math.round(deck.start * RATE);
    let most = 0;
    for (let i = 0; i < sound.left.length; i++)
      most = Math.max(most, Math.abs(heard[start + i]! - sound.left[i]!));
    expect(most).toBeLessThan(1e-6);
    expect(deck.lateBlocks).toBe(0);
  });

  it("gives way within 20 ms and without a click above −60 dBFS", async () => {
    const { chain, finish } = await offlineChain(1.5);
    const deck = new Deck(chain, 1, ignore);
    addInBlocks(deck, sound);
    deck.leave(0.4 as Seconds);
    const heard = (await finish()).getChannelData(0);
    const end = Math.ceil((0.4 + FADE_SECONDS) * RATE) + 1;
    expect(heard.subarray(end).every((sample) => sample === 0)).toBe(true);
    expect(Math.max(...heard.subarray(0.3 * RATE, 0.4 * RATE))).toBeGreaterThan(0.01);
    expect(clickLevel(heard, RATE, 0.39 * RATE, 0.43 * RATE)).toBeLessThan(-60);
  });

  it("begins in the middle of a sound without a click", async () => {
    const { chain, finish } = await offlineChain(1.5);
    const deck = new Deck(chain, 0.5, ignore, -0.4 as Seconds);
    expect(deck.add(0, sound)).toBe(true);
    const heard = (await finish()).getChannelData(0);
    expect(clickLevel(heard, RATE, 0, 3000)).toBeLessThan(-60);
    // Context time 0.1 s is 0.5 s into the sound.
    const later = 0.1 * RATE;
    expect(heard[later]).toBeCloseTo(0.5 * sound.left[later + 0.4 * RATE]!, 5);
  });

  it("takes the place of another at another level in mid-sound, each sample where it belongs", async () => {
    const { chain, finish } = await offlineChain(1.5);
    const old = new Deck(chain, 1, ignore);
    addInBlocks(old, sound);
    const louder = new Deck(chain, 1.5, ignore, (old.origin - 0.35) as Seconds);
    // The first block is over before it comes; the second is heard in part.
    expect(
      louder.add(0, { left: sound.left.slice(0, 9600), right: sound.right.slice(0, 9600) }),
    ).toBe(false);
    expect(louder.add(9600, { left: sound.left.slice(9600), right: sound.right.slice(9600) })).toBe(
      true,
    );
    old.leave(louder.start);
    const heard = (await finish()).getChannelData(0);
    expect(clickLevel(heard, RATE)).toBeLessThan(-60);
    const frame = Math.round((louder.start + FADE_SECONDS) * RATE) + 10;
    const place = frame - Math.round((old.origin - 0.35) * RATE);
    expect(heard[frame]).toBeCloseTo(1.5 * sound.left[place]!, 5);
  });
});

describe("a render in the browser", () => {
  it("is the one that Node gives, to a millionth of full scale", () => {
    referenceRender().forEach((sample, i) =>
      expect(Math.abs(sample - REFERENCE_SAMPLES[i]!)).toBeLessThan(ENGINE_TOLERANCE),
    );
  });
});

describe("playback on a page", () => {
  let playback: Playback;
  let ends: EndReason[];
  const click = async (action: () => unknown): Promise<void> => {
    document.body.innerHTML = "<button>do it</button>";
    const done = new Promise<void>((resolve, reject) => {
      document.querySelector("button")!.onclick = () =>
        void Promise.resolve(action()).then(() => resolve(), reject);
    });
    await userEvent.click(page.getByRole("button"));
    await done;
  };
  const until = async (test: () => boolean): Promise<void> => {
    while (!test()) await new Promise((resolve) => setTimeout(resolve, 10));
  };

  beforeEach(() => {
    playback = createPlayback();
    ends = [];
    playback.onEnd((reason) => ends.push(reason));
  });
  afterEach(() => playback.dispose());

  it("sounds a plan, tells its level, and ends by itself", async () => {
    await click(async () =>
      expect((await playback.play({ kind: "plan", plan: planOf(0.3) })).ok).toBe(true),
    );
    expect(playback.isSounding()).toBe(true);
    await until(() => playback.level() > -50);
    expect(playback.level()).toBeLessThan(-1);
    await until(() => ends.length > 0);
    expect(ends).toEqual(["finished"]);
    expect(playback.isSounding()).toBe(false);
  });

  it("warms up before any gesture without a sound, then plays", async () => {
    playback.warmUp();
    expect(playback.isSounding()).toBe(false);
    await click(() => playback.play({ kind: "plan", plan: planOf(0.2) }));
    await until(() => ends.length > 0);
    expect(ends).toEqual(["finished"]);
  });

  it("stops at once", async () => {
    await click(() => playback.play({ kind: "plan", plan: planOf(5) }));
    await until(() => playback.level() > -50);
    playback.stop();
    expect(playback.isSounding()).toBe(false);
    expect(ends).toEqual(["stopped"]);
    await until(() => playback.level() < -100);
  });

  it("puts the new sound in the place of the old", async () => {
    await click(() => playback.play({ kind: "plan", plan: planOf(5) }));
    await click(() => playback.play({ kind: "plan", plan: planOf(0.2, "ff") }, { gain: -6 as Db }));
    expect(ends).toEqual(["replaced"]);
    await until(() => ends.length === 2);
    expect(ends).toEqual(["replaced", "finished"]);
  });

  it("exchanges the level of what sounds at the place where it stands, and ends on time", async () => {
    const plan = planOf(6);
    const began = performance.now();
    await click(() => playback.play({ kind: "plan", plan }));
    let before = -Infinity;
    // Past the attack.
    await until(() => {
      before = Math.max(before, playback.level());
      return before > -50 && performance.now() - began > 700;
    });
    const swapped = await playback.swap({ kind: "plan", plan }, { gain: -20 as Db });
    expect(swapped.ok && swapped.value).toBeGreaterThan(0.02);
    expect(swapped.ok && swapped.value).toBeLessThan((performance.now() - began) / 1000 + 0.2);
    expect(ends).toEqual(["replaced"]);
    expect(playback.isSounding()).toBe(true);
    await until(() => playback.level() < before - 9);
    await until(() => ends.length === 2);
    expect(ends).toEqual(["replaced", "finished"]);
  });

  it("exchanges one voicing for another and samples for a plan; over, it ends", async () => {
    // Long: a new worker on a busy machine takes its time.
    const left = new Float32Array(20 * RATE).map((_, i) => 0.1 * Math.sin(i / 20));
    await click(() => playback.play({ kind: "samples", samples: { left, right: left } }));
    await Promise.all([
      playback.swap({ kind: "plan", plan: planOf(20, "ff") }),
      playback.swap({ kind: "plan", plan: planOf(20) }),
    ]);
    expect(ends).toEqual(["replaced"]);
    await until(() => playback.level() > -40);
    const nothing = new Float32Array(10);
    await playback.swap({ kind: "samples", samples: { left: nothing, right: nothing } });
    expect(ends).toEqual(["replaced", "finished"]);
    expect(playback.isSounding()).toBe(false);
  });

  it("sounds the rest of a longer sound although the old one ends while it is prepared", async () => {
    // The worker is new: it takes far longer to start than the old sound lasts.
    const left = new Float32Array(0.02 * RATE).map((_, i) => 0.1 * Math.sin(i / 20));
    await click(() => playback.play({ kind: "samples", samples: { left, right: left } }));
    const swapped = await playback.swap({ kind: "plan", plan: planOf(20, "ff") });
    expect(swapped.ok && swapped.value).toBeGreaterThan(0.02);
    expect(ends).toEqual(["replaced"]);
    await until(() => playback.level() > -40);
    playback.stop();
    expect(ends).toEqual(["replaced", "stopped"]);
  });

  it("ends once although the old sound is over before the short new one is there", async () => {
    const left = new Float32Array(0.02 * RATE).map((_, i) => 0.1 * Math.sin(i / 20));
    await click(() => playback.play({ kind: "samples", samples: { left, right: left } }));
    await playback.swap({ kind: "plan", plan: planOf(0.05) });
    await until(() => !playback.isSounding());
    expect(ends.filter((end) => end === "finished")).toEqual(["finished"]);
  });

  it("simply plays when there is nothing to exchange", async () => {
    await click(async () => {
      const swapped = await playback.swap({ kind: "plan", plan: planOf(0.2) });
      expect(swapped).toEqual({ ok: true, value: 0 });
    });
    await until(() => ends.length > 0);
    expect(ends).toEqual(["finished"]);
  });

  it("gives only the last of several hasty plays", async () => {
    await click(() =>
      Promise.all(
        [5, 4, 0.2].map((seconds) => playback.play({ kind: "plan", plan: planOf(seconds) })),
      ),
    );
    await until(() => ends.includes("finished"));
    expect(ends).toEqual(["finished"]);
  });

  it("never passes the ceiling, even with samples far beyond full scale", async () => {
    const left = new Float32Array(RATE / 2).map((_, i) => 4 * Math.sin(i / 20));
    playback.setVolume(0 as Db);
    await click(() => playback.play({ kind: "samples", samples: { left, right: left } }));
    await until(() => playback.level() > -6);
    let most = -Infinity;
    while (playback.isSounding()) {
      most = Math.max(most, playback.level());
      await new Promise((resolve) => setTimeout(resolve, 15));
    }
    expect(most).toBeLessThanOrEqual(-1);
    expect(most).toBeGreaterThan(-3);
  });

  it("measures loudness and renders for a file in the worker, the same as here", async () => {
    const plan = planOf(0.6);
    const loudness = await playback.measure(plan);
    expect(loudness.ok && loudness.value).toBeLessThan(-15);
    const shares: number[] = [];
    const rendered = await playback.render(plan, { onProgress: (share) => shares.push(share) });
    const here = renderPlan(plan, { maker: new NoteMaker() });
    expect(rendered.ok && rendered.value.isWhole).toBe(true);
    expect(rendered.ok && rendered.value.left).toEqual(here.left);
    expect(shares[shares.length - 1]).toBe(1);
  });

  it("refuses a volume above 0 dB", () => {
    expect(() => playback.setVolume(3 as Db)).toThrow("volume must be 0 dB or below, got 3");
    playback.setVolume(-Infinity as Db);
  });

  it("is silent and harmless before anything was played", () => {
    playback.stop();
    expect(playback.level()).toBe(-Infinity as Gain as number);
    expect(playback.isSounding()).toBe(false);
    expect(ends).toEqual([]);
  });
});
