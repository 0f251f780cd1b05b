import type { AboveRoot, Chord, ChordTone, Colour } from "./chord-types.ts";
import { isDominant } from "./chord-tones.ts";

const ALTERED_TENSIONS: readonly AboveRoot[] = [1, 3, 6, 8];
/** Under a suspended fourth there is no room for a raised one. */
const ALTERED_OVER_FOURTH: readonly AboveRoot[] = [1, 3, 8];
/** Fifth, ninth and thirteenth give way to their altered forms. */
const NATURAL_FORMS: ReadonlySet<string> = new Set(["5", "9", "13"]);

/**
 * Tones that a preset lets sound. `plain`: what the symbol states and implies. `tensions`: those and
 * the natural tensions of its family. `altered`: on dominants ♭9 ♯9 ♯11 ♭13, with natural 5, 9 and 13
 * only where printed; on other chords the same as `tensions`. A slash bass always sounds.
 * @param chord - the chord
 * @param colour - the preset
 * @returns semitones above the root, 0 to 11, ascending; none for no chord
 * @source natural tensions: tension-table.ts
 */
export function tickedTones(chord: Chord, colour: Colour): readonly AboveRoot[] {
  const isAltered = colour === "altered" && isDominant(chord.family);
  const isWanted = isAltered
    ? (tone: ChordTone) => isInAltered(tone, chord)
    : (tone: ChordTone) => isPlain(tone) || (colour !== "plain" && tone.isNaturalTension);
  const own = chord.tones.filter(isWanted).map((tone) => tone.aboveRoot);
  const overFourth = chord.family === "dominant-suspended";
  const added = !isAltered ? [] : overFourth ? ALTERED_OVER_FOURTH : ALTERED_TENSIONS;
  return [...new Set([...own, ...added])].sort((a, b) => a - b);
}

const isPlain = ({ kind }: ChordTone) => kind === "stated" || kind === "implied";

function isInAltered(tone: ChordTone, chord: Chord): boolean {
  if (!isPlain(tone)) return false;
  if (tone.role === "bass" || !NATURAL_FORMS.has(tone.degree)) return true;
  return chord.printedExtras.includes(tone.aboveRoot);
}
