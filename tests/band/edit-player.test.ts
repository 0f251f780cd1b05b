import { describe, expect, it } from "vitest";
import { soundingMidi, type Result } from "../../src/base/index.ts";
import type { InstrumentId, Player } from "../../src/band/band-types.ts";
import {
  withInstrument,
  withLevel,
  withMute,
  withPersonalRange,
} from "../../src/band/edit-player.ts";
import { makePlayer } from "../../src/band/players.ts";

const tpt1 = makePlayer({ seat: "tpt1" });
const alto2 = makePlayer({ seat: "alto2" });
const limits = (low: number, high: number) => ({
  low: soundingMidi(low),
  high: soundingMidi(high),
});

const value = (result: Result<Player>): Player => {
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
};
const code = (result: Result<Player>): string => (result.ok ? "none" : result.problem.code);

describe("another instrument in hand", () => {
  it("brings its range, zones, home and name, and keeps the person", () => {
    const double = value(withInstrument(tpt1, "flugelhorn"));
    expect(double).toMatchObject({
      id: "tpt1",
      name: "Flugelhorn (Trumpet 1)",
      section: "trumpets",
      range: { low: 52, high: 80 },
    });
    expect(value(withInstrument(double, "trumpet"))).toEqual(tpt1);
  });

  it("moves the person to the section of the instrument", () => {
    expect(value(withInstrument(alto2, "trombone")).section).toBe("trombones");
  });

  it("drops a mute that it does not take and a range made for the other one", () => {
    const muted = value(withPersonalRange(value(withMute(tpt1, "plunger")), limits(60, 75)));
    const double = value(withInstrument(muted, "flugelhorn"));
    expect(double.mute).toBe("open");
    expect(double.personalRange).toBeUndefined();
  });

  it("is refused when unknown or not a wind", () => {
    expect(code(withInstrument(alto2, "kazoo" as InstrumentId))).toBe("instrument-unknown");
    expect(code(withInstrument(alto2, "piano"))).toBe("instrument-not-a-wind");
  });
});

describe("another mute", () => {
  it("is taken where the instrument has one", () => {
    expect(value(withMute(tpt1, "harmon")).mute).toBe("harmon");
    expect(value(withMute(alto2, "open"))).toEqual(alto2);
  });

  it("is refused with a sentence where it has none", () => {
    const refused = withMute(alto2, "cup");
    expect(refused.ok ? "" : refused.problem.message).toBe(
      "Alto 2 takes no cup mute: this instrument plays open.",
    );
    expect(code(withMute(makePlayer({ seat: "tuba1" }), "plunger"))).toBe("mute-not-taken");
  });
});

describe("another level", () => {
  it("changes what is easy and what is out of reach, and comes back", () => {
    const school = value(withLevel(tpt1, "school"));
    expect(school.range.high).toBe(79);
    expect(value(withLevel(school, "pro"))).toEqual(tpt1);
  });

  it("keeps personal limits, and is refused when it cannot reach them", () => {
    const high = value(withPersonalRange(tpt1, limits(80, 86)));
    expect(value(withLevel(high, "semi-pro")).range).toEqual({ low: 80, high: 84 });
    expect(code(withLevel(high, "school"))).toBe("personal-range-empty");
  });
});

describe("personal limits", () => {
  it("cut the range and can be lifted again", () => {
    const cut = value(withPersonalRange(alto2, limits(55, 70)));
    expect(cut.range).toEqual({ low: 55, high: 70 });
    expect(cut.easyRange).toEqual(alto2.easyRange);
    expect(value(withPersonalRange(cut, undefined))).toEqual(alto2);
  });

  it("do not widen what the instrument can do", () => {
    expect(value(withPersonalRange(alto2, limits(20, 120))).range).toEqual(alto2.range);
  });

  it("are refused upside down, and where they leave nothing, with the notes in words", () => {
    const upside = withPersonalRange(tpt1, limits(70, 60));
    expect(code(upside)).toBe("personal-range-upside-down");
    expect(upside.ok ? "" : upside.problem.message).toContain("Bb4");
    const nothing = withPersonalRange(tpt1, limits(90, 100));
    expect(nothing.ok ? "" : nothing.problem.message).toBe(
      "Trumpet 1 cannot sound anything between those limits: choose them between E3 and D6 (sounding).",
    );
  });
});
