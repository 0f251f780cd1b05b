import type { Count, ErbNumber, Hertz, SoundingMidi } from "../base/index.ts";
import { midiToHz } from "../base/index.ts";
import { hzToErbNumber } from "./erb.ts";
import { dbToPower } from "./levels.ts";
import { detectionRatio } from "./masked-threshold.ts";
import { channelGrowth, type ChannelGrowth } from "./iso532-2-specific-loudness.ts";

const LOWEST_MIDI = 16;
const HIGHEST_MIDI = 136;
/** Range over which the standard adds up loudness: its channels with half a step at both ends. */
const FIRST_CAM = 1.75;
const LAST_CAM = 38.95;

/**
 * The ear sampled where notes lie, once a semitone: fundamentals and most harmonics of tempered notes
 * fall on grid places, so that peaks of excitation are met exactly. Every list has one entry a
 * place.
 */
export interface EarGrid {
  readonly size: Count;
  readonly hz: Float64Array;
  /** First place that counts as an auditory channel, and the one after the last. */
  readonly firstChannel: Count;
  readonly endChannel: Count;
  /** Width of a channel's share of the loudness integral, Cam; 0 outside the standard's range. */
  readonly widthCam: Float64Array;
  readonly growth: readonly ChannelGrowth[];
  /** Ratio of signal to noise needed to be heard, as power. */
  readonly detection: Float64Array;
}

/** Width of each place by halves of the distances to its neighbours, cut to the standard's range. */
function channelWidths(cams: readonly number[]): Float64Array {
  const clip = (cam: number): number => Math.min(LAST_CAM, Math.max(FIRST_CAM, cam));
  return Float64Array.from(cams, (cam, index) => {
    const below = index > 0 ? (cams[index - 1]! + cam) / 2 : cam;
    const above = index < cams.length - 1 ? (cams[index + 1]! + cam) / 2 : cam;
    return clip(above) - clip(below);
  });
}

/**
 * Builds the grid for a tuning.
 * @param a4Hz - frequency of A4, 440 Hz unless given
 * @returns places from 20 Hz to 21 kHz, ascending
 * @source definition of this project, over the channels of ISO 532-2:2017
 */
export function earGrid(a4Hz: Hertz = 440 as Hertz): EarGrid {
  const hz = Float64Array.from({ length: HIGHEST_MIDI - LOWEST_MIDI + 1 }, (_, index) =>
    midiToHz((LOWEST_MIDI + index) as SoundingMidi, a4Hz),
  );
  const cams: ErbNumber[] = Array.from(hz, (value) => hzToErbNumber(value as Hertz));
  const widthCam = channelWidths(cams);
  const isChannel = [...widthCam].map((width) => width > 0);
  return {
    size: hz.length,
    hz,
    firstChannel: isChannel.indexOf(true),
    endChannel: isChannel.lastIndexOf(true) + 1,
    widthCam,
    growth: Array.from(hz, (value) => channelGrowth(value as Hertz)),
    detection: hz.map((value) => dbToPower(detectionRatio(value as Hertz))),
  };
}
