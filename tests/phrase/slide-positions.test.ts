import { describe, expect, it } from "vitest";
import type { SoundingMidi } from "../../src/base/index.ts";
import { slidePositions, slideTravel } from "../../src/phrase/slide-positions.ts";

const travel = (from: number, to: number, instrument = "trombone" as const) =>
  slideTravel({ instrument }, from as SoundingMidi, to as SoundingMidi);

describe("the trombone's slide", () => {
  it("reaches every note of its range", () => {
    for (let midi = 40; midi <= 72; midi++)
      expect(slidePositions("trombone", midi as SoundingMidi).length, `${midi}`).toBeGreaterThan(0);
    for (let midi = 36; midi <= 65; midi++)
      expect(
        slidePositions("bass-trombone", midi as SoundingMidi).length,
        `${midi}`,
      ).toBeGreaterThan(0);
  });

  it("travels far from low B flat to low B natural, first to seventh position", () =>
    expect(travel(46, 47)).toBe(6));

  it("takes the nearer of two positions", () => {
    expect(travel(58, 66)).toBe(0);
    expect(travel(58, 63)).toBe(2);
  });

  it("travels as far back as forth", () => {
    for (let from = 40; from <= 72; from += 3)
      for (let to = 40; to <= 72; to += 5) expect(travel(from, to)).toBe(travel(to, from));
  });

  it("is no concern of other players", () =>
    expect(slideTravel({ instrument: "trumpet" }, 60 as SoundingMidi, 61 as SoundingMidi)).toBe(0));
});
