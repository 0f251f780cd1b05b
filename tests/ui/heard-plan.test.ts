import { describe, expect, it } from "vitest";
import type { Db } from "../../src/base/index.ts";
import { firstInquiry, readInquiry } from "../../src/explore/index.ts";
import { inTurn, planOf, type Hearing } from "../../src/ui/actions/heard-plan.ts";
import { everybody } from "../../src/ui/actions/sound-state.ts";
import { fileNameOf } from "../../src/ui/actions/hand-over.ts";
import { voicingOf } from "../../src/ui/state/view-of.ts";

const reading = readInquiry(firstInquiry());
if (!reading.ok) throw new Error("the first question can be read");
const { question } = reading;
const pitches = { tpt1: 74, tpt2: 74, tbn1: 63, alto1: 67, bari: 41 };
const heard = { question, voicing: voicingOf(pitches, question) };
const usual: Hearing = { way: "sustained", who: everybody, backing: "horns", seats: [] };

const heardIn = (hearing: Partial<Hearing>) => [
  ...new Set(planOf(heard, { ...usual, ...hearing }).events.map(({ playerId }) => playerId)),
];

describe("what is heard of a voicing", () => {
  it("is everybody unless players are chosen", () => {
    expect(heardIn({}).sort()).toEqual(Object.keys(pitches).sort());
  });

  it("is only the chosen when the others are silent, over bass and piano when asked for", () => {
    const who = { playerIds: ["tpt1", "tpt2"], others: "silent" } as const;
    expect(heardIn({ who }).sort()).toEqual(["tpt1", "tpt2"]);
    expect(heardIn({ who, backing: "bass-piano" })).toContain("bass");
  });

  it("is one player and nothing else when one is to be heard alone", () => {
    const who = { playerIds: ["alto1"], others: "silent" } as const;
    expect(heardIn({ who, backing: "rhythm" })).toEqual(["alto1"]);
  });

  it("keeps the others 12 dB softer beside the chosen", () => {
    const who = { playerIds: ["alto1"], others: "softer" } as const;
    const { events } = planOf(heard, { ...usual, who });
    const trims = new Map(events.map(({ playerId, trim }) => [playerId, trim]));
    expect([trims.get("alto1"), trims.get("bari")]).toEqual([0, -12]);
  });

  it("comes from the chair where the player was moved", () => {
    const seats = [{ playerId: "tpt1", pan: 0.9, distanceM: 7 }];
    const plan = planOf(heard, { ...usual, seats });
    expect(plan.seats.find(({ playerId }) => playerId === "tpt1")).toEqual(seats[0]);
  });
});

describe("voicings in turn", () => {
  it("begin one after the other with silence between, each at its own level", () => {
    const plan = planOf(heard, usual);
    const { plan: both, starts } = inTurn([plan, plan], [-2 as Db, 3 as Db]);
    const second = both.events.filter(({ onset }) => onset >= (starts[1] ?? Infinity));
    expect(second.length).toBe(plan.events.length);
    expect(second.every(({ trim }) => trim === 3)).toBe(true);
    const firstOver = Math.max(...plan.events.map(({ onset, duration }) => onset + duration));
    expect(starts[1]).toBeGreaterThan(firstOver);
  });
});

describe("the name of a sound file", () => {
  it.each([
    [["F13", "D5"], "hornweave-F13-D5-hit.wav"],
    [["Bb7#9/D", "F#5"], "hornweave-Bb7-sharp-9-over-D-F-sharp-5-hit.wav"],
    [["C7(b9,13)", "../x"], "hornweave-C7-b9-13-over-x-hit.wav"],
  ])("made of %j is safe on every system", (words, name) => {
    expect(fileNameOf([...words, "hit"], "wav")).toBe(name);
  });
});
