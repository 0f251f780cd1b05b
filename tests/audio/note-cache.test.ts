import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CACHE_BUDGET_BYTES, NoteCache } from "../../src/audio/note-cache.ts";

const bytesOf = (value: Float32Array): number => value.byteLength;
const make = (frames: number) => (): Float32Array => new Float32Array(frames);

describe("the note cache", () => {
  it("has a budget of 96 MB", () => expect(CACHE_BUDGET_BYTES).toBe(96 * 1024 * 1024));

  it("gives back what it keeps", () => {
    const cache = new NoteCache(100);
    const first = cache.take("a", make(10), bytesOf);
    expect(cache.take("a", make(10), bytesOf)).toBe(first);
    expect(cache.bytes).toBe(40);
  });

  it("forgets what was used longest ago", () => {
    const cache = new NoteCache(100);
    const a = cache.take("a", make(10), bytesOf);
    const b = cache.take("b", make(10), bytesOf);
    cache.take("a", make(10), bytesOf);
    cache.take("c", make(10), bytesOf);
    expect(cache.take("a", make(10), bytesOf)).toBe(a);
    expect(cache.take("b", make(10), bytesOf)).not.toBe(b);
  });

  it("makes but does not keep what is larger than everything it may hold", () => {
    const cache = new NoteCache(100);
    expect(cache.take("a", make(26), bytesOf)).toHaveLength(26);
    expect(cache.size).toBe(0);
  });

  it("never holds more than its budget", () => {
    const takes = fc.array(
      fc.tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ max: 30, min: 1 })),
    );
    fc.assert(
      fc.property(takes, (list) => {
        const cache = new NoteCache(200);
        for (const [key, frames] of list) {
          cache.take(`${key}`, make(frames), bytesOf);
          expect(cache.bytes).toBeLessThanOrEqual(200);
        }
      }),
      { seed: 7 },
    );
  });
});
