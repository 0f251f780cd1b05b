import type { Hertz } from "../base/index.ts";
import type { InstrumentId } from "../band/index.ts";

/** Band of the noise that comes with a tone. */
export interface NoiseColour {
  readonly low: Hertz;
  readonly high: Hertz;
}

const colour = (low: number, high: number): NoiseColour =>
  Object.freeze({ low: low as Hertz, high: high as Hertz });

/**
 * Where breath, reed, bow and hammer noise lies. Order-of-magnitude figures, value from memory of
 * descriptions in J. Backus, The Acoustical Foundations of Music, and M. Campbell and C. Greated,
 * The Musician's Guide to Acoustics: narrow and low for large brass, wide and high for the flute.
 */
export const NOISE_COLOURS: Readonly<Record<InstrumentId, NoiseColour>> = Object.freeze({
  trumpet: colour(1000, 6000),
  flugelhorn: colour(800, 4000),
  trombone: colour(500, 3500),
  "bass-trombone": colour(400, 3000),
  horn: colour(400, 3000),
  tuba: colour(250, 2000),
  "soprano-sax": colour(1500, 7000),
  "alto-sax": colour(1200, 6500),
  "tenor-sax": colour(900, 6000),
  "baritone-sax": colour(600, 5000),
  flute: colour(1500, 9000),
  clarinet: colour(1200, 6000),
  "bass-clarinet": colour(800, 5000),
  piano: colour(200, 2500),
  "double-bass": colour(200, 2500),
});
