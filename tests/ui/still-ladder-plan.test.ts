import { describe, expect, it } from "vitest";
import { firstInquiry, readInquiry } from "../../src/explore/index.ts";
import { sharedScale, stillLadderPlan, stillSizes } from "../../src/ui/parts/still-ladder-plan.ts";
import { voicingOf } from "../../src/ui/state/view-of.ts";

const reading = readInquiry(firstInquiry());
if (!reading.ok) throw new Error("the first question cannot be read");
const { question } = reading;
const voicing = voicingOf({ tpt1: 74, tpt2: 74, tpt3: 73, alto1: 74, bari: 41 }, question);

describe("a ladder to look at", () => {
  const scale = sharedScale([voicing]);
  const plan = stillLadderPlan(voicing, question.players, scale, 240);

  it("reaches from the highest to the lowest note of all voicings", () => {
    expect(scale).toEqual({ top: 74, bottom: 41 });
    expect(plan.rungs.map(({ pitch }) => pitch)).toEqual([74, 73, 41]);
  });

  it("gathers the players of a section on one note in one token, within the width", () => {
    const top = plan.tokens.find(({ section, pitch }) => section === "trumpets" && pitch === 74);
    expect(top?.players.map(({ id }) => id)).toEqual(["tpt1", "tpt2"]);
    for (const { x, width } of plan.tokens) {
      expect(x).toBeGreaterThanOrEqual(stillSizes.labels);
      expect(x + width).toBeLessThanOrEqual(240);
    }
  });

  it("puts tokens of a section that are a semitone apart beside each other", () => {
    const [upper, lower] = plan.tokens.filter(({ section }) => section === "trumpets");
    if (!upper || !lower) throw new Error("trumpets sound two notes here");
    expect(upper.x + upper.width).toBeLessThanOrEqual(lower.x);
  });
});
