import { describe, expect, it } from "vitest";
import { lineUpById } from "../../src/band/index.ts";
import { soundingMidi } from "../../src/base/index.ts";
import { firstInquiry, readInquiry, type Inquiry } from "../../src/explore/index.ts";

const read = (change: Partial<Inquiry>) => readInquiry({ ...firstInquiry(), ...change });

function problemsWith(change: Partial<Inquiry>) {
  const reading = read(change);
  return reading.ok ? [] : reading.problems;
}

describe("the first question", () => {
  it("can be answered: F13 under D5 for thirteen horns", () => {
    const reading = readInquiry(firstInquiry());
    expect(reading.ok && reading.question).toMatchObject({ lead: 74, dynamic: "f" });
    expect(reading.ok && reading.question.players).toHaveLength(13);
  });
});

describe("what a user may get wrong", () => {
  const [trumpet] = firstInquiry().players;
  if (trumpet === undefined) throw new Error("the big band has a first trumpet");
  const fixed = (sounding: number) => ({ playerId: "tpt1", sounding: soundingMidi(sounding) });

  it.each<readonly [string, Partial<Inquiry>, string, string]>([
    ["an unknown chord", { chordText: "H7" }, "chord", ""],
    ["no chord at all", { chordText: "" }, "chord", ""],
    ["a melody note without an octave", { melodyText: "D" }, "melody", "pitch-octave-missing"],
    ["a melody note nobody reaches", { melodyText: "C8" }, "melody", "melody-out-of-reach"],
    ["an empty line-up", { players: [] }, "line-up", "line-up-empty"],
    [
      "a range upside down",
      { players: [{ ...trumpet, range: { low: trumpet.range.high, high: trumpet.range.low } }] },
      "line-up",
      "range-upside-down",
    ],
    ["a player held to two notes", { locks: [fixed(74), fixed(69)] }, "locks", "locks-contradict"],
    ["a player held to a note out of range", { locks: [fixed(30)] }, "locks", "lock-out-of-range"],
    [
      "somebody fixed who is not there",
      { locks: [{ playerId: "tuba1", sounding: "rest" }] },
      "locks",
      "lock-unknown-player",
    ],
    ["a player fixed to a tone that is off", { locks: [fixed(73)] }, "locks", "lock-not-in-chord"],
  ])("is told at its field in one sentence: %s", (_name, change, field, code) => {
    const problems = problemsWith(change);
    expect(problems).toHaveLength(1);
    expect(problems[0]?.field).toBe(field);
    if (code !== "") expect(problems[0]?.code).toBe(code);
    expect(problems[0]?.message).toMatch(/^[A-Z“].*[.]$/);
  });

  it("is told at every field at once", () => {
    const fields = problemsWith({ chordText: "H7", melodyText: "?" }).map(({ field }) => field);
    expect(fields).toEqual(["chord", "melody"]);
  });
});

describe("every line-up", () => {
  it.each(["big-band", "school-band", "six-horn", "four-horn", "three-horn"])(
    "%s can be asked",
    (id) => {
      const lineUp = lineUpById(id);
      if (!lineUp.ok) throw new Error(lineUp.problem.message);
      expect(read({ players: lineUp.value.players, melodyText: "C5" }).ok).toBe(true);
    },
  );
});
