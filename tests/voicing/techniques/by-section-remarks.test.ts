import { describe, expect, it } from "vitest";
import { makePlayer } from "../../../src/band/index.ts";
import {
  cautionOf,
  remarksOn,
  restNote,
  saxLeadRemark,
} from "../../../src/voicing/techniques/by-section-remarks.ts";
import { chordOf, pitch, players, voicingOf } from "./questions.ts";

describe("remarks on a by-section voicing", () => {
  it("say what had to give", () => {
    const player = makePlayer({ seat: "tpt4" });
    const remarks = remarksOn(
      {
        placements: [],
        moved: [{ pitch: pitch("Eb3"), instead: pitch("Eb4") }, { pitch: pitch("C2") }],
        leftOut: [pitch("A3")],
        displaced: [{ player, sounding: pitch("D4") }],
        resting: [player],
      },
      "trumpets",
      chordOf("F13"),
    );
    expect(remarks).toEqual([
      "E♭3 is out of reach of the trumpets and sounds as E♭4.",
      "C2 is out of reach of the trumpets and is left out.",
      "A3 is left out: nobody is free.",
      "Trumpet 4 takes D4 instead.",
      "Trumpet 4 rests: no note in reach.",
    ]);
  });

  it("say where the first sax doubles the lead", () => {
    const say = (text: string) => saxLeadRemark(voicingOf(text), pitch("D5"));
    expect(say("tpt1=D5 alto1=D4 alto2=A4")).toEqual(["Alto 1 an octave under the lead."]);
    expect(say("tpt1=D5 alto1=D5")).toEqual(["Alto 1 with the lead."]);
    expect(say("tpt1=D5 alto1=C5")).toEqual([]);
    expect(say("tpt1=D5")).toEqual([]);
  });

  it("warn of soft trumpets above the staff (D. Berger: no pp above the staff)", () => {
    const high = voicingOf("tpt1=A5");
    expect(cautionOf(high, "pp")).toHaveLength(1);
    expect(cautionOf(high, "f")).toEqual([]);
    expect(cautionOf(voicingOf("tpt1=D5"), "pp")).toEqual([]);
  });

  it("name who rests in a line", () => {
    const horns = players("three-horn");
    expect(restNote(horns, { placements: [] })).toMatch(/^Out of reach of: Trumpet/);
    expect(restNote([], { placements: [] })).toBe("");
  });
});
