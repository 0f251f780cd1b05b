import { describe, expect, it } from "vitest";
import type { SoundingMidi } from "../../src/base/index.ts";
import { playsAt, whoPlays, type Turn } from "../../src/phrase/who-plays.ts";
import { at, playersOf } from "./support/phrases.ts";

const band = playersOf("big-band");
const turn = (who: string, plays: boolean, from = 0, to = 100): Turn => ({
  who,
  from: at(from),
  to: at(to),
  plays,
});
const ids = (turns: readonly Turn[], lead = 65) =>
  whoPlays(band, { onset: at(10), lead: lead as SoundingMidi }, turns);

describe("who plays when", () => {
  it("is everyone unless said otherwise", () => expect(ids([]).ids.size).toBe(13));

  it("can be said of sections and of single players, the last word counting", () => {
    const turns = [turn("trumpets", false), turn("tpt1", true)];
    const playing = band.filter((player) => playsAt(player, at(10), turns)).map(({ id }) => id);
    expect(playing).toContain("tpt1");
    expect(playing).not.toContain("tpt2");
  });

  it("ends where its time ends", () => {
    const tpt1 = band.find(({ id }) => id === "tpt1");
    if (!tpt1) throw new Error("must be there");
    const turns = [turn("tpt1", false, 0, 10)];
    expect(playsAt(tpt1, at(9), turns)).toBe(false);
    expect(playsAt(tpt1, at(10), turns)).toBe(true);
  });

  it("calls in whoever reaches the melody when nobody else does", () => {
    const onlyTrombones = [turn("trumpets", false), turn("saxes", false)];
    expect(ids(onlyTrombones).isCalledIn).toBe(false);
    const high = ids(onlyTrombones, 82);
    expect(high.isCalledIn).toBe(true);
    expect(high.ids.has("tpt1")).toBe(true);
  });
});
