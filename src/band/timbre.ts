import { midiToHz, quantity, type DbSpl, type Hertz } from "../base/index.ts";
import type { Partial, TimbreRequest } from "./band-types.ts";
import { voiceTable } from "./envelope-table.ts";
import { interpolate } from "./interpolate.ts";
import { hornMutePoints, muteCurveTable, muteStretch } from "./mute-curve-table.ts";
import { envelopeDb, envelopeOf } from "./spectral-envelope.ts";
import { steadyLevelOf } from "./steady-level.ts";

/** Distance at which levels are stated, in metres, in a free field. */
export const TIMBRE_DISTANCE_METRES = 1;

/** Partials above this frequency are left out. */
const HIGHEST_HZ = 12_000;
/** Partials this far under the strongest are left out. */
const FAINTEST_DB = -70;

/** Frequencies of the partials; strings are stiff, so theirs spread upwards. */
function frequenciesOf({ instrument, sounding }: TimbreRequest): readonly number[] {
  const fundamental = midiToHz(sounding);
  const { stiffness } = voiceTable[instrument];
  const b = stiffness
    ? 2 **
      interpolate(
        sounding,
        stiffness.map(([midi]) => midi),
        stiffness.map(([, value]) => Math.log2(value)),
        "extend",
      )
    : 0;
  const found: number[] = [];
  for (let n = 1; ; n += 1) {
    const hz = n * fundamental * Math.sqrt((1 + b * n * n) / (1 + b));
    if (hz > HIGHEST_HZ) return found;
    found.push(hz);
  }
}

/** What the mute adds at a frequency, in dB, before the note is set to its level. */
function muteShape({ instrument, mute }: TimbreRequest): ((hz: number) => number) | undefined {
  if (mute === "open") return undefined;
  const points = instrument === "horn" ? hornMutePoints : muteCurveTable[mute].points;
  const stretch = muteStretch[instrument] ?? 1;
  const places = points.map(([hz]) => Math.log2(hz * stretch));
  const values = points.map(([, db]) => db);
  return (hz) => interpolate(Math.log2(hz), places, values, "hold");
}

function shapeOf(request: TimbreRequest, frequencies: readonly number[]): readonly number[] {
  const envelope = envelopeOf(request.instrument, request.sounding, request.dynamic);
  const mute = muteShape(request);
  return frequencies.map((hz, index) => {
    const even = index % 2 === 1 ? envelope.evenCut(Math.log2(hz)) : 0;
    return envelopeDb(envelope, quantity<Hertz>(hz)) + even + (mute ? mute(hz) : 0);
  });
}

/**
 * Partials of a steady note: what the ear is given and what the analysis listens to.
 * @param request - instrument, sounding pitch, dynamic, mute, and trim for a stronger player
 * @returns partials by ascending frequency, dB SPL one metre away in a free field; none above
 *   12 kHz, none 70 dB or more under the strongest. Their powers add up to steadyLevelOf(request)
 * @source levels: sound-power-table.ts; spectra: envelope-table.ts; mutes: mute-curve-table.ts
 * @example
 * partialsOf({ instrument: "trumpet", sounding: soundingMidi(69), dynamic: "f", mute: "open" })
 */
export function partialsOf(request: TimbreRequest): readonly Partial[] {
  const frequencies = frequenciesOf(request);
  const shape = shapeOf(request, frequencies);
  const top = Math.max(...shape);
  const kept = shape.map((db) => db - top > FAINTEST_DB);
  let power = 0;
  for (const [index, db] of shape.entries()) if (kept[index]) power += 10 ** (db / 10);
  const gain = steadyLevelOf(request) - 10 * Math.log10(power);
  const partials: Partial[] = [];
  for (const [index, hz] of frequencies.entries())
    if (kept[index])
      partials.push({
        hz: quantity<Hertz>(hz),
        dbSpl: quantity<DbSpl>((shape[index] ?? 0) + gain),
      });
  return partials;
}
