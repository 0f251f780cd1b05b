import type { Count, SoundingMidi } from "../../base/index.ts";
import type { Chord } from "../../theory/index.ts";
import { aboveRoot, categoryOf } from "./categories.ts";
import { lowToHigh } from "./close.ts";
import type { Category } from "./substitution-table.ts";

/** Which place is given up first when there are more notes than players. */
const givenUpFirst: readonly Category[] = ["fifth", "root", "seventh", "third"];

/**
 * A voicing for fewer players than it has notes: the fifth goes first, then the root; the lead
 * stays.
 * @param chord - the chord as read
 * @param voicing - low to high
 * @param players - how many there are, one or more
 * @returns at most as many pitches as players, low to high
 * @source fifth first, then root: common practice, no single source
 */
export function thinned(
  chord: Chord,
  voicing: readonly SoundingMidi[],
  players: Count,
): readonly SoundingMidi[] {
  const lead = voicing.at(-1);
  const need = (pitch: SoundingMidi): number =>
    pitch === lead
      ? givenUpFirst.length
      : givenUpFirst.indexOf(categoryOf(chord, aboveRoot(chord, pitch)));
  const byNeed = [...voicing].sort((a, b) => need(b) - need(a) || b - a);
  return lowToHigh(byNeed.slice(0, Math.max(1, players)));
}

/**
 * A voicing for a section of any size: thinned for a small one; a larger one first doubles the
 * lead an octave lower, then doubles in unison from the top.
 * @param chord - the chord as read
 * @param voicing - low to high, lead on top
 * @param players - how many there are
 * @returns one pitch a player, low to high, repeated where players double
 * @source double lead as fifth voice: G. Lindsay, Jazz Arranging Techniques (2005)
 */
export function sizedFor(
  chord: Chord,
  voicing: readonly SoundingMidi[],
  players: Count,
): readonly SoundingMidi[] {
  if (players <= voicing.length) return thinned(chord, voicing, players);
  const lead = voicing.at(-1) as SoundingMidi;
  const octaveBelow = (lead - 12) as SoundingMidi;
  const hasDouble = voicing.includes(octaveBelow);
  const parts = lowToHigh(hasDouble ? voicing : [octaveBelow, ...voicing]);
  const fromTop = [...parts].reverse();
  const doublings = Array.from(
    { length: players - parts.length },
    (_, index) => fromTop[index % fromTop.length] as SoundingMidi,
  );
  return lowToHigh([...parts, ...doublings]);
}
