/**
 * Chairs: what each can sound, what a register costs there, where it mostly lies. Sounding MIDI
 * note numbers.
 *
 * Zones: [top, cost at f, at mf, at p]; a zone reaches from the one before up to its top, included.
 * 1 = just preferred, 3 = usually otherwise, 6 = needs a reason, 10 and more = last resort.
 *
 * The thirteen chairs of a big band: tops after published handbook ranges and level tables (many
 * from memory, to be reviewed by a band director), costs and homes are judgement; trumpets high and
 * soft are dear because they do not exist (D. Berger, "Notes from the Trumpet Section").
 * Doubles, other winds and rhythm: the compass of instrument-table.ts; costs and homes are judgement.
 */
import type { Count } from "../base/index.ts";
import type { InstrumentId, SeatId } from "./band-types.ts";

/** Top of a register zone and its cost at f, mf and p. */
export type ZoneRow = readonly [top: number, atF: number, atMf: number, atP: number];

/** One chair. */
export interface SeatRow {
  readonly id: SeatId;
  /** Name without the number of the chair. */
  readonly stem: string;
  readonly shortStem: string;
  readonly instrument: InstrumentId;
  readonly chair: Count;
  readonly range: readonly [low: number, high: number];
  readonly zones: readonly ZoneRow[];
  readonly home: readonly [low: number, high: number];
  readonly source: string;
}

const BIG_BAND = "tops published or from memory, costs and homes judgement";
const OWN = "judgement";

const leadTrumpetZones: readonly ZoneRow[] = [
  [57, 6, 4, 3],
  [77, 0, 0, 1],
  [79, 1, 2, 6],
  [82, 2, 4, 10],
  [86, 6, 9, 14],
];
const trumpetZones = leadTrumpetZones.slice(0, 4);
const leadTromboneZones: readonly ZoneRow[] = [
  [45, 3, 3, 4],
  [65, 0, 0, 0],
  [67, 2, 2, 4],
  [70, 4, 5, 8],
  [72, 8, 9, 12],
];
const tromboneZones = leadTromboneZones.slice(0, 4);
const altoZones: readonly ZoneRow[] = [
  [53, 5, 5, 9],
  [75, 0, 0, 0],
  [78, 2, 3, 5],
  [80, 5, 6, 9],
];
const tenorZones: readonly ZoneRow[] = [
  [48, 4, 4, 8],
  [70, 0, 0, 0],
  [73, 2, 3, 5],
  [75, 5, 6, 9],
];

type Chair = [
  id: SeatId,
  stem: string,
  shortStem: string,
  instrument: InstrumentId,
  chair: number,
  range: SeatRow["range"],
  home: SeatRow["home"],
  zones: readonly ZoneRow[],
];

const bigBand: readonly Chair[] = [
  ["tpt1", "Trumpet", "Tpt", "trumpet", 0, [52, 86], [67, 79], leadTrumpetZones],
  ["tpt2", "Trumpet", "Tpt", "trumpet", 1, [52, 82], [64, 76], trumpetZones],
  ["tpt3", "Trumpet", "Tpt", "trumpet", 2, [52, 82], [62, 74], trumpetZones],
  ["tpt4", "Trumpet", "Tpt", "trumpet", 3, [52, 82], [60, 72], trumpetZones],
  ["tbn1", "Trombone", "Tbn", "trombone", 0, [40, 72], [55, 66], leadTromboneZones],
  ["tbn2", "Trombone", "Tbn", "trombone", 1, [40, 70], [52, 64], tromboneZones],
  ["tbn3", "Trombone", "Tbn", "trombone", 2, [40, 70], [50, 62], tromboneZones],
  [
    "btbn",
    "Bass trombone",
    "B. Tbn",
    "bass-trombone",
    3,
    [34, 65],
    [36, 50],
    [
      [60, 0, 0, 0],
      [65, 3, 3, 5],
    ],
  ],
  ["alto1", "Alto", "Alto", "alto-sax", 0, [49, 80], [62, 76], altoZones],
  ["alto2", "Alto", "Alto", "alto-sax", 1, [49, 80], [59, 72], altoZones],
  ["tenor1", "Tenor", "Ten", "tenor-sax", 0, [44, 75], [55, 67], tenorZones],
  ["tenor2", "Tenor", "Ten", "tenor-sax", 1, [44, 75], [50, 64], tenorZones],
  [
    "bari",
    "Baritone",
    "Bari",
    "baritone-sax",
    0,
    [36, 68],
    [38, 54],
    [
      [41, 0, 1, 4],
      [63, 0, 0, 0],
      [66, 2, 3, 5],
      [68, 5, 6, 9],
    ],
  ],
];

const others: readonly Chair[] = [
  [
    "flugel1",
    "Flugelhorn",
    "Flg",
    "flugelhorn",
    0,
    [52, 80],
    [62, 74],
    [
      [57, 5, 3, 2],
      [74, 0, 0, 1],
      [77, 2, 3, 6],
      [80, 5, 6, 10],
    ],
  ],
  [
    "sop1",
    "Soprano",
    "Sop",
    "soprano-sax",
    0,
    [56, 87],
    [66, 80],
    [
      [60, 5, 5, 9],
      [82, 0, 0, 0],
      [85, 2, 3, 5],
      [87, 5, 6, 9],
    ],
  ],
  [
    "fl1",
    "Flute",
    "Fl",
    "flute",
    0,
    [60, 98],
    [74, 88],
    [
      [71, 8, 6, 2],
      [76, 3, 2, 0],
      [91, 0, 0, 1],
      [93, 1, 2, 4],
      [98, 5, 6, 9],
    ],
  ],
  [
    "cl1",
    "Clarinet",
    "Cl",
    "clarinet",
    0,
    [50, 89],
    [69, 81],
    [
      [64, 2, 1, 0],
      [68, 3, 2, 2],
      [82, 0, 0, 0],
      [86, 2, 3, 5],
      [89, 5, 6, 9],
    ],
  ],
  [
    "bcl1",
    "Bass clarinet",
    "B. Cl",
    "bass-clarinet",
    0,
    [37, 77],
    [40, 56],
    [
      [52, 1, 0, 0],
      [56, 3, 2, 2],
      [70, 2, 1, 1],
      [77, 5, 6, 8],
    ],
  ],
  [
    "hn1",
    "Horn",
    "Hn",
    "horn",
    0,
    [35, 77],
    [55, 67],
    [
      [47, 5, 4, 3],
      [70, 0, 0, 1],
      [74, 2, 3, 6],
      [77, 5, 6, 9],
    ],
  ],
  [
    "tuba1",
    "Tuba",
    "Tba",
    "tuba",
    0,
    [29, 65],
    [34, 48],
    [
      [53, 0, 0, 0],
      [58, 2, 2, 4],
      [65, 6, 7, 10],
    ],
  ],
  ["piano", "Piano", "Pno", "piano", 0, [21, 108], [21, 108], [[108, 0, 0, 0]]],
  ["bass", "Bass", "Bass", "double-bass", 0, [28, 55], [28, 55], [[55, 0, 0, 0]]],
];

const rowFrom =
  (source: string) =>
  ([id, stem, shortStem, instrument, chair, range, home, zones]: Chair): SeatRow =>
    Object.freeze({ id, stem, shortStem, instrument, chair, range, zones, home, source });

/** In the order of a score line-up: trumpets, trombones, saxes, then the others. */
export const seatTable: readonly SeatRow[] = Object.freeze([
  ...bigBand.map(rowFrom(BIG_BAND)),
  ...others.map(rowFrom(OWN)),
]);
