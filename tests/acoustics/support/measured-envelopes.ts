import type { Spectrum } from "../../../src/acoustics/index.ts";
import { hzOf, sine } from "./sounds.ts";

/**
 * Mean spectral envelopes, Hz and dB, measured on an open set of steady orchestral tones (G. J.
 * Sandell, SHARC), one player an instrument. Between points straight lines over log Hz.
 */
const ENVELOPES = {
  trumpet: [
    [200, -18],
    [250, -19],
    [315, -12],
    [400, -9],
    [500, -13],
    [630, -9],
    [800, -9],
    [1000, -6],
    [1250, -7],
    [1600, -9],
    [2000, -12],
    [2500, -15],
    [3150, -18],
    [4000, -27],
    [5000, -35],
    [6300, -42],
    [8000, -52],
  ],
  trombone: [
    [125, -18],
    [160, -14],
    [200, -12],
    [250, -12],
    [315, -13],
    [400, -9],
    [500, -7],
    [630, -7],
    [800, -8],
    [1000, -10],
    [1250, -14],
    [1600, -19],
    [2000, -25],
    [2500, -33],
    [3150, -43],
    [4000, -53],
  ],
  flute: [
    [315, -5],
    [630, -1],
    [1000, -9],
    [2000, -22],
    [4000, -47],
  ],
} as const satisfies Record<string, readonly (readonly [hz: number, db: number])[]>;

const BELOW_DB_PER_OCTAVE = 6;
const ABOVE_DB_PER_OCTAVE = -22;

function envelopeAt(points: readonly (readonly [number, number])[], hz: number): number {
  const octave = (from: number, to: number): number => Math.log2(to / from);
  const next = points.findIndex(([place]) => place >= hz);
  if (next === 0) return points[0]![1] + BELOW_DB_PER_OCTAVE * octave(points[0]![0], hz);
  if (next === -1) {
    const [place, value] = points[points.length - 1]!;
    return value + ABOVE_DB_PER_OCTAVE * octave(place, hz);
  }
  const [low, lowDb] = points[next - 1]!;
  const [high, highDb] = points[next]!;
  return lowDb + ((highDb - lowDb) * octave(low, hz)) / octave(low, high);
}

/** A note with a measured mean envelope and a total level in dB SPL. */
export function envelopeNote(
  instrument: keyof typeof ENVELOPES,
  midi: number,
  level: number,
): Spectrum {
  const fundamental = hzOf(midi);
  const count = Math.min(40, Math.floor(10000 / fundamental));
  const shape = Array.from({ length: count }, (_none, index) =>
    envelopeAt(ENVELOPES[instrument], fundamental * (index + 1)),
  );
  const total = 10 * Math.log10(shape.reduce((sum, db) => sum + 10 ** (db / 10), 0));
  return shape.map((db, index) => sine(fundamental * (index + 1), db - total + level));
}
