import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dynamics } from "../../src/band/index.ts";
import { weightByThird } from "../../src/metrics/weight-by-third.ts";
import { someVoicing, voicingOf } from "../voicing/techniques/questions.ts";

describe("weight by thirds of the span", () => {
  it("counts the borders of the thirds to the middle", () => {
    const voicing = voicingOf("tpt1=C5 tpt2=G4 tbn1=D4 tbn2=A3");
    expect(weightByThird(voicing, "f")).toEqual({ low: 4, middle: 8, high: 4, total: 16 });
  });

  it("puts unison in the middle", () =>
    expect(weightByThird(voicingOf("tpt1=C5 tpt2=C5"), "f").middle).toBe(8));

  it("adds up to the total at every dynamic", () =>
    fc.assert(
      fc.property(someVoicing, fc.constantFrom(...dynamics), (voicing, dynamic) => {
        const { low, middle, high, total } = weightByThird(voicing, dynamic);
        expect(low + middle + high).toBeCloseTo(total, 9);
      }),
      { seed: 7 },
    ));
});
