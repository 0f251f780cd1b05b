import type { Voicing } from "../voicing/index.ts";
import { brightness } from "./brightness.ts";
import { chordClarity } from "./chord-clarity.ts";
import { criticalBandSpacing } from "./critical-band-spacing.ts";
import { density } from "./density.ts";
import { densityCompression } from "./density-compression.ts";
import { distinctNotes } from "./distinct-notes.ts";
import { heardPlayers } from "./heard-players.ts";
import { interleaving } from "./interleaving.ts";
import { loudness } from "./loudness.ts";
import { lowWeight } from "./low-weight.ts";
import { meanGap } from "./mean-gap.ts";
import type { Measured, Metric, Situation } from "./metric.ts";
import { mud } from "./mud.ts";
import { players } from "./players.ts";
import { roughness } from "./roughness.ts";
import { span } from "./span.ts";
import { weight } from "./weight.ts";
import { widestGap } from "./widest-gap.ts";

/** Every measure, in the order in which the page shows them. One line a measure. */
export const metrics: readonly Metric[] = Object.freeze([
  span,
  distinctNotes,
  density,
  meanGap,
  widestGap,
  densityCompression,
  criticalBandSpacing,
  players,
  weight,
  lowWeight,
  interleaving,
  loudness,
  heardPlayers,
  mud,
  roughness,
  brightness,
  chordClarity,
]);

/** A measure and what it says of one voicing. */
export interface Reading {
  readonly metric: Metric;
  readonly measured: Measured;
}

/**
 * Measures a voicing with every metric.
 * @param voicing - who sounds what
 * @param situation - chord, lead, dynamic
 * @param using - which metrics; all of them unless given
 * @returns one reading a metric, in order
 */
export function measureAll(
  voicing: Voicing,
  situation: Situation,
  using: readonly Metric[] = metrics,
): readonly Reading[] {
  return using.map((metric) => ({ metric, measured: metric.measure(voicing, situation) }));
}
