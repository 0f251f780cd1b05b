import { describe, expect, it } from "vitest";
import { preparedMud } from "../../src/acoustics/fast-mud.ts";
import { createHearingEngine } from "../../src/acoustics/hearing-engine.ts";
import { mud } from "../../src/acoustics/mud.ts";
import { hzOf, plainNote } from "./support/sounds.ts";

const engine = createHearingEngine();
const prepare = (midi: number) => engine.prepare(plainNote(hzOf(midi), 70));

describe("mud of prepared notes", () => {
  const mudOf = preparedMud();

  it("is that of their pitches, unisons counted once, in any order", () => {
    for (const stack of [
      [36, 40, 46, 50],
      [52, 58, 62, 67, 67],
      [50, 36, 40, 36],
    ]) {
      const exact = mud(stack.map(hzOf));
      const found = mudOf(stack.map(prepare));
      expect(found.value).toBe(exact.value);
      expect(found.verdict).toBe(exact.verdict);
      expect(found.pair).toEqual([exact.worst!.low, exact.worst!.high]);
    }
  });

  it("of one pitch is nothing", () => {
    expect(mudOf([prepare(40), prepare(40)])).toEqual({ value: 0, verdict: "clear", pair: null });
  });
});
