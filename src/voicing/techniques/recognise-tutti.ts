import { type SoundingMidi } from "../../base/index.ts";
import type { Chord } from "../../theory/index.ts";
import { stackOf } from "../stack.ts";
import type { Voicing } from "../voicing-types.ts";
import { aboveRoot, basicTone } from "./categories.ts";
import { isGuideTone, type HornSection } from "./tutti.ts";
import { triadIn } from "./upper-structure.ts";

/** Distinct pitches of one section, low to high. */
function pitchesOf(voicing: Voicing, section: HornSection): readonly SoundingMidi[] {
  return stackOf({
    placements: voicing.placements.filter(({ player }) => player.section === section),
  });
}

/**
 * Tells whether the trombones repeat the trumpets' notes an octave lower, the lead among them.
 * @param voicing - who sounds what
 * @param lead - melody note, sounding
 * @returns true with three notes or more in either section
 * @source C. Israels, Exploring Jazz Arranging, lesson 19
 */
export function isTuttiOctaveCopy(voicing: Voicing, lead: SoundingMidi): boolean {
  const trumpets = pitchesOf(voicing, "trumpets") as readonly number[];
  const trombones = pitchesOf(voicing, "trombones") as readonly number[];
  return (
    trumpets.length >= 3 &&
    trombones.length >= 3 &&
    trumpets.includes(lead) &&
    trombones.includes(lead - 12) &&
    trombones.every((pitch) => trumpets.includes(pitch + 12))
  );
}

/**
 * Tells whether trombones hold third and seventh under trumpets on an upper-structure triad, with
 * or without the lead an octave lower.
 * @param chord - the chord as read
 * @param voicing - who sounds what
 * @param lead - melody note, sounding
 * @returns true when both sections fit
 * @source C. Israels, Exploring Jazz Arranging, lesson 19
 */
export function isTuttiGuideTones(chord: Chord, voicing: Voicing, lead: SoundingMidi): boolean {
  const trumpets = pitchesOf(voicing, "trumpets").filter((pitch) => pitch !== lead - 12);
  const trombones = pitchesOf(voicing, "trombones");
  const held = new Set(trombones.map((pitch) => aboveRoot(chord, pitch)));
  return (
    held.size === 2 &&
    trombones.every((pitch) => isGuideTone(chord, pitch)) &&
    trumpets.at(-1) === lead &&
    triadIn(chord, trumpets) !== undefined
  );
}

/**
 * Tells whether a tutti is built wide: a sax on the root at the bottom, a trombone a fifth above
 * it, the other trombones on third and seventh, two octaves or more in all.
 * @param chord - the chord as read
 * @param voicing - who sounds what
 * @returns true when the foundation is there
 * @source C. Israels, Exploring Jazz Arranging, lesson 19
 */
export function isTuttiWide(chord: Chord, voicing: Voicing): boolean {
  const stack = stackOf(voicing);
  const root = stack[0];
  if (root === undefined || aboveRoot(chord, root) !== 0) return false;
  const fifth = root + (basicTone(chord, "fifth") ?? 7);
  const saxes = pitchesOf(voicing, "saxes");
  const trombones = pitchesOf(voicing, "trombones") as readonly number[];
  const middle = trombones.filter((pitch) => pitch !== root && pitch !== fifth) as SoundingMidi[];
  const held = new Set(middle.map((pitch) => aboveRoot(chord, pitch)));
  return (
    saxes[0] === root &&
    trombones.includes(fifth) &&
    held.size === 2 &&
    middle.every((pitch) => isGuideTone(chord, pitch)) &&
    (stack.at(-1) ?? 0) - root >= 24
  );
}
