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

describe("the strip", () => {
  const choicesOf = (change: Partial<Inquiry>) =>
    Object.fromEntries(read(change).strip.map(({ degree, choice }) => [degree, choice]));

  it("names the twelve tones from the root up, spelled for the chord", () => {
    // Common practice, no single source: the spellings over F.
    const names = read({ chordText: "F13" }).strip.map(({ name }) => name);
    expect(names).toEqual("F Gb G Ab A Bb B C Db D Eb E".split(" "));
  });

  it("ticks what the preset says, and the user's changes on top", () => {
    expect(choicesOf({ chordText: "F13" })).toMatchObject({ "13": "on", b9: "off" });
    const changed = choicesOf({
      chordText: "F13",
      toneChoices: { 1: "on", 9: "required", 2: "off" },
    });
    expect(changed).toMatchObject({ b9: "on", "13": "required", "9": "off" });
  });

  it("turns natural into altered tones on dominants", () => {
    const altered = choicesOf({ chordText: "C7", melodyText: "Bb4", colour: "altered" });
    expect(altered).toMatchObject({ b9: "on", "#9": "on", "#11": "on", b13: "on", "5": "off" });
  });

  it("goes into the question: what is required is ticked too", () => {
    const reading = read({ toneChoices: { 1: "required" } });
    expect(reading.ok && reading.question.required).toEqual([1]);
    expect(reading.ok && reading.question.ticked).toContain(1);
  });

  it("is empty where there is no chord", () => {
    expect(read({ chordText: "N.C." }).strip).toEqual([]);
  });

  it("stays readable while the melody is not", () => {
    expect(read({ melodyText: "" }).strip).toHaveLength(12);
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
