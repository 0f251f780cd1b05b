import { describe, expect, it } from "vitest";
import { markedCurve } from "../../src/audio/marked-curve.ts";
import { quantity, type Seconds } from "../../src/base/index.ts";

const half = quantity<Seconds>(0.5);

describe("the loudness of a marked note", () => {
  it("is level without a mark", () =>
    expect(markedCurve("mf", [], half)).toEqual([{ at: 0, dynamic: "mf" }]));

  it("bites and settles a step lower under an accent, within the note", () => {
    expect(markedCurve("f", ["accent"], half)).toEqual([
      { at: 0, dynamic: "f" },
      { at: 0.18, dynamic: "mf" },
    ]);
    expect(markedCurve("f", ["marcato"], quantity<Seconds>(0.1)).at(-1)?.at).toBe(0.06);
  });

  it("dies away at the end of a fall and swells into a scoop", () => {
    const fall = markedCurve("f", ["fall"], half);
    expect(fall.map(({ dynamic }) => dynamic)).toEqual(["f", "f", "p"]);
    expect(fall.at(-1)?.at).toBe(0.5);
    expect(markedCurve("f", ["scoop"], half)[0]?.dynamic).toBe("mp");
  });

  it("stays on the row of dynamics", () =>
    expect(markedCurve("ppp", ["fall"], half).at(-1)?.dynamic).toBe("ppp"));
});
