import { describe, expect, it } from "vitest";
import { quantity, type SoundingMidi } from "../../src/base/index.ts";
import { lineUpById } from "../../src/band/index.ts";
import { readChord, tickedTones } from "../../src/theory/index.ts";
import { AssignmentVariants } from "../../src/voicing/assignment-variants.ts";
import { CandidateRows } from "../../src/voicing/candidate-rows.ts";
import { buildInstance } from "../../src/voicing/instance.ts";
import { allRules, type Question } from "../../src/voicing/index.ts";

const chord = readChord("F13");
const band = lineUpById("six-horn");
if (!chord.ok || !band.ok) throw new Error("must be readable");
const question: Question = {
  chord: chord.value,
  lead: quantity<SoundingMidi>(74),
  players: band.value.players,
  dynamic: "f",
  ticked: tickedTones(chord.value, "tensions"),
  required: [],
  bassSounds: true,
  rules: allRules,
  strictLowIntervals: false,
  clusterSetting: false,
  shortNote: false,
  homes: true,
  locks: [{ playerId: "bari", sounding: quantity<SoundingMidi>(53) }],
};
const built = buildInstance(question);
if (!built.ok) throw new Error(built.problem.message);
const instance = built.value;
const at = (midi: number) => instance.candidates.indexOf(midi);

// D5 A4 Eb4 A3 F3: two trumpets on D5, trombone on Eb4, alto on A4, tenor on A3, baritone on F3.
const stack = Int32Array.from([74, 69, 63, 57, 53], at);
const places = Int32Array.from([0, 0, 2, 1, 3, 4]);

describe("variants of an assignment", () => {
  const variants = new AssignmentVariants(instance, instance.playerCost);
  const found = variants.of({ stack, notes: 5, places }, 1000);

  it("keep every note of the stack and the number of players", () => {
    for (const variant of found) {
      expect(new Set(variant.places)).toEqual(new Set(places));
      expect(variant.places.filter((place) => place >= 0)).toHaveLength(6);
    }
  });

  it("leave held players alone", () => {
    for (const variant of found) expect(variant.places[5]).toBe(4);
  });

  it("come cheapest first, none twice, none the same", () => {
    const costs = found.map(({ more }) => more);
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
    const keys = found.map((variant) => variant.places.join());
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys).not.toContain(places.join());
  });

  it("are cut off where asked", () =>
    expect(variants.of({ stack, notes: 5, places }, 3)).toEqual(found.slice(0, 3)));
});

describe("rows of candidates", () => {
  it("grow past their first room and come back as they went in", () => {
    const rows = new CandidateRows(question, instance);
    for (let n = 0; n < 300; n++) rows.add(stack, places, n, 300 - n);
    const { count, pitches, over, texture, players } = rows.finish();
    expect(count).toBe(300);
    expect(players).toBe(6);
    expect([...pitches.subarray(299 * 6)]).toEqual([74, 74, 63, 69, 57, 53]);
    expect(over[299]).toBe(299);
    expect(texture[0]).toBe(300);
  });
});
