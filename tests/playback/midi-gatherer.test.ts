import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Seconds } from "../../src/base/index.ts";
import { chordGatherer } from "../../src/playback/midi-gatherer.ts";
import type { PlayedEvent } from "../../src/playback/midi-types.ts";
import { off, on } from "./midi-stand-ins.ts";

const ms = (milliseconds: number) => (milliseconds / 1000) as Seconds;

/** Plays messages, each at its time in ms, and lets a second pass. */
function play(...messages: readonly (readonly [number, number[], string?])[]): PlayedEvent[] {
  const gatherer = chordGatherer();
  const events = messages.flatMap(([at, data, source]) => [...gatherer.feed(data, ms(at), source)]);
  const last = messages.at(-1)?.[0] ?? 0;
  return [...events, ...gatherer.tick(ms(last + 1000))];
}

/** Events in short: a note as its number, a chord as its notes, a release as a negative number. */
function brief(events: readonly PlayedEvent[]): (number | number[])[] {
  return events.map((event) => {
    if (event.kind === "release") return -event.midi;
    return event.kind === "note" ? event.note.midi : event.notes.map(({ midi }) => midi);
  });
}

const pedalDown = [0xb0, 64, 127];
const pedalUp = [0xb0, 64, 0];

// The meaning of the messages: MIDI 1.0 Detailed Specification. The window: common practice, no
// single source.
describe("the gatherer of chords", () => {
  it("makes one chord, low to high, of notes struck within 80 ms", () => {
    const events = play([100, on(67, 70)], [120, on(60, 90)], [179, on(64, 80)]);
    expect(events).toEqual([
      {
        kind: "chord",
        at: 0.1,
        notes: [
          { midi: 60, velocity: 90 },
          { midi: 64, velocity: 80 },
          { midi: 67, velocity: 70 },
        ],
        held: [60, 64, 67],
      },
    ]);
  });

  it("keeps notes apart that are struck 80 ms apart", () => {
    expect(brief(play([0, on(60)], [80, on(64)]))).toEqual([60, 64]);
  });

  it("counts from the first note, so that a slow run never grows into one chord", () => {
    const run = [0, 50, 100, 150].map((at, i) => [at, on(60 + i)] as const);
    expect(brief(play(...run))).toEqual([
      [60, 61],
      [62, 63],
    ]);
  });

  it("keeps quick notes apart that are not held together", () => {
    const events = play([0, on(60)], [30, off(60)], [40, on(62)], [70, off(62)]);
    expect(brief(events)).toEqual([60, -60, 62, -62]);
  });

  it("hears a chord as one however short it is", () => {
    const events = play([0, on(60)], [5, on(64)], [25, off(64)], [26, off(60)]);
    expect(brief(events)).toEqual([[60, 64], -64, -60]);
  });

  it("leaves a note out of the next chord when it is still held, but says that it is held", () => {
    const events = play([0, on(48)], [500, on(60)], [510, on(64)]);
    expect(brief(events)).toEqual([48, [60, 64]]);
    expect(events[1]).toMatchObject({ at: 0.5, held: [48, 60, 64] });
  });

  it("is not cut short by letting go of an earlier note", () => {
    const events = play([0, on(48)], [500, on(60)], [505, off(48)], [510, on(64)]);
    expect(brief(events)).toEqual([48, -48, [60, 64]]);
  });

  it("takes a note struck with no velocity for one let go", () => {
    expect(brief(play([0, on(60)], [200, on(60, 0)]))).toEqual([60, -60]);
  });

  it("holds with the pedal, and releases all as it is let up but what a finger holds", () => {
    const events = play(
      [0, pedalDown],
      [1, on(60)],
      [200, off(60)],
      [300, on(64)],
      [500, pedalUp],
      [600, off(64)],
    );
    expect(brief(events)).toEqual([60, 64, -60, -64]);
    expect(events[1]).toMatchObject({ kind: "note", held: [60, 64] });
    expect(events[2]).toMatchObject({ kind: "release", at: 0.5 });
  });

  it("releases a note that is struck again before it begins anew", () => {
    const events = play([0, pedalDown], [1, on(60)], [200, off(60)], [300, on(60)], [500, pedalUp]);
    expect(brief(events)).toEqual([60, -60, 60]);
  });

  it("hears a layered keyboard, which sends each note on two channels, once", () => {
    type Timed = readonly [number, number[]];
    const layered = (at: number, [status = 0, ...data]: number[]): Timed[] => [
      [at, [status, ...data]],
      [at, [status + 1, ...data]],
    ];
    const events = play(...layered(0, on(60)), ...layered(10, on(64)), ...layered(300, off(60)));
    expect(brief(events)).toEqual([[60, 64], -60]);
  });

  it("lets go of one device's notes when it is unplugged, pedal or not", () => {
    const gatherer = chordGatherer();
    gatherer.feed(pedalDown, ms(0), "stage piano");
    gatherer.feed(on(60), ms(1), "stage piano");
    gatherer.feed(off(60), ms(2), "stage piano");
    gatherer.feed(on(64), ms(3), "stage piano");
    gatherer.feed(on(67), ms(4), "pads");
    expect(brief(gatherer.letGo(ms(50), "stage piano"))).toEqual([[60, 64, 67], -60, -64]);
    expect(gatherer.held()).toEqual([67]);
  });

  it("says when it will be done, and only then is", () => {
    const gatherer = chordGatherer(ms(50));
    expect(gatherer.closesAt()).toBeUndefined();
    gatherer.feed(on(60), ms(1000));
    const end = gatherer.closesAt()!;
    expect(end).toBeCloseTo(1.05, 9);
    expect(gatherer.tick(ms(1049))).toEqual([]);
    expect(brief(gatherer.tick(end))).toEqual([60]);
    expect(gatherer.closesAt()).toBeUndefined();
  });
});

/** Anything that two keyboards with two channels may send, time in ms since the last. */
const anyMessages = fc.array(
  fc.record({
    wait: fc.integer({ min: 0, max: 120 }),
    source: fc.constantFrom("a", "b"),
    channel: fc.constantFrom(0, 1),
    data: fc.oneof(
      { weight: 6, arbitrary: fc.tuple(fc.constantFrom(0x80, 0x90), fc.nat(3), fc.nat(2)) },
      { weight: 2, arbitrary: fc.tuple(fc.constant(0xb0), fc.constant(64), fc.nat(127)) },
      {
        weight: 1,
        arbitrary: fc.tuple(fc.constant(0xb0), fc.constantFrom(1, 120, 121, 123), fc.nat(127)),
      },
      { weight: 1, arbitrary: fc.tuple(fc.constant(0xe0), fc.nat(127), fc.nat(127)) },
    ),
  }),
  { maxLength: 60 },
);
type Message = (typeof anyMessages extends fc.Arbitrary<infer M> ? M : never)[number];

/** A second, plainer reading of the same messages: who holds what, key by key. */
class Keys {
  private readonly fingers = new Set<string>();
  private readonly sustained = new Set<string>();
  private readonly pedals = new Set<string>();
  take({ source, channel, data: [status, first, second] }: Message): void {
    const manual = `${source}${channel}`;
    const key = `${manual} ${first}`;
    const isHere = (each: string) => each.startsWith(manual);
    const clear = (keys: Set<string>) => [...keys].filter(isHere).forEach((k) => keys.delete(k));
    if (status === 0x90 && second > 0) this.fingers.add(key);
    else if (status === 0x80 || status === 0x90) {
      if (this.fingers.delete(key) && this.pedals.has(manual)) this.sustained.add(key);
    } else if (status === 0xb0 && first === 64 && second >= 64) this.pedals.add(manual);
    else if (status === 0xb0 && (first === 64 || first === 121)) {
      this.pedals.delete(manual);
      clear(this.sustained);
    } else if (status === 0xb0 && (first === 120 || first === 123)) {
      clear(this.sustained);
      clear(this.fingers);
    }
  }
  held(): number[] {
    const all = [...this.fingers, ...this.sustained].map((key) => Number(key.split(" ")[1]));
    return [...new Set(all)].sort((a, b) => a - b);
  }
}

/** Follows events as a listener would: what has begun and not yet ended. */
function follow(events: readonly PlayedEvent[], begun: Set<number>): void {
  for (const event of events) {
    if (event.kind === "release") {
      expect(begun.delete(event.midi)).toBe(true);
      continue;
    }
    const notes = event.kind === "note" ? [event.note] : event.notes;
    for (const { midi } of notes) {
      expect(begun.has(midi)).toBe(false);
      expect(event.held).toContain(midi);
      begun.add(midi);
    }
  }
}

describe("the gatherer of chords, whatever is played", () => {
  it("knows what is held, begins every note once and ends it once", () => {
    const property = fc.property(anyMessages, (messages) => {
      const gatherer = chordGatherer();
      const keys = new Keys();
      const begun = new Set<number>();
      let at = 0;
      for (const message of messages) {
        const [status, first, second] = message.data;
        at += message.wait;
        keys.take(message);
        const bytes = [status | message.channel, first, second];
        follow(gatherer.feed(bytes, ms(at), message.source), begun);
        expect(gatherer.held()).toEqual(keys.held());
      }
      follow(gatherer.tick(ms(at + 80.001)), begun);
      expect([...begun].sort((a, b) => a - b)).toEqual(keys.held());
    });
    fc.assert(property, { seed: 7, numRuns: 500 });
  });

  it("leaves nothing hanging once every key and pedal is let up", () => {
    const property = fc.property(anyMessages, (messages) => {
      const gatherer = chordGatherer();
      const begun = new Set<number>();
      for (const { source, channel, data } of messages)
        follow(gatherer.feed([data[0] | channel, data[1], data[2]], ms(0), source), begun);
      for (const { source, channel, data } of messages) {
        follow(gatherer.feed([0xb0 | channel, 64, 0], ms(1), source), begun);
        if (data[0] !== 0x90) continue;
        follow(gatherer.feed([0x80 | channel, data[1], 0], ms(1), source), begun);
      }
      expect(begun.size).toBe(0);
      expect(gatherer.held()).toEqual([]);
      expect(gatherer.closesAt()).toBeUndefined();
    });
    fc.assert(property, { seed: 7, numRuns: 500 });
  });

  it("never gathers a chord from notes more than the window apart", () => {
    const times = fc.uniqueArray(fc.integer({ min: 0, max: 600 }), { minLength: 1, maxLength: 40 });
    const property = fc.property(times, (unordered) => {
      const struck = [...unordered].sort((a, b) => a - b);
      const events = play(...struck.map((at, i) => [at, on(40 + i)] as const));
      const groups = brief(events).map((notes) => [notes].flat().map((midi) => struck[midi - 40]!));
      expect(groups.flat()).toEqual(struck);
      for (const group of groups) expect(group.at(-1)! - group[0]!).toBeLessThanOrEqual(80);
      for (const [i, group] of groups.entries())
        if (i > 0) expect(group[0]! - groups[i - 1]![0]!).toBeGreaterThanOrEqual(80);
    });
    fc.assert(property, { seed: 7 });
  });
});
