import { describe, expect, it } from "vitest";
import type { Hertz, Seconds } from "../../src/base/index.ts";
import { BlockClock } from "../../src/playback/block-clock.ts";

const rate = 48000 as Hertz;
const at = (seconds: number) => seconds as Seconds;
const isWhole = (seconds: number): boolean =>
  Math.abs(seconds * rate - Math.round(seconds * rate)) < 1e-6;

describe("the block clock", () => {
  it("puts blocks one after the other, on whole frames", () => {
    const clock = new BlockClock(at(1.23456789), rate);
    expect(clock.origin).toBeGreaterThanOrEqual(1.23456789);
    const times = [0, 4800, 28800].map((from) => clock.timeOf(from, at(1.2)));
    expect(times[1]! - times[0]!).toBeCloseTo(0.1, 12);
    expect(times[2]! - times[1]!).toBeCloseTo(0.5, 12);
    expect(times.every(isWhole)).toBe(true);
    expect(clock.lateBlocks).toBe(0);
  });

  it("moves a late block and all after it, and counts it", () => {
    const clock = new BlockClock(at(1), rate);
    clock.timeOf(0, at(0.99));
    const late = clock.timeOf(4800, at(1.3));
    expect(late).toBeGreaterThanOrEqual(1.3);
    expect(late).toBeLessThan(1.31);
    expect(isWhole(late)).toBe(true);
    expect(clock.timeOf(9600, at(1.31)) - late).toBeCloseTo(0.1, 12);
    expect(clock.lateBlocks).toBe(1);
  });

  it("knows which frame sounds when, also after a late block", () => {
    const clock = new BlockClock(at(1), rate);
    expect(clock.frameAt(at(0.5))).toBe(0);
    expect(clock.frameAt(at(1.1))).toBe(4800);
    const late = clock.timeOf(4800, at(1.3));
    expect(clock.frameAt(late)).toBe(4800);
    expect(new BlockClock(clock.origin, rate).origin).toBe(clock.origin);
  });
});
