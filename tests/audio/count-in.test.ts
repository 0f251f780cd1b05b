import { describe, expect, it } from "vitest";
import { usualCountIn } from "../../src/audio/index.ts";
import { countIn } from "../../src/audio/count-in.ts";
import { at, melodyOf } from "../phrase/support/phrases.ts";

describe("counting in", () => {
  const four = melodyOf("C5:4 | C5:4", { tempo: 120 });

  it("is two bars, or one where it is slow", () => {
    expect(usualCountIn(melodyOf("C5:4", { tempo: 168 }))).toBe(2);
    expect(usualCountIn(melodyOf("C5:4", { tempo: 66 }))).toBe(1);
  });

  it("strokes every beat of a bar of four", () =>
    expect(countIn(four, at(0), 1, "mf").strokes.map(({ onset }) => onset)).toEqual([
      0, 0.5, 1, 1.5,
    ]));

  it("counts dotted beats in six eighths", () => {
    const six = melodyOf("C5:3", { tempo: 120, metre: { beats: 6, beatType: 8 } });
    const { strokes, seconds } = countIn(six, at(0), 2, "mf");
    expect(strokes.map(({ onset }) => onset)).toEqual([0, 0.75, 1.5, 2.25]);
    expect(seconds).toBe(3);
  });

  it("is shorter where the music begins inside a bar", () =>
    expect(countIn(four, at(four.division), 1, "mf").seconds).toBe(0.5));

  it("is silent when nobody counts", () =>
    expect(countIn(four, at(0), 0, "mf")).toEqual({ strokes: [], seconds: 0 }));
});
