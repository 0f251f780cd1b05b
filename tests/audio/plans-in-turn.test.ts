import { describe, expect, it } from "vitest";
import type { Db, Seconds } from "../../src/base/index.ts";
import {
  NoteMaker,
  TURN_GAP_SECONDS,
  planVoicing,
  plansInTurn,
  renderPlan,
} from "../../src/audio/index.ts";
import type { SoundPlan } from "../../src/audio/index.ts";
import { fiveHorns, voicingOf } from "./support/band.ts";

const planOf = (voicing = fiveHorns): SoundPlan =>
  planVoicing(voicing, { dynamic: "mf", manner: "sustained", seconds: 0.5 as Seconds });

describe("plans in turn", () => {
  const other = planOf(voicingOf({ tpt1: 70, bari: 50 }));
  const both = plansInTurn([{ plan: planOf() }, { plan: other, gain: -3 as Db }]);

  it("come one after the other with a gap, each at its level", () => {
    const first = both.events.slice(0, 5);
    const second = both.events.slice(5);
    expect(first).toEqual(planOf().events);
    for (const { onset, trim } of second) {
      expect(onset).toBeCloseTo(0.5 + TURN_GAP_SECONDS, 9);
      expect(trim).toBe(-3);
    }
    expect(both.seats.map(({ playerId }) => playerId).sort()).toEqual(
      ["tpt1", "tbn1", "alto1", "tenor1", "bari"].sort(),
    );
  });

  it("sound just as they do alone", () => {
    const maker = new NoteMaker();
    const alone = renderPlan(planOf(), { maker, isDry: true });
    const inTurn = renderPlan(both, { maker, isDry: true });
    const until = Math.round(0.9 * maker.sampleRate);
    for (let i = 0; i < Math.min(until, alone.left.length); i += 41)
      expect(inTurn.left[i]).toBeCloseTo(alone.left[i]!, 7);
  });

  it("of nothing are nothing", () => expect(plansInTurn([]).events).toEqual([]));
});
