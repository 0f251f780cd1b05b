import { pitchClass, type SoundingMidi } from "../base/index.ts";
import { scaleOf, type Chord, type Key } from "../theory/index.ts";
import type { NoteKind } from "./harmony-types.ts";

/**
 * What a melody note is: a tone of the chord, a tension players may add, another tone of the key, or
 * none of these. A tension counts only where the trade lets it sound against the chord.
 * @param sounding - the melody note
 * @param chord - the chord under it
 * @param key - the key
 * @returns the kind
 * @source chord tone, scale tone, non-scale tone: elm-music-theory (commit cbf09f1) after G. Lindsay
 */
export function noteKind(sounding: SoundingMidi, chord: Chord, key: Key): NoteKind {
  const tone = chord.tones.find((each) => each.pitchClass === pitchClass(sounding));
  if (tone && (tone.kind === "stated" || tone.kind === "implied")) return "chord-tone";
  if (tone?.kind === "available") return "tension";
  return scaleOf(key).includes(pitchClass(sounding)) ? "scale-tone" : "outside";
}
