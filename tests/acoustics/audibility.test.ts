import { describe, expect, it } from "vitest";
import { audibility, type SoundSource } from "../../src/acoustics/audibility.ts";
import { raiseSpectrum } from "../../src/acoustics/spectrum.ts";
import type { Db } from "../../src/base/index.ts";
import { hzOf, plainNote } from "./support/sounds.ts";

const source = (id: string, midi: number, level: number, group?: string): SoundSource => ({
  id,
  spectrum: plainNote(hzOf(midi), level),
  ...(group === undefined ? {} : { group }),
});

describe("how players are heard among each other", () => {
  it("leaves a player alone clear by the threshold in quiet, covered by nobody", () => {
    const [heard] = audibility([source("one", 60, 70)]);
    expect(heard!.verdict).toBe("clear");
    expect(heard!.margin).toBeGreaterThan(40);
    expect(heard!.coveredBy).toBeNull();
  });

  it("buries a soft player under a loud one on its note and names the loud one", () => {
    const [soft, loud] = audibility([source("soft", 60, 55), source("loud", 60, 80)]);
    expect(soft!.verdict).toBe("buried");
    expect(soft!.coveredBy).toEqual({ group: "loud", ids: ["loud"], share: 1 });
    expect(loud!.verdict).toBe("clear");
  });

  it("names the one to blame among several", () => {
    const heard = audibility([
      source("soft", 60, 55),
      source("near", 60, 70),
      source("far", 84, 70),
      source("low", 43, 55),
    ]);
    expect(heard[0]!.coveredBy?.group).toBe("near");
    expect(heard[0]!.coveredBy?.share).toBeGreaterThan(0.5);
    expect(heard[0]!.coveredBy?.share).toBeLessThanOrEqual(1);
  });

  it("judges players of one group as one source", () => {
    const heard = audibility([
      source("a", 60, 70, "altos"),
      source("x", 67, 70),
      source("b", 60, 70, "altos"),
    ]);
    expect(heard.map(({ group }) => group)).toEqual(["altos", "x"]);
    expect(heard[0]!.ids).toEqual(["a", "b"]);
    const doubled = audibility([source("a", 60, 73.0103), source("x", 67, 70)]);
    expect(heard[0]!.margin).toBeCloseTo(doubled[0]!.margin, 3);
  });

  it("moves the margin by about as much as the player is raised", () => {
    const rest = source("rest", 60, 75);
    const spectrum = plainNote(hzOf(64), 65);
    const margin = (by: number): number =>
      audibility([{ id: "p", spectrum: raiseSpectrum(spectrum, by as Db) }, rest])[0]!.margin;
    expect(margin(3) - margin(0)).toBeGreaterThan(2);
    expect(margin(3) - margin(0)).toBeLessThan(4);
  });

  it("finds the best channel at one of harmonics 1 to 8", () => {
    const [heard] = audibility([source("p", 60, 70), source("q", 55, 70)]);
    const harmonic = heard!.channel / hzOf(60);
    expect(Math.abs(harmonic - Math.round(harmonic))).toBeLessThan(1e-9);
    expect(harmonic).toBeLessThanOrEqual(8.001);
  });

  it("gives every player the same whatever their order", () => {
    const players = [source("a", 60, 70), source("b", 64, 66), source("c", 67, 73)];
    const forwards = audibility(players);
    const backwards = audibility([...players].reverse());
    for (const { group, margin } of forwards)
      expect(backwards.find((other) => other.group === group)!.margin).toBeCloseTo(margin, 9);
  });

  it("asks for at least one partial a player", () => {
    expect(() => audibility([{ id: "nobody", spectrum: [] }])).toThrow(/got none for nobody/);
  });
});
