import { describe, expect, it } from "vitest";
import type { Seconds } from "../../src/base/index.ts";
import { NoteMaker, planVoicing, renderPlan } from "../../src/audio/index.ts";
import { FADE_SECONDS, fadeInCurve, fadeOutCurve } from "../../src/playback/fade.ts";
import { fiveHorns } from "../audio/support/band.ts";
import { clickLevel } from "../audio/support/click-level.ts";

const RATE = 48000;

/** Gain at a share of the fade, straight between the points, as the browser plays a curve. */
function gainAt(curve: readonly number[], share: number): number {
  const place = Math.min(1, Math.max(0, share)) * (curve.length - 1);
  const index = Math.min(curve.length - 2, Math.floor(place));
  return curve[index]! + (place - index) * (curve[index + 1]! - curve[index]!);
}

describe("fades", () => {
  it("go from whole to nothing and back, and add up to one on the way", () => {
    const [out, into] = [fadeOutCurve(), fadeInCurve()];
    expect(out[0]).toBe(1);
    expect(out[out.length - 1]).toBeCloseTo(0, 12);
    out.forEach((gain, i) => expect(gain + into[i]!).toBeCloseTo(1, 12));
  });

  it("leave no click above −60 dBFS when fff is stopped or exchanged anywhere", () => {
    const loud = renderPlan(
      planVoicing(fiveHorns, { dynamic: "fff", manner: "sustained", seconds: 0.6 as Seconds }),
      { maker: new NoteMaker() },
    ).left;
    const other = renderPlan(
      planVoicing(fiveHorns, { dynamic: "ff", manner: "crescendo", seconds: 0.6 as Seconds }),
      { maker: new NoteMaker() },
    ).left;
    for (const at of [0.2, 0.3001, 0.4567].map((seconds) => Math.round(seconds * RATE))) {
      const share = (i: number): number => (i - at) / (FADE_SECONDS * RATE);
      const stopped = loud.map((x, i) => x * gainAt(fadeOutCurve(), share(i)));
      const exchanged = stopped.map((x, i) => x + other[i]! * gainAt(fadeInCurve(), share(i)));
      expect(clickLevel(stopped, RATE, at - 480, at + 1920)).toBeLessThan(-60);
      expect(clickLevel(exchanged, RATE, at - 480, at + 1920)).toBeLessThan(-60);
      // The measure itself must hear a cut.
      const cut = loud.map((x, i) => (i < at ? x : 0));
      expect(clickLevel(cut, RATE, at - 480, at + 1920)).toBeGreaterThan(-60);
    }
  });
});
