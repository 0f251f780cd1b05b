import { describe, expect, it } from "vitest";
import { verdictOf } from "../../src/acoustics/audibility-verdict.ts";
import type { Db } from "../../src/base/index.ts";

describe("a margin in words", () => {
  it.each([
    [-10, "buried", "buried"],
    [-3.1, "buried", "buried"],
    [-2.9, "uncertain", "buried"],
    [0, "uncertain", "covered"],
    [2.9, "uncertain", "covered"],
    [3, "covered", "covered"],
    [4.9, "covered", "covered"],
    [5, "clear", "clear"],
    [40, "clear", "clear"],
  ])("of %f dB is %s, leaning %s", (margin, verdict, leaning) => {
    expect(verdictOf(margin as Db)).toEqual({ verdict, leaning });
  });
});
