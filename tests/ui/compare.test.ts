import { describe, expect, it } from "vitest";
import { firstInquiry, readInquiry } from "../../src/explore/index.ts";
import { measureDifference } from "../../src/ui/kept/compare/measure-difference.ts";
import { moveWords, playerMoves } from "../../src/ui/parts/player-moves.ts";
import { voicingOf } from "../../src/ui/state/view-of.ts";
import { plainName } from "../../src/ui/words/pitch-names.ts";

const reading = readInquiry(firstInquiry());
if (!reading.ok) throw new Error("the first question cannot be read");
const { question } = reading;
const nameOf = (pitch: number) => ({ name: plainName(pitch), degree: "" });

describe("players of two voicings", () => {
  const from = voicingOf({ tpt1: 74, tpt2: 69, tbn1: 63 }, question);
  const to = voicingOf({ tpt1: 74, tpt2: 67, bari: 41 }, question);

  it("are named where they move, come in or rest, in the order of the line-up", () => {
    const moves = playerMoves(to, from);
    expect(moves.map(({ player }) => player.id)).toEqual(["tpt2", "tbn1", "bari"]);
    expect(moves.map((move) => moveWords(move, nameOf, nameOf))).toEqual([
      "A4 to G4, 2 semitones down",
      "rests",
      "comes in on F2",
    ]);
    expect(playerMoves(to, to)).toEqual([]);
  });
});

describe("the difference of a measure", () => {
  const measured = (value: number | null, text: string) => ({
    value,
    text,
    detail: "",
    notes: [],
    playerIds: [],
  });

  it("is written with the measure's decimals and adds up with the figures shown", () => {
    expect(measureDifference(measured(26, "26"), measured(33, "33"))).toBe("−7");
    expect(measureDifference(measured(0.376, "0.38"), measured(0.334, "0.33"))).toBe("+0.05");
    expect(measureDifference(measured(1612, "1610"), measured(1600, "1600"))).toBe("+10");
    expect(measureDifference(measured(11, "11 of 13"), measured(12, "12 of 13"))).toBe("−1");
    expect(measureDifference(measured(2.001, "2.00"), measured(2, "2.00"))).toBe("same");
    expect(measureDifference(measured(null, "none"), measured(2, "2.00"))).toBe("");
  });
});
