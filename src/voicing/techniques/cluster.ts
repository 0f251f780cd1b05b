import type { Count, SoundingMidi } from "../../base/index.ts";
import type { Chord } from "../../theory/index.ts";
import { aboveRoot, type TechniqueOptions } from "./categories.ts";

/**
 * Cluster: the ticked tones right below the lead, a whole tone or more under it at first, so that
 * seconds lie next to each other.
 * @param chord - the chord as read
 * @param lead - melody note, sounding
 * @param voices - how many notes, three or more
 * @param options - ticked tones
 * @returns pitches low to high; undefined when the ticked tones lie too far apart for two seconds
 * @throws RangeError for fewer than three voices
 * @source G. Lindsay, Jazz Arranging Techniques (2005): two or more groups of adjacent seconds
 */
export function clusterVoicing(
  chord: Chord,
  lead: SoundingMidi,
  voices: Count,
  options: TechniqueOptions,
): readonly SoundingMidi[] | undefined {
  if (voices < 3) throw new RangeError(`a cluster has three voices or more, got ${voices}`);
  const stack: SoundingMidi[] = [lead];
  for (let pitch = lead - 2; pitch > lead - 12 && stack.length < voices; pitch--)
    if (options.ticked.includes(aboveRoot(chord, pitch as SoundingMidi)))
      stack.unshift(pitch as SoundingMidi);
  return stack.length === voices && isCluster(stack) ? stack : undefined;
}

/**
 * Tells whether a stack is a cluster: at least two seconds, and more than half of its gaps are
 * seconds.
 * @param stack - distinct pitches, low to high
 * @returns true for a cluster
 * @source two or more seconds: G. Lindsay, Jazz Arranging Techniques (2005); most of the gaps:
 *   definition of this project, so that a tutti with two seconds in it is not called one
 */
export function isCluster(stack: readonly SoundingMidi[]): boolean {
  const gaps = stack.slice(1).map((pitch, index) => pitch - (stack[index] ?? 0));
  const seconds = gaps.filter((gap) => gap <= 2).length;
  return seconds >= 2 && 2 * seconds > gaps.length;
}
