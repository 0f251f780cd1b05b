import type { Count } from "../../base/index.ts";

/** Channel 10 is percussion. Source: General MIDI Level 1. */
export const PERCUSSION_CHANNEL: Count = 10;
const CHANNELS: readonly Count[] = Object.freeze(
  Array.from({ length: 16 }, (_, index) => index + 1).filter((each) => each !== PERCUSSION_CHANNEL),
);

/**
 * MIDI channels of a score's parts: one each as long as there are any; in a larger score parts of
 * the same programme share one.
 * @param programs - General MIDI programme of each part, 1 to 128
 * @returns channels from 1 to 16, never 10, in the order of the parts
 * @source General MIDI Level 1 (channel 10 is percussion)
 */
export function midiChannels(programs: readonly Count[]): readonly Count[] {
  if (programs.length <= CHANNELS.length) return programs.map((_, index) => CHANNELS[index]!);
  const distinct = [...new Set(programs)];
  return programs.map((program) => CHANNELS[distinct.indexOf(program) % CHANNELS.length]!);
}
