/**
 * Line-ups to start from; all can be edited. Order: trumpets, trombones, saxes. Big band 5-4-4 is
 * common practice; the smaller groups are the usual ones of three to six horns. No single source.
 */
import type { Count } from "../base/index.ts";
import type { PlayerLevel, SeatId } from "./band-types.ts";

/** One line-up by its chairs. */
export interface LineUpRow {
  readonly id: string;
  readonly name: string;
  readonly level: PlayerLevel;
  readonly seats: readonly SeatId[];
}

const bigBandSeats: readonly SeatId[] = [
  "tpt1",
  "tpt2",
  "tpt3",
  "tpt4",
  "tbn1",
  "tbn2",
  "tbn3",
  "btbn",
  "alto1",
  "alto2",
  "tenor1",
  "tenor2",
  "bari",
];

/** The line-ups that come with the program. */
export const lineUpTable: readonly LineUpRow[] = Object.freeze<LineUpRow[]>([
  { id: "big-band", name: "Big band", level: "pro", seats: bigBandSeats },
  { id: "school-band", name: "School big band", level: "school", seats: bigBandSeats },
  {
    id: "six-horn",
    name: "Six horns",
    level: "pro",
    seats: ["tpt1", "tpt2", "tbn1", "alto1", "tenor1", "bari"],
  },
  {
    id: "four-horn",
    name: "Four horns",
    level: "pro",
    seats: ["tpt1", "tbn1", "alto1", "tenor1"],
  },
  { id: "three-horn", name: "Three horns", level: "pro", seats: ["tpt1", "tbn1", "tenor1"] },
]);

/** More players than this are refused. */
export const MOST_PLAYERS: Count = 24;
