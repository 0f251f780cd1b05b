import { lineUps } from "../band/index.ts";
import { allRules } from "../voicing/index.ts";
import type { Inquiry } from "./inquiry.ts";

/**
 * The question a first visit finds answered: F13 under D5 for a big band at f.
 * @returns a fresh inquiry
 */
export function firstInquiry(): Inquiry {
  const bigBand = lineUps.find((each) => each.id === "big-band");
  if (!bigBand) throw new RangeError("the big band is missing from the table of line-ups");
  return {
    chordText: "F13",
    melodyText: "D5",
    dynamic: "f",
    lineUpName: bigBand.name,
    players: bigBand.players,
    colour: "tensions",
    toneChoices: {},
    bassSounds: true,
    rules: allRules,
    strictLowIntervals: false,
    clusterSetting: false,
    shortNote: false,
    homes: true,
    locks: [],
  };
}
