import { describe, expect, it } from "vitest";
import { planPhrase, type SoundPlan } from "../../src/audio/index.ts";
import { quantity } from "../../src/base/index.ts";
import { barStart, type Divisions } from "../../src/theory/index.ts";
import { demoPlayed } from "./support/demo-performance.ts";

const { phrase, playing } = demoPlayed("shout");
const { melody } = phrase;
const at = (value: number) => quantity<Divisions>(value);
const who = ({ events }: SoundPlan) => new Set(events.map(({ playerId }) => playerId));

describe("the sound of a phrase", () => {
  const whole = planPhrase(phrase, playing);

  it("sounds every note that is played, horns and rhythm section, when it is played", () => {
    const { events } = whole.plan;
    expect(events).toHaveLength(playing.played.length + playing.playedRhythm.length);
    for (const { playerId, onset, sounding } of playing.played)
      expect(
        events.some(
          (event) =>
            event.playerId === playerId &&
            event.onset === onset &&
            event.sound.kind === "pitched" &&
            event.sound.sounding === sounding,
        ),
      ).toBe(true);
    expect(whole.timeline.leadSeconds).toBe(0);
    expect(whole.timeline.passSeconds).toBeCloseTo(playing.seconds, 6);
  });

  it("gives everybody who sounds one seat, and stands in order of time", () => {
    const { events, seats } = whole.plan;
    expect(new Set(seats.map(({ playerId }) => playerId))).toEqual(who(whole.plan));
    expect(seats).toHaveLength(who(whole.plan).size);
    expect(events.every((event, n) => n === 0 || events[n - 1]!.onset <= event.onset)).toBe(true);
  });

  it("is plain data that survives being posted", () =>
    expect(JSON.parse(JSON.stringify(whole))).toEqual(whole));

  it("leaves out whoever is silent", () => {
    const silentIds = ["bass", "piano", "drums", "tpt1"];
    const heard = who(planPhrase(phrase, playing, { silentIds }).plan);
    for (const id of silentIds) expect(heard.has(id)).toBe(false);
    expect(heard.has("tpt2")).toBe(true);
  });

  it("plays two bars in between, nothing before or after", () => {
    const [from, to] = [barStart(melody, 3), barStart(melody, 5)];
    const { plan, timeline } = planPhrase(phrase, playing, { from, to });
    // Two bars of four at 168: 8 × 60 / 168 s.
    expect(timeline.passSeconds).toBeCloseTo((8 * 60) / 168, 6);
    for (const { onset, duration } of plan.events) {
      expect(onset).toBeGreaterThanOrEqual(0);
      expect(onset + duration).toBeLessThanOrEqual(timeline.passSeconds + 0.002);
    }
  });

  it("repeats a stretch without a seam", () => {
    const [from, to] = [barStart(melody, 2), barStart(melody, 4)];
    const once = planPhrase(phrase, playing, { from, to });
    const thrice = planPhrase(phrase, playing, { from, to, passes: 3 });
    expect(thrice.plan.events).toHaveLength(3 * once.plan.events.length);
    const { passSeconds } = once.timeline;
    const second = thrice.plan.events.filter(
      ({ onset }) => onset >= passSeconds - 1e-9 && onset < 2 * passSeconds - 1e-9,
    );
    expect(second.map(({ onset }) => (onset - passSeconds).toFixed(6))).toEqual(
      once.plan.events.map(({ onset }) => onset.toFixed(6)),
    );
  });

  it("counts two bars of four before bar 1: eight strokes, the first of each bar louder", () => {
    const from = barStart(melody, 1);
    const { plan, timeline } = planPhrase(phrase, playing, { from, countInBars: 2 });
    const counted = plan.events.filter(({ onset }) => onset < timeline.leadSeconds - 1e-9);
    expect(counted).toHaveLength(8);
    expect(timeline.leadSeconds).toBeCloseTo((8 * 60) / 168, 9);
    expect(counted.map(({ trim }) => trim > counted[1]!.trim)).toEqual([
      true,
      false,
      false,
      false,
      true,
      false,
      false,
      false,
    ]);
  });

  it("lets a pickup take the place of the last beats counted", () => {
    const { timeline } = planPhrase(phrase, playing, { countInBars: 2 });
    // The pickup is one beat long, so seven are counted.
    expect(melody.pickup).toBe(melody.division);
    expect(timeline.leadSeconds).toBeCloseTo((7 * 60) / 168, 9);
  });

  it("refuses a stretch that is none", () =>
    expect(() => planPhrase(phrase, playing, { from: at(48), to: at(48) })).toThrow(RangeError));
});
