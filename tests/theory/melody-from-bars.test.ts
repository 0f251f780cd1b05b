import { describe, expect, it } from "vitest";
import fc from "fast-check";
import type { QuartersPerMinute } from "../../src/theory/index.ts";
import { melodyFromBars, type WrittenBar } from "../../src/theory/melody-from-bars.ts";
import { melodyOf } from "../phrase/support/phrases.ts";

const head = {
  title: "",
  metre: { beats: 4, beatType: 4 },
  key: { tonic: { letter: "C", alteration: 0 }, mode: "major" },
  tempo: 120 as QuartersPerMinute,
  style: "swing",
} as const;
const pitch = { letter: "C", alteration: 0, octave: 5 } as const;

describe("a melody from its bars", () => {
  it("takes a first bar that is too short for the pickup", () => {
    const melody = melodyOf("C5:1/2 D5:1/2 | E5:4 | F5:4");
    expect(melody.pickup).toBe(melody.division);
    expect(melody.length).toBe(9 * melody.division);
  });

  it("fills the last bar with a rest", () => {
    const melody = melodyOf("C5:4 | D5:1");
    expect(melody.length).toBe(8 * melody.division);
    expect(melody.pickup).toBe(0);
  });

  it("counts triplets exactly: three in the time of two", () => {
    const melody = melodyOf("C5:1/3 D5:1/3 E5:1/3 F5:3");
    expect(melody.division % 3).toBe(0);
    expect(melody.notes.map(({ onset }) => (3 * onset) / melody.division)).toEqual([0, 1, 2, 3]);
  });

  it("names the bar that is too long or too short, and by how much", () => {
    const bar = (quarters: number): WrittenBar => [{ pitch, length: [quarters, 1] }];
    const found = melodyFromBars(head, [bar(4), bar(5), bar(3), bar(4)]);
    if (found.ok) throw new Error("must be refused");
    expect(found.problems.map(({ message }) => message)).toEqual([
      "Bar 2 holds 5 beats, but 4/4 has room for 4.",
      "Bar 3 holds only 3 beats, but 4/4 has room for 4.",
    ]);
    expect(found.problems.map(({ code }) => code)).toEqual(["bar-long", "bar-short"]);
  });

  it("refuses a note without a length", () => {
    const found = melodyFromBars(head, [[{ pitch, length: [0, 1] }]]);
    expect(found).toMatchObject({ ok: false, problems: [{ code: "bar-length", bar: 1 }] });
  });

  it("keeps every length exactly, whatever fractions a bar is made of", () =>
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(2, 3, 4, 5, 6, 7, 8), { minLength: 4, maxLength: 4 }),
        (cuts) => {
          const bar: WrittenBar = cuts.flatMap((cut) =>
            Array.from({ length: cut }, () => ({ pitch, length: [1, cut] as const })),
          );
          const found = melodyFromBars(head, [bar]);
          if (!found.ok) throw new Error("must be fine");
          const { notes, division } = found.value;
          const lengths = cuts.flatMap((cut) => Array.from({ length: cut }, () => division / cut));
          expect(notes.map(({ duration }) => duration)).toEqual(lengths);
          expect(notes.at(-1)!.onset + notes.at(-1)!.duration).toBe(4 * division);
        },
      ),
      { seed: 7 },
    ));
});
