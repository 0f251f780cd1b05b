/**
 * Spectral envelopes: level of a partial by its frequency, in dB against the envelope's highest
 * point, at stated frequencies, dynamics and (where it matters) pitches. Between them straight
 * lines: in dB over log frequency, over pitch and over the dynamic's place. A fixed envelope per
 * dynamic met the published trombone figures in all three registers, so brass has one; reeds and
 * flute change with register.
 *
 * How the numbers came about: least squares, so that the notes of a register have the octave-band
 * levels and the amplitude-weighted centroid measured in recordings, with the envelope's maximum
 * held at the published formant, rounded to 1 dB. Measurements: own analysis of an open set of
 * orchestral samples by dynamic (one player an instrument; trombone, saxophone, horn, clarinets,
 * flute) and of SHARC (G. Sandell; one moderate-loud dynamic; trumpet, tuba, plucked bass). Formants:
 * Meyer ch. 3 (horn 340 Hz), table after Sengpiel (trumpet 1200, trombone 520, bass trombone 370,
 * tuba 230 Hz). "Transferred": no recording by dynamic was at hand, so the trombone's change with
 * dynamic is applied, stretched by the ratio of the formants. Typical values, some ±3 dB.
 */
import type { Dynamic, InstrumentId } from "./band-types.ts";

/** Even partials of a closed cylindrical tube: weakened, less so up the compass and up in Hz. */
export interface EvenCut {
  /** Sounding MIDI notes, ascending, and the cut in dB there. */
  readonly midi: readonly number[];
  readonly db: readonly number[];
  /** Whole cut below the first, none above the second frequency. */
  readonly fadeHz: readonly [from: number, to: number];
}

/** One family of envelopes. */
export interface EnvelopeRow {
  /** Ascending. */
  readonly hz: readonly number[];
  /** From soft to loud. */
  readonly dynamics: readonly Dynamic[];
  /** Sounding MIDI notes that the blocks of `db` belong to, ascending. */
  readonly midi: readonly number[];
  /** A block a pitch, in it a line a dynamic, in it a value a frequency. */
  readonly db: readonly (readonly (readonly number[])[])[];
  readonly evenCut?: EvenCut;
  readonly source: string;
}

const trombone: EnvelopeRow = {
  hz: [60, 120, 250, 520, 1000, 2000, 4000, 8000],
  dynamics: ["pp", "mf", "f", "ff"],
  midi: [58],
  db: [
    [
      [-1, -1, -3, 0, -10, -32, -58, -75],
      [-13, -8, -3, 0, -5, -15, -36, -65],
      [-20, -11, -2, 0, -3, -10, -25, -46],
      [-19, -11, -3, 0, -1, -7, -17, -30],
    ],
  ],
  source: "fitted to sample set, low, middle and high register; formant 520 Hz published",
};

const saxophone: EnvelopeRow = {
  hz: [150, 300, 500, 1000, 1800, 3000, 5000, 9000],
  dynamics: ["pp", "f", "ff"],
  midi: [56, 70, 79],
  db: [
    [
      [0, -3, -6, -18, -30, -41, -53, -67],
      [0, -5, -8, -10, -14, -21, -33, -51],
      [0, -4, -7, -9, -12, -19, -30, -46],
    ],
    [
      [0, -4, -7, -13, -23, -37, -52, -70],
      [0, -4, -7, -10, -12, -18, -31, -49],
      [0, -4, -7, -9, -11, -17, -29, -46],
    ],
    [
      [0, -7, -12, -20, -29, -41, -53, -66],
      [0, -3, -6, -9, -13, -19, -28, -42],
      [0, -3, -6, -9, -12, -18, -27, -40],
    ],
  ],
  source: "fitted to sample set (size not stated, compass fits the alto); ff smoothed to follow f",
};

const clarinet: EnvelopeRow = {
  hz: [150, 300, 600, 1200, 2000, 3500, 6000, 10000],
  dynamics: ["pp", "p", "f", "ff"],
  midi: [58, 72, 84],
  db: [
    [
      [-4, 0, -10, -26, -39, -57, -72, -87],
      [-3, 0, -7, -19, -32, -50, -67, -83],
      [0, 0, -4, -7, -13, -27, -44, -60],
      [0, 0, -4, -7, -11, -22, -38, -53],
    ],
    [
      [0, -13, -26, -41, -56, -73, -88, -103],
      [0, -8, -16, -26, -35, -54, -74, -93],
      [0, -2, -5, -9, -14, -28, -46, -64],
      [-12, -7, -2, 0, -9, -23, -40, -56],
    ],
    [
      [0, -8, -18, -30, -42, -60, -78, -95],
      [0, -6, -13, -22, -32, -50, -70, -90],
      [0, -2, -5, -9, -14, -28, -46, -64],
      [0, -2, -4, -7, -11, -23, -40, -57],
    ],
  ],
  evenCut: { midi: [62, 70, 78, 82], db: [24, 16, 4, 0], fadeHz: [700, 3000] },
  source: "fitted to sample set, low and middle register; high register judgement",
};

const flute: EnvelopeRow = {
  hz: [260, 520, 800, 1500, 3000, 6000],
  dynamics: ["pp", "mf", "f", "ff"],
  midi: [66, 79],
  db: [
    [
      [0, -5, -17, -36, -59, -81],
      [-5, 0, 0, -15, -33, -49],
      [-10, -3, 0, -11, -30, -50],
      [-11, -4, 0, -9, -28, -46],
    ],
    [
      [0, -8, -12, -21, -40, -63],
      [0, -4, -7, -13, -32, -55],
      [0, -6, -10, -17, -34, -53],
      [0, -4, -8, -14, -31, -50],
    ],
  ],
  source: "fitted to sample set, low and middle register up to f; ff judgement",
};

/** Envelopes by the instrument that they were made for. */
export const envelopeTable = Object.freeze({
  trombone,
  trumpet: {
    hz: [165, 330, 600, 1200, 2000, 3200, 5000, 8000],
    dynamics: ["pp", "mf", "f", "ff"],
    midi: [67],
    db: [
      [
        [0, -2, -6, -5, -17, -34, -52, -73],
        [-6, -3, -4, 0, -9, -18, -30, -48],
        [-12, -5, -3, 0, -7, -15, -24, -38],
        [-11, -5, -4, 0, -5, -13, -20, -31],
      ],
    ],
    source: "f after SHARC centroids and envelope, formant 1200 Hz published; others transferred",
  },
  flugelhorn: {
    hz: [165, 400, 800, 1350, 2000, 3000, 6000],
    dynamics: ["pp", "mf", "f", "ff"],
    midi: [66],
    db: [
      [
        [0, -6, -4, -19, -34, -52, -86],
        [-4, -4, 0, -12, -21, -33, -61],
        [-8, -3, 0, -9, -18, -28, -50],
        [-7, -4, 0, -7, -16, -24, -42],
      ],
    ],
    source: "trumpet stretched to a formant of 800 Hz and 3 dB an octave steeper, from memory",
  },
  "bass-trombone": {
    hz: [50, 100, 210, 430, 830, 1660, 3320, 6640],
    dynamics: ["pp", "mf", "f", "ff"],
    midi: [46],
    db: trombone.db,
    source: "transferred; formant 430 Hz between the published 370 and SHARC's peak at 500 Hz",
  },
  horn: {
    hz: [60, 120, 200, 340, 600, 1000, 2000, 4000],
    dynamics: ["p", "mf", "ff"],
    midi: [56],
    db: [
      [
        [-30, -18, -8, 0, -10, -32, -58, -79],
        [-30, -18, -8, 0, -7, -27, -52, -75],
        [-30, -18, -8, 0, -4, -18, -29, -43],
      ],
    ],
    source: "fitted to sample set; formant 340 Hz and 12 dB an octave below it: Meyer ch. 3",
  },
  tuba: {
    hz: [40, 80, 160, 230, 400, 800, 1600, 3200],
    dynamics: ["pp", "mf", "f", "ff"],
    midi: [42],
    db: [
      [
        [-4, -4, -3, 0, -12, -44, -67, -74],
        [-4, -4, -3, 0, -10, -36, -56, -68],
        [-4, -4, -3, 0, -9, -33, -50, -58],
        [-4, -4, -3, 0, -8, -31, -46, -50],
      ],
    ],
    source: "f after SHARC, formant 230 Hz published; others transferred at 0.55 of the change",
  },
  saxophone,
  flute,
  clarinet,
  "bass-clarinet": {
    hz: [75, 150, 300, 600, 1200, 2400, 5000],
    dynamics: ["pp", "mf", "ff"],
    midi: [46],
    db: [
      [
        [0, -3, -7, -14, -26, -45, -67],
        [0, -5, -9, -14, -20, -32, -56],
        [0, -4, -8, -13, -19, -30, -52],
      ],
    ],
    evenCut: { midi: [52, 62, 72], db: [28, 14, 0], fadeHz: [500, 2500] },
    source: "fitted to sample set, low register",
  },
  piano: {
    hz: [60, 130, 260, 520, 1000, 2000, 4000, 8000],
    dynamics: ["pp", "f"],
    midi: [36, 60, 84],
    db: [
      [
        [-6, 0, -4, -11, -22, -36, -56, -78],
        [-8, 0, -1, -5, -12, -22, -38, -56],
      ],
      [
        [0, 0, 0, -9, -21, -37, -58, -80],
        [0, 0, 0, -4, -11, -22, -38, -56],
      ],
      [
        [0, 0, 0, 0, 0, -20, -42, -66],
        [0, 0, 0, 0, 0, -14, -30, -48],
      ],
    ],
    source: "judgement: no formant, brighter with key speed",
  },
  "double-bass": {
    hz: [40, 80, 160, 320, 640, 1300, 2600],
    dynamics: ["pp", "f"],
    midi: [40],
    db: [
      [
        [-6, 0, -7, -18, -37, -56, -74],
        [-6, 0, -5, -14, -31, -48, -64],
      ],
    ],
    source: "f after SHARC plucked centroids and the 70 to 250 Hz formant; pp judgement",
  },
} satisfies Record<string, EnvelopeRow>);

/** Which envelope an instrument uses, and how far it lies from the one it was made for. */
export interface VoiceRow {
  readonly envelope: keyof typeof envelopeTable;
  /** 0.8 puts what lies at 1000 Hz in the envelope at 800 Hz. */
  readonly stretch: number;
  /** Semitones from the compass of the envelope's instrument to this one's. */
  readonly shift: number;
  /** String stiffness at two sounding MIDI notes, log-linear between; none for winds. */
  readonly stiffness?: readonly (readonly [midi: number, b: number])[];
  readonly source: string;
}

const own = (envelope: VoiceRow["envelope"]): VoiceRow => ({
  envelope,
  stretch: 1,
  shift: 0,
  source: "own envelope",
});
const UNSW = "UNSW: breaks of the envelope near 800 Hz (tenor) and 1200 Hz (soprano)";

/**
 * Voices by instrument. Saxophones share one envelope, stretched by the break of the spectrum;
 * the alto's 1000 Hz is inferred by length, from memory. Stiffness of
 * piano strings: 2e-4 (C2), 4e-4 (C4), 1e-2 (C7), from memory; of bass strings: judgement.
 */
export const voiceTable: Readonly<Record<InstrumentId, VoiceRow>> = Object.freeze({
  trumpet: own("trumpet"),
  flugelhorn: own("flugelhorn"),
  trombone: own("trombone"),
  "bass-trombone": own("bass-trombone"),
  horn: own("horn"),
  tuba: own("tuba"),
  "soprano-sax": { envelope: "saxophone", stretch: 1.2, shift: 7, source: UNSW },
  "alto-sax": own("saxophone"),
  "tenor-sax": { envelope: "saxophone", stretch: 0.8, shift: -5, source: UNSW },
  "baritone-sax": {
    envelope: "saxophone",
    stretch: 0.7,
    shift: -12,
    source: "judgement: between the tenor's 0.8 and the 0.575 that its length would give",
  },
  flute: own("flute"),
  clarinet: own("clarinet"),
  "bass-clarinet": own("bass-clarinet"),
  piano: {
    ...own("piano"),
    stiffness: [
      [36, 2e-4],
      [60, 4e-4],
      [96, 1e-2],
    ],
  },
  "double-bass": {
    ...own("double-bass"),
    stiffness: [
      [28, 4e-5],
      [55, 4e-5],
    ],
  },
});
