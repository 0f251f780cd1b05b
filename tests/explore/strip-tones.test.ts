import { describe, expect, it } from "vitest";
import { firstInquiry, readInquiry, type Inquiry } from "../../src/explore/index.ts";

const read = (change: Partial<Inquiry>) => readInquiry({ ...firstInquiry(), ...change });

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
