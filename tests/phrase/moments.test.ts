import { describe, expect, it } from "vitest";
import { harmonise } from "../../src/phrase/harmonise.ts";
import { momentsOf, secondsOf } from "../../src/phrase/moments.ts";
import type { NoteChoices } from "../../src/phrase/harmony-types.ts";
import { at, melodyOf, read } from "./support/phrases.ts";

function moments(text: string, choices: NoteChoices = {}) {
  const melody = melodyOf(text);
  const found = harmonise(melody, read(melody), choices);
  if (!found.ok) throw new Error(found.problems[0]?.message);
  return momentsOf(found.value, read(melody).changes);
}

describe("moments", () => {
  it("are one a note where the chord stays", () =>
    expect(moments("C5:2@C6 E5:2").map(({ id }) => id)).toEqual(["n1", "n2"]));

  it("cut a held note where the chord changes under it", () => {
    const found = moments("C5:4@F6 | E5:2@C6 E5:2~ | E5:4@Am7");
    expect(found.map(({ id, chord, isHeld }) => `${id} ${chord.symbol} ${isHeld}`)).toEqual([
      "n1 F6 false",
      "n2 C6 false",
      "n3 C6 false",
      "n3+1 Am7 true",
    ]);
  });

  it("do not cut an anticipation at the chord it takes", () => {
    const found = moments("C5:7/2@C6 A4:1/2~ | A4:4@F6");
    expect(found.map(({ chord }) => chord.symbol)).toEqual(["C6", "F6"]);
  });

  it("do not cut lines", () =>
    expect(moments("C5:4~@C6 | C5:4@F6", { n1: { texture: "unison" } })).toHaveLength(1));

  it("know the silence before them", () => {
    const [, second] = moments("C5:1@C6 r:1 E5:2");
    const division = melodyOf("C5:1@C6 r:1 E5:2").division;
    expect(second?.restBefore).toBe(division);
  });

  it("move as a block where the approach is chromatic", () => {
    const found = moments("C5:1/2@C6 D#5:1/2 E5:3", { n2: { technique: "chromatic" } });
    expect(found.map(({ movesAsBlock }) => movesAsBlock)).toEqual([false, true, false]);
  });

  it("fill the melody's sounding time exactly", () => {
    const found = moments("C5:3/2@C6 D5:1/2 E5:2~ | E5:1@Am7 r:1 C5:2@F6");
    const time = found.reduce((sum, { duration }) => sum + duration, 0);
    expect(time).toBe(7 * melodyOf("C5:1/2 C5:7/2").division);
  });
});

it("tells musical time in seconds: four quarters at 120 are two", () =>
  expect(secondsOf(at(4), { division: 1, tempo: melodyOf("C5:1").tempo })).toBe(2));
