import { describe, expect, it } from "vitest";
import { planPhrase, positionIn } from "../../src/audio/index.ts";
import { timelinePoints } from "../../src/audio/phrase-timeline.ts";
import { quantity, type Seconds } from "../../src/base/index.ts";
import { clockOf } from "../../src/phrase/index.ts";
import { barStart, type Divisions } from "../../src/theory/index.ts";
import { demoPlayed } from "./support/demo-performance.ts";

const { phrase, playing } = demoPlayed("shout");
const { melody } = phrase;
const seconds = (value: number) => quantity<Seconds>(value);

describe("the line of time", () => {
  it("finds every half beat where the rhythm section plays it", () => {
    const clock = clockOf(melody, playing.feel);
    const { timeline } = planPhrase(phrase, playing);
    for (let time = 0; time < melody.length; time += melody.division / 2) {
      const at = quantity<Divisions>(time);
      expect(positionIn(timeline, clock.rhythm(at)).at).toBeCloseTo(time, 4);
    }
  });

  it("knows the count-in, the pass and the end", () => {
    const from = barStart(melody, 2);
    const options = { from, to: barStart(melody, 3), passes: 2, countInBars: 1 };
    const { timeline } = planPhrase(phrase, playing, options);
    const { leadSeconds, passSeconds } = timeline;
    expect(positionIn(timeline, seconds(leadSeconds - 0.01))).toEqual({ at: null, pass: 0 });
    expect(positionIn(timeline, leadSeconds)).toEqual({ at: from, pass: 0 });
    const again = positionIn(timeline, seconds(leadSeconds + passSeconds + 0.001));
    expect(again.pass).toBe(1);
    expect(again.at).toBeCloseTo(from, 0);
    expect(positionIn(timeline, seconds(leadSeconds + 9 * passSeconds)).at).toBe(options.to);
  });

  it("never runs backwards", () => {
    const points = timelinePoints(clockOf(melody, playing.feel), {
      from: quantity<Divisions>(1),
      to: melody.length,
      step: melody.division / 2,
    });
    expect(points.every((p, n) => n === 0 || p.seconds > points[n - 1]!.seconds)).toBe(true);
  });
});
