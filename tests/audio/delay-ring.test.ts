import { describe, expect, it } from "vitest";
import { DelayRing } from "../../src/audio/delay-ring.ts";

describe("the delay ring", () => {
  it("gives back every block as late as asked, added at the gain asked", () => {
    const ring = new DelayRing(150);
    const input = Float32Array.from({ length: 400 }, (_, i) => Math.sin(i));
    const output = new Float32Array(400).fill(1);
    for (let from = 0; from < 400; from += 50) {
      ring.write(input, from, 50);
      ring.addDelayed(output, from, 50, 77, 0.5);
    }
    for (let i = 0; i < 400; i++)
      expect(output[i]).toBeCloseTo(1 + (i < 77 ? 0 : 0.5 * input[i - 77]!), 6);
  });
});
