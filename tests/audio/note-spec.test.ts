import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import type { Seconds } from "../../src/base/index.ts";
import { dynamicOnCurve, noteKey } from "../../src/audio/note-spec.ts";
import type { NoteSpec } from "../../src/audio/note-spec.ts";

const spec: NoteSpec = {
  sound: { kind: "pitched", instrument: "trumpet", sounding: soundingMidi(69), mute: "open" },
  duration: 2 as Seconds,
  curve: [
    { at: 0 as Seconds, dynamic: "p" },
    { at: 2 as Seconds, dynamic: "ff" },
  ],
  seed: 3,
};

describe("the key of a note", () => {
  it("is equal for equal notes and differs in everything that is heard", () => {
    expect(noteKey({ ...spec })).toBe(noteKey(spec));
    const others: readonly NoteSpec[] = [
      { ...spec, seed: 4 },
      { ...spec, duration: 3 as Seconds },
      { ...spec, curve: [{ at: 0 as Seconds, dynamic: "p" }] },
      { ...spec, sound: { kind: "cymbal", cymbal: "hi-hat" } },
      { ...spec, sound: { ...spec.sound, mute: "cup" } as NoteSpec["sound"] },
    ];
    const keys = new Set([spec, ...others].map(noteKey));
    expect(keys.size).toBe(others.length + 1);
  });
});

describe("the dynamic on a curve", () => {
  it("runs evenly between two points and holds beyond them", () => {
    const at = (time: number): number => dynamicOnCurve(spec.curve, time as Seconds);
    expect(at(0)).toBe(2);
    expect(at(1)).toBe(4);
    expect(at(2)).toBe(6);
    expect(at(9)).toBe(6);
  });

  it("holds a single point all along", () => {
    const one = [{ at: 0 as Seconds, dynamic: "mf" as const }];
    expect(dynamicOnCurve(one, 0 as Seconds)).toBe(4);
    expect(dynamicOnCurve(one, 5 as Seconds)).toBe(4);
  });
});
