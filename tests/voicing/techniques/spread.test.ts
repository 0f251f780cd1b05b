import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spreadsFromBass, spreadsFromLead } from "../../../src/voicing/index.ts";
import { chordOf, pitch, pitches, plain, someChord, someLead } from "./questions.ts";

const parts = fc.constantFrom(4 as const, 5 as const);

describe("spread voicings", () => {
  it("from a bass start on the root only", () =>
    expect(spreadsFromBass(chordOf("C6"), pitch("D3"), 4, plain(chordOf("C6")))).toEqual([]));

  it("from a lead carry it on top, the root low", () => {
    const chord = chordOf("F13");
    expect(spreadsFromLead(chord, pitch("D5"), 5, plain(chord))[0]).toEqual(
      pitches("F2 Eb3 A3 G4 D5"),
    );
  });

  it("make room for a lead that is itself the third", () => {
    const chord = chordOf("C7");
    expect(spreadsFromLead(chord, pitch("E4"), 4, plain(chord))).toEqual([pitches("C2 Bb2 G3 E4")]);
  });

  it("keep Lindsay's spacing: neighbours within an octave, no semitone on top, more than an octave in all", () =>
    fc.assert(
      fc.property(someChord, someLead, parts, ({ chord, options }, lead, count) => {
        for (const stack of spreadsFromLead(chord, lead, count, options)) {
          const gaps = stack.slice(1).map((one, index) => one - (stack[index] ?? 0));
          expect(stack).toHaveLength(count);
          expect(stack.at(-1)).toBe(lead);
          expect((stack[0] ?? 0) % 12).toBe(chord.rootPitchClass);
          expect(Math.min(...gaps)).toBeGreaterThan(0);
          expect(Math.max(...gaps)).toBeLessThanOrEqual(12);
          expect(gaps.at(-1)).toBeGreaterThan(1);
          expect(lead - (stack[0] ?? 0)).toBeGreaterThan(12);
        }
      }),
      { seed: 7 },
    ));

  it("move in octaves with the bass", () =>
    fc.assert(
      fc.property(someChord, parts, ({ chord, options }, count) => {
        const low = spreadsFromBass(chord, (48 + chord.rootPitchClass) as never, count, options);
        const high = spreadsFromBass(chord, (60 + chord.rootPitchClass) as never, count, options);
        const shapes = (stacks: typeof low, octave: number) =>
          stacks.map((stack) => stack.map((one) => one - octave).join(" ")).sort();
        expect(shapes(high, 12)).toEqual(shapes(low, 0));
      }),
      { seed: 7 },
    ));
});
