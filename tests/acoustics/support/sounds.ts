import {
  harmonicSpectrum,
  type Spectrum,
  type SpectrumPartial,
} from "../../../src/acoustics/index.ts";
import { midiToHz, type DbSpl, type Hertz, type SoundingMidi } from "../../../src/base/index.ts";
import { seededChance } from "../../../src/base/index.ts";

/** A sine of a level. */
export const sine = (hz: number, level: number): SpectrumPartial => ({
  hz: hz as Hertz,
  dbSpl: level as DbSpl,
});

/** Frequency of a pitch. */
export const hzOf = (midi: number): Hertz => midiToHz(midi as SoundingMidi);

/** Noise as partials in mid-cell of power-exact cells, 10 Hz wide unless given. */
export function noise(
  low: number,
  high: number,
  dbPerHz: (hz: number) => number,
  cell = 10,
): Spectrum {
  const count = Math.max(1, Math.round((high - low) / cell));
  const width = (high - low) / count;
  return Array.from({ length: count }, (_none, index) => {
    const hz = low + (index + 0.5) * width;
    return sine(hz, dbPerHz(hz) + 10 * Math.log10(width));
  });
}

/** 20 harmonics with amplitudes 1/n and a total level, as the reference figures were made. */
export const plainNote = (hz: number, level: number): Spectrum =>
  harmonicSpectrum({
    fundamental: hz as Hertz,
    harmonics: 20,
    level: level as DbSpl,
    amplitude: (harmonic) => 1 / harmonic,
  });

/** Sines with pressures instead of levels; a pressure of 1 is 0 dB. */
export const pressures = (hz: readonly number[], amplitudes: readonly number[]): Spectrum =>
  hz.map((value, index) => sine(value, 20 * Math.log10(amplitudes[index] ?? 1)));

/** Exact harmonics of a fundamental with given pressures. */
export const harmonics = (
  hz: number,
  count: number,
  amplitude: (harmonic: number) => number,
): Spectrum =>
  pressures(
    Array.from({ length: count }, (_none, index) => hz * (index + 1)),
    Array.from({ length: count }, (_none, index) => amplitude(index + 1)),
  );

/** Notes with random pitch, level, slope and formant, some of them out of tune; always the same. */
export function randomNotes(count: number, seed: number): readonly Spectrum[] {
  const chance = seededChance(seed);
  return Array.from({ length: count }, (_none, index) => {
    const detune = index % 4 === 3 ? (chance() - 0.5) * 0.3 : 0;
    const hz = hzOf(36 + Math.floor(chance() * 48) + detune);
    const level = 50 + chance() * 45;
    const slope = -3 - chance() * 15;
    const formant = 300 + chance() * 1500;
    const shape = (partial: number): number => {
      const octaves = Math.log2((hz * partial) / formant);
      return octaves > 0 ? slope * octaves : 3 * octaves - chance() * 4;
    };
    const harmonicCount = Math.min(40, Math.floor(12000 / hz));
    return harmonicSpectrum({
      fundamental: hz,
      harmonics: harmonicCount,
      level: level as DbSpl,
      amplitude: (partial) => 10 ** (shape(partial) / 20),
    });
  });
}

/** Draws 13 notes, some perhaps twice, as often as asked. */
export function randomVoicings(
  notes: number,
  count: number,
  seed: number,
): readonly (readonly number[])[] {
  const chance = seededChance(seed);
  return Array.from({ length: count }, () =>
    Array.from({ length: 13 }, () => Math.floor(chance() * notes)),
  );
}
