/**
 * Mutes: who takes which, what they cost by register, how much weight they leave.
 *
 * `weight` is the share of the open instrument's balance units: cup and Harmon after a proposal in
 * the trade notes (from memory, needs an ear check); straight, plunger and bucket are judgement
 * between the Harmon and a hat (0.7). Register costs are judgement: a mute adds resistance, so low
 * notes speak worse and soft high ones tire sooner.
 */
import { quantity, type Count, type Ratio, type Semitones } from "../base/index.ts";
import type { InstrumentId, MuteId } from "./band-types.ts";
import type { DynamicClass } from "./dynamics.ts";

/** One mute: who takes it and what it does to register and weight. */
export interface MuteRow {
  readonly id: MuteId;
  readonly name: string;
  readonly takenBy: readonly InstrumentId[];
  /** Added below this many semitones above the bottom of the compass. */
  readonly lowSpan: Semitones;
  readonly lowCost: Count;
  /** Added everywhere, by dynamic: what the mute cannot do. */
  readonly cost: Readonly<Record<DynamicClass, Count>>;
  readonly weight: Ratio;
  readonly source: string;
}

const brass: readonly InstrumentId[] = ["trumpet", "flugelhorn", "trombone", "bass-trombone"];

/** Open first. */
export const muteTable: readonly MuteRow[] = Object.freeze<MuteRow[]>([
  {
    id: "open",
    name: "open",
    takenBy: [
      ...brass,
      "horn",
      "tuba",
      "soprano-sax",
      "alto-sax",
      "tenor-sax",
      "baritone-sax",
      "flute",
      "clarinet",
      "bass-clarinet",
      "piano",
      "double-bass",
    ],
    lowSpan: quantity(0),
    lowCost: 0,
    cost: { f: 0, mf: 0, p: 0 },
    weight: 1,
    source: "definition of this project",
  },
  {
    id: "cup",
    name: "cup mute",
    takenBy: brass,
    lowSpan: quantity(6),
    lowCost: 1,
    cost: { f: 1, mf: 0, p: 0 },
    weight: 0.5,
    source: "weight from memory, costs judgement",
  },
  {
    id: "straight",
    name: "straight mute",
    takenBy: [...brass, "horn", "tuba"],
    lowSpan: quantity(5),
    lowCost: 1,
    cost: { f: 0, mf: 0, p: 0 },
    weight: 0.7,
    source: "judgement",
  },
  {
    id: "harmon",
    name: "Harmon mute, stem out",
    takenBy: ["trumpet", "flugelhorn", "trombone"],
    lowSpan: quantity(8),
    lowCost: 3,
    cost: { f: 3, mf: 1, p: 0 },
    weight: 0.35,
    source: "weight from memory, costs judgement",
  },
  {
    id: "plunger",
    name: "plunger, half closed",
    takenBy: ["trumpet", "trombone"],
    lowSpan: quantity(5),
    lowCost: 1,
    cost: { f: 0, mf: 0, p: 1 },
    weight: 0.6,
    source: "judgement",
  },
  {
    id: "bucket",
    name: "bucket mute",
    takenBy: brass,
    lowSpan: quantity(5),
    lowCost: 1,
    cost: { f: 1, mf: 0, p: 0 },
    weight: 0.7,
    source: "judgement",
  },
]);
