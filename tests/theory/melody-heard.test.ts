import { expect, it } from "vitest";
import { heardNotes } from "../../src/theory/melody-heard.ts";
import { melodyOf } from "../phrase/support/phrases.ts";

it("joins tied notes and keeps the names of all that are written", () => {
  const melody = melodyOf("r:3 C5:1~ | C5:4~ | C5:1/2 D5:1/2 r:3");
  const heard = heardNotes(melody);
  expect(heard.map(({ writtenIds }) => writtenIds)).toEqual([["n1", "n2", "n3"], ["n4"]]);
  expect(heard[0]?.duration).toBe(5.5 * melody.division);
  expect(heard.map(({ sounding }) => sounding)).toEqual([72, 74]);
});

it("does not join notes of the same pitch that are not tied", () =>
  expect(heardNotes(melodyOf("C5:2 C5:2"))).toHaveLength(2));
