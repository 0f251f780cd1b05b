/**
 * What is easy at each level, in written pitch as players name it, by chair. `null` means that no
 * limit is stated and the end of the chair's own range holds.
 *
 * Brass tops of the school row: US Army Field Band grading page, grade 1-2 (trumpet G5, trombone
 * D4), and C. Clark's clinic on the middle school lead trumpet, which agrees. The other rows of the
 * big band are a proposal from memory, to be reviewed by a band director. Rows of doubles and other
 * winds are judgement. Professional rows that would cut into the chair's range are left open
 * (baritone top E6): there the last zone of the chair already has its price.
 */
import type { Count } from "../base/index.ts";
import type { PlayerLevel, SeatId } from "./band-types.ts";

type Limits = readonly [low: string | null, high: string | null];
/** Lowest and highest easy written pitch by level. */
export type LevelRow = Readonly<Record<PlayerLevel, Limits>>;

const row = (school: Limits, semiPro: Limits, pro: Limits): LevelRow =>
  Object.freeze({ school, "semi-pro": semiPro, pro });
const top = (school: string, semiPro: string, pro: string | null): LevelRow =>
  row([null, school], [null, semiPro], [null, pro]);

const trumpet = top("E5", "A5", "C6");
const trombone = top("D4", "F4", "Bb4");
const alto = top("D6", "F6", "F#6");
const tenor = top("C6", "E6", "F6");
const open = row([null, null], [null, null], [null, null]);

/** Limits by chair. */
export const levelTable: Readonly<Record<SeatId, LevelRow>> = Object.freeze({
  tpt1: top("G5", "C6", "E6"),
  tpt2: trumpet,
  tpt3: trumpet,
  tpt4: trumpet,
  tbn1: top("F4", "A4", "C5"),
  tbn2: trombone,
  tbn3: trombone,
  btbn: row(["F2", "D4"], ["Bb1", "F4"], ["F1", null]),
  alto1: alto,
  alto2: alto,
  tenor1: tenor,
  tenor2: tenor,
  bari: row(["Bb3", "G5"], ["A3", "C6"], ["A3", null]),
  flugel1: top("E5", "G5", "Bb5"),
  sop1: top("C6", "Eb6", "F6"),
  fl1: top("C6", "A6", null),
  cl1: top("C6", "E6", null),
  bcl1: top("C6", "E6", null),
  hn1: row(["C4", "F5"], ["G3", "A5"], [null, null]),
  tuba1: row(["F1", "Bb3"], ["F1", "D4"], [null, null]),
  piano: open,
  bass: open,
});

/** A note this many semitones outside the level's row is out of reach, not just dear. Judgement. */
export const SEMITONES_OUT_OF_REACH: Count = 3;
