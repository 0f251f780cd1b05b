import { describe, expect, it } from "vitest";
import type { Db, Seconds } from "../../src/base/index.ts";
import { bassEvents, drumEvents, pianoEvents } from "../../src/audio/accompaniment.ts";
import type { SoundEvent } from "../../src/audio/index.ts";
import { chordOf } from "./support/band.ts";

const how = { seconds: 3 as Seconds, dynamic: "mf" as const, trim: 0 as Db };
const keys = (events: readonly SoundEvent[]): readonly number[] =>
  events.map(({ sound }) => (sound.kind === "pitched" ? sound.sounding : -1));

describe("the accompaniment", () => {
  it("has the bass player on the chord's bass, from E1 up", () => {
    expect(keys(bassEvents(chordOf("F13"), how))).toEqual([29]);
    expect(keys(bassEvents(chordOf("C/E"), how))).toEqual([28]);
    expect(keys(bassEvents(chordOf("Eb7"), how))).toEqual([39]);
  });

  it("has the pianist on third, seventh and one tension, from E3 up", () => {
    const pitchClasses = keys(pianoEvents(chordOf("F13"), how)).map((key) => key % 12);
    expect(pitchClasses.slice(0, 2)).toEqual([9, 3]);
    for (const key of keys(pianoEvents(chordOf("F13"), how))) {
      expect(key).toBeGreaterThanOrEqual(52);
      expect(key).toBeLessThan(64);
    }
    expect(pianoEvents(chordOf("F13"), how)[0]!.curve[0]!.dynamic).toBe("mp");
  });

  it("is silent where there is no chord", () => {
    expect(bassEvents(chordOf("N.C."), how)).toEqual([]);
    expect(pianoEvents(chordOf("N.C."), how)).toEqual([]);
  });

  it("keeps time on ride and hi-hat to the end, hi-hat on two and four", () => {
    const strokes = drumEvents(how);
    const beat = 60 / 138;
    const hats = strokes.filter(
      ({ sound }) => sound.kind === "cymbal" && sound.cymbal === "hi-hat",
    );
    hats.forEach(({ onset }, n) => expect(onset).toBeCloseTo((2 * n + 1) * beat, 9));
    expect(Math.max(...strokes.map(({ onset }) => onset))).toBeLessThan(3);
    expect(strokes[0]!.onset).toBe(0);
  });
});
