/**
 * How strong each instrument is: sound power level in dB re 1 pW of a steady note, from ppp to fff
 * in eight steps, in its middle register; and how far other registers differ, soft and loud.
 *
 * Source of the forte levels and of the widest pp to ff of single notes: J. Meyer, Acoustics and the
 * Performance of Music, 5th ed. 2009, values from memory (forte: flute 91, clarinet 93, horn 102,
 * trumpet 101, trombone 101, tuba 104, double bass 92; single notes: flute 67-101, clarinet 57-106,
 * horn 65-117, trumpet 78-111, trombone 73-113, tuba 77-112, double bass 66-100). The usual pp to ff
 * range of 25 to 30 dB: Rindel 2014 on the data of Burghauser and Spelda. The steps between, and all
 * of ppp and fff, are judgement. Saxophones: ff 100-105, pp 75-80, flugelhorn 3 to 6 dB under the
 * trumpet, weak values from memory: no table was found.
 *
 * Registers: [sounding MIDI note, dB at pp, dB at ff]; straight lines between, level outside.
 * Brass: pp rises 1 dB every three semitones above the middle, ff level in the two middle octaves
 * (value from memory), weak low and strong high trumpet after the trade's own words. Flute: two
 * openings small against the wavelength radiate as simple sources, whose power at equal volume flow
 * grows with the square of the frequency, 6.02 dB an octave (N. H. Fletcher and T. D. Rossing, The
 * Physics of Musical Instruments, 2nd ed. 1998, simple sources and flutes; P. M. Morse and K. U.
 * Ingard, Theoretical Acoustics, 1968). That the flow stays about equal over the range follows N. H.
 * Fletcher, Acoustical correlates of flute performance technique, J. Acoust. Soc. Am. 57, 1975
 * (pressure rises as the lips close; value from memory). The low octave is "not heard without a
 * microphone" (Jazz arranging tutorial), so the line is carried down to the bottom; above C7 the
 * player has no more breath and it flattens (judgement).
 */
import type { Db } from "../base/index.ts";
import type { Dynamic, InstrumentId } from "./band-types.ts";

type ByDynamic = Readonly<Record<Dynamic, number>>;

/** Strength of one instrument. */
export interface SoundPowerRow {
  /** dB re 1 pW in the middle register. */
  readonly levels: ByDynamic;
  /** Sounding MIDI note, dB to add at pp, dB to add at ff; ascending. */
  readonly registers: readonly (readonly [midi: number, atPp: number, atFf: number])[];
  /** Added towards the listener: below 0 when the bell looks away. */
  readonly facing: Db | 0;
  readonly source: string;
}

const levels = (
  ...steps: readonly [number, number, number, number, number, number, number, number]
): ByDynamic => {
  const [ppp, pp, p, mp, mf, f, ff, fff] = steps;
  return Object.freeze({ ppp, pp, p, mp, mf, f, ff, fff });
};

const MEYER = "forte and limits after Meyer 2009, from memory; steps judgement";
const WEAK = "value from memory, weak; steps judgement";
const OURS = "judgement";

const saxRegisters = (bottom: number): SoundPowerRow["registers"] => [
  [bottom, 2, 0],
  [bottom + 6, 0, 0],
  [bottom + 24, 0, 0],
  [bottom + 31, 3, 1],
];

/** Strength by instrument. */
export const soundPowerTable: Readonly<Record<InstrumentId, SoundPowerRow>> = Object.freeze({
  trumpet: {
    levels: levels(78, 81, 86, 90.5, 95, 101, 107, 110),
    registers: [
      [52, -4, -5],
      [57, -2, -3],
      [62, 0, 0],
      [71, 0, 0],
      [77, 2, 0],
      [86, 5, 2],
    ],
    facing: 0,
    source: MEYER,
  },
  flugelhorn: {
    levels: levels(76, 79, 83, 87, 91, 96.5, 102, 105),
    registers: [
      [52, -3, -4],
      [57, -1, -2],
      [62, 0, 0],
      [71, 0, 0],
      [80, 3, 0],
    ],
    facing: 0,
    source: WEAK,
  },
  trombone: {
    levels: levels(74, 78, 84, 89.5, 95, 101, 108, 112),
    registers: [
      [40, -2, -2],
      [46, 0, 0],
      [58, 0, 0],
      [65, 2, 0],
      [72, 5, 2],
    ],
    facing: 0,
    source: MEYER,
  },
  "bass-trombone": {
    levels: levels(75, 79, 84.5, 90, 95.5, 101, 108, 112),
    registers: [
      [34, -2, -2],
      [41, 0, 0],
      [53, 0, 0],
      [65, 4, 0],
    ],
    facing: 0,
    source: "as the trombone, judgement",
  },
  horn: {
    levels: levels(70, 75, 83, 90, 96, 102, 109, 113),
    registers: [
      [35, -4, -6],
      [48, 0, -1],
      [53, 0, 0],
      [65, 0, 0],
      [77, 5, 1],
    ],
    facing: -4 as Db,
    source: "as Meyer; 4 dB off for a bell that looks away from the listener is judgement",
  },
  tuba: {
    levels: levels(76, 80, 86, 92, 98, 104, 109, 111),
    registers: [
      [29, -2, -2],
      [34, 0, 0],
      [50, 0, 0],
      [65, 4, -1],
    ],
    facing: 0,
    source: MEYER,
  },
  "soprano-sax": {
    levels: levels(74, 77, 82, 87, 92, 97, 102, 105),
    registers: saxRegisters(56),
    facing: 0,
    source: WEAK,
  },
  "alto-sax": {
    levels: levels(74, 77, 82.5, 88, 93, 98, 103, 106),
    registers: saxRegisters(49),
    facing: 0,
    source: WEAK,
  },
  "tenor-sax": {
    levels: levels(75, 78, 83.5, 88.5, 93.5, 98.5, 103.5, 106),
    registers: saxRegisters(44),
    facing: 0,
    source: WEAK,
  },
  "baritone-sax": {
    levels: levels(75, 78, 83.5, 88.5, 93.5, 98.5, 103.5, 106),
    registers: [[36, 1, 1], ...saxRegisters(37).slice(1)],
    facing: 0,
    source: WEAK,
  },
  flute: {
    levels: levels(70, 74, 79, 83, 87, 91, 95, 97),
    registers: [
      [60, -9.5, -9.5],
      [67, -6, -6],
      [79, 0, 0],
      [91, 6, 5],
      [98, 8, 6],
    ],
    facing: 0,
    source: "forte after Meyer 2009, from memory; 6 dB an octave: simple sources of equal flow",
  },
  clarinet: {
    levels: levels(64, 69, 77, 83, 88, 93, 98, 101),
    registers: [
      [50, 0, 1],
      [62, 0, 0],
      [66, 0, -2],
      [69, 0, 0],
      [82, 1, 1],
      [89, 6, 2],
    ],
    facing: 0,
    source: MEYER,
  },
  "bass-clarinet": {
    levels: levels(63, 68, 75.5, 81, 86, 91, 96, 99),
    registers: [
      [37, 0, 1],
      [52, 0, 0],
      [55, 0, -2],
      [60, 0, -1],
      [77, 4, 0],
    ],
    facing: 0,
    source: "two dB under the clarinet, judgement",
  },
  piano: {
    levels: levels(66, 70, 76, 81, 86, 92, 98, 101),
    registers: [
      [21, 0, 0],
      [60, 0, 0],
      [108, -8, -8],
    ],
    facing: 0,
    source: OURS,
  },
  "double-bass": {
    levels: levels(68, 71, 76, 80, 84, 88, 92, 94),
    registers: [
      [28, -2, -2],
      [33, 0, 0],
      [55, 0, -2],
    ],
    facing: 0,
    source: "plucked, 4 dB under Meyer's forte of the bowed bass (from memory), judgement",
  },
} satisfies Record<InstrumentId, SoundPowerRow>);
