import type { AboveRoot, Chord } from "./chord-types.ts";
import { REQUIRED_GROUPS } from "./required-groups-table.ts";
import { tickedTones } from "./ticked-tones.ts";

/**
 * Tones that make a chord what it is: groups of which one tone each must sound, most important
 * first. A group whose tones the symbol leaves out ("no3") is not asked for. Slash chords have the
 * groups of the chord above the bass.
 * @param chord - the chord
 * @returns groups of semitones above the root
 * @source required-groups-table.ts
 */
export function requiredGroups(chord: Chord): readonly (readonly AboveRoot[])[] {
  const { groups, printedOrder } = REQUIRED_GROUPS[chord.family];
  const named = new Set(groups.flat());
  const sixthOrSeventh = chord.tones
    .filter(({ kind, role }) => kind === "stated" && (role === "seventh" || role === "sixth"))
    .map(({ aboveRoot }) => aboveRoot)
    .filter((aboveRoot) => !chord.printedExtras.includes(aboveRoot));
  const step = (aboveRoot: AboveRoot) => {
    const found = printedOrder.findIndex((tones) => tones.includes(aboveRoot));
    return found < 0 ? printedOrder.length : found;
  };
  const extras = [...chord.printedExtras].sort((a, b) => step(a) - step(b));
  const single = [...sixthOrSeventh, ...extras].filter((aboveRoot) => !named.has(aboveRoot));
  const plain = new Set(tickedTones(chord, "plain"));
  return [...groups, ...single.map((aboveRoot) => [aboveRoot])]
    .map((group) => group.filter((aboveRoot) => plain.has(aboveRoot)))
    .filter((group) => group.length > 0);
}
