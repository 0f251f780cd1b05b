import { soundingMidi, type SoundingMidi } from "../../base/index.ts";
import type { AboveRoot, Chord } from "../../theory/index.ts";
import { aboveRoot, basicTone, categoryOf, type TechniqueOptions } from "./categories.ts";
import { highestBelow, lowToHigh } from "./close.ts";
import { dropVoices } from "./drop.ts";
import { categories, categoryRows } from "./substitution-table.ts";

/** The lead of a voicing an octave lower. */
function octaveBelowLead(voicing: readonly SoundingMidi[]): SoundingMidi {
  const lead = voicing.at(-1);
  if (lead === undefined) throw new RangeError("a voicing needs at least one pitch, got none");
  return soundingMidi(lead - 12);
}

/**
 * Close with double lead: the lead again an octave lower, as the lowest voice.
 * @param close - close voicing, low to high
 * @returns one voice more, low to high
 * @throws RangeError when the voicing is empty
 * @source G. Lindsay, Jazz Arranging Techniques (2005), ch. 10; C. Israels, Exploring Jazz
 *   Arranging, lesson 15
 */
export function doubleLead(close: readonly SoundingMidi[]): readonly SoundingMidi[] {
  return lowToHigh([octaveBelowLead(close), ...close]);
}

/**
 * Drop 2 with double lead. The doubled lead lies an octave under the lead and so above the voice
 * that was dropped.
 * @param close - close voicing, low to high
 * @returns one voice more than the close voicing, low to high
 * @throws RangeError when there are fewer than two voices
 * @source common practice, no single source; the octave after Lindsay's definition of double lead
 */
export function dropTwoDoubleLead(close: readonly SoundingMidi[]): readonly SoundingMidi[] {
  return lowToHigh([octaveBelowLead(close), ...dropVoices(close, [2])]);
}

/** Ticked tones that are not in the voicing: first those of the lead's own place, then tensions. */
function coloursLeft(
  chord: Chord,
  close: readonly SoundingMidi[],
  options: TechniqueOptions,
): readonly AboveRoot[] {
  const sounding = new Set(close.map((pitch) => aboveRoot(chord, pitch)));
  const leadPlace = categoryOf(chord, aboveRoot(chord, close.at(-1) as SoundingMidi));
  const row = categoryRows[chord.family];
  const others = categories.filter((category) => category !== leadPlace);
  const basics = new Set(categories.map((category) => basicTone(chord, category)));
  const tensions = others.flatMap((category) => row[category]).filter((tone) => !basics.has(tone));
  return [...row[leadPlace], ...tensions].filter(
    (tone) => options.ticked.includes(tone) && !sounding.has(tone),
  );
}

/**
 * Five-part close: another colour tone as the lowest voice where the doubled lead would be. A
 * tone of the lead's own place is taken first: the root under a ninth, the ninth under a root.
 * @param chord - the chord as read
 * @param close - close voicing, low to high
 * @param options - ticked tones
 * @returns one voice more, low to high; undefined when every ticked tone sounds already or would
 *   make a minor ninth with a voice above it
 * @source C. Israels, Exploring Jazz Arranging, lesson 15
 */
export function fivePartWithTension(
  chord: Chord,
  close: readonly SoundingMidi[],
  options: TechniqueOptions,
): readonly SoundingMidi[] | undefined {
  const lowest = close[0];
  if (lowest === undefined) throw new RangeError("a voicing needs at least one pitch, got none");
  const fits = (pitch: SoundingMidi): boolean => !close.some((above) => above - pitch === 13);
  const pitch = coloursLeft(chord, close, options)
    .map((tone) => highestBelow(chord, tone, lowest))
    .find(fits);
  return pitch === undefined ? undefined : lowToHigh([pitch, ...close]);
}
