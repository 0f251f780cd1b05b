import type { Page } from "playwright-core";
import { expect } from "vitest";

declare global {
  interface Window {
    /** What the tests see of the page's sound; put in place by `listenIn`. */
    listening?: {
      readonly contexts: AudioContext[];
      readonly analysers: AnalyserNode[];
      peak: number;
    };
  }
}

/**
 * Listens in on whatever the page sends to the loudspeakers, without starting anything itself: an
 * analyser is hung beside every connection to an output. Call it before the first sound.
 * @param page - the page
 */
export async function listenIn(page: Page): Promise<void> {
  await page.evaluate(() => {
    const listening = { contexts: [] as AudioContext[], analysers: [] as AnalyserNode[], peak: 0 };
    window.listening = listening;
    const connect = AudioNode.prototype.connect as (this: AudioNode, ...to: unknown[]) => AudioNode;
    const beside = function (this: AudioNode, ...to: unknown[]) {
      const context = this.context;
      if (to[0] === context.destination && context instanceof AudioContext) {
        const analyser = context.createAnalyser();
        connect.call(this, analyser);
        listening.contexts.push(context);
        listening.analysers.push(analyser);
      }
      return connect.call(this, ...to);
    };
    AudioNode.prototype.connect = beside as AudioNode["connect"];
    const samples = new Float32Array(2048);
    const look = () => {
      for (const analyser of listening.analysers) {
        analyser.getFloatTimeDomainData(samples);
        for (const sample of samples) listening.peak = Math.max(listening.peak, Math.abs(sample));
      }
      requestAnimationFrame(look);
    };
    look();
  });
}

/**
 * Waits until the page's own audio context runs and sound comes out of it.
 * @param page - the page
 */
export async function hearOutput(page: Page): Promise<void> {
  await expect.poll(() => outputPeak(page), { timeout: 20_000 }).toBeGreaterThan(0.003);
  expect(await page.evaluate(() => window.listening?.contexts.map((one) => one.state))).toContain(
    "running",
  );
}

/**
 * Greatest sample that went to the loudspeakers so far.
 * @param page - the page
 * @returns linear, 1 is full scale
 */
export function outputPeak(page: Page): Promise<number> {
  return page.evaluate(() => window.listening?.peak ?? 0);
}
