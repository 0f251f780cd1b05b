import { describe, expect, it } from "vitest";
import { planVoicing } from "../../src/audio/index.ts";
import type { Seconds } from "../../src/base/index.ts";
import { firstInquiry, readInquiry } from "../../src/explore/index.ts";
import { momentsOf } from "../../src/ui/actions/follow-plan.ts";
import { voicingOf } from "../../src/ui/state/view-of.ts";

const reading = readInquiry(firstInquiry());
if (!reading.ok) throw new Error("the first inquiry can be read");
const voicing = voicingOf({ tpt1: 74, tbn1: 63, bari: 41 }, reading.question);
const plan = (manner: "hit" | "rolled-from-bottom") =>
  planVoicing(voicing, { dynamic: "f", manner, seconds: 3 as Seconds });

describe("the moments of a plan", () => {
  it("start with everybody for a hit and end in silence", () => {
    const moments = momentsOf(plan("hit"));
    expect(moments[0]?.players.length).toBe(3);
    expect(moments[moments.length - 1]?.players).toEqual([]);
  });

  it("let players in one by one from the bottom for a roll", () => {
    const [first, second] = momentsOf(plan("rolled-from-bottom"));
    expect(first?.players).toEqual(["bari"]);
    expect(second?.players).toContain("tbn1");
  });
});
