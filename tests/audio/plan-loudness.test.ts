import { describe, expect, it } from "vitest";
import type { Seconds } from "../../src/base/index.ts";
import { NoteMaker, planLoudness, planVoicing } from "../../src/audio/index.ts";
import type { SoundPlan } from "../../src/audio/index.ts";
import type { Dynamic } from "../../src/band/index.ts";
import { fiveHorns, voicingOf } from "./support/band.ts";

const maker = new NoteMaker();
const planOf = (dynamic: Dynamic, voicing = fiveHorns): SoundPlan =>
  planVoicing(voicing, { dynamic, manner: "sustained", seconds: 1 as Seconds });

describe("the loudness of a plan", () => {
  it("rises with the dynamic, also where the limiter would be at work", () => {
    const levels = (["pp", "mf", "ff", "fff"] as const).map((d) => planLoudness(planOf(d), maker));
    expect([...levels].sort((a, b) => a - b)).toEqual(levels);
    expect(levels[3]! - levels[2]!).toBeGreaterThan(1);
  });

  it("rises by some 4.8 dB from one player to three in unison", () => {
    const keys = (ids: readonly string[]) =>
      voicingOf(Object.fromEntries(ids.map((id) => [id, 60])));
    const one = planLoudness(planOf("mf", keys(["tbn1"])), maker);
    const three = planLoudness(planOf("mf", keys(["tbn1", "tbn2", "tbn3"])), maker);
    expect(three - one).toBeGreaterThan(3.3);
    expect(three - one).toBeLessThan(6.3);
  });

  it("of silence is minus infinity", () => {
    expect(planLoudness({ events: [], seats: [], seed: 1 }, maker)).toBe(-Infinity);
  });
});
