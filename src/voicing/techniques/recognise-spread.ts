import type { SoundingMidi } from "../../base/index.ts";
import type { Chord } from "../../theory/index.ts";
import { aboveRoot, basicTone, categoryOf } from "./categories.ts";

/** Third and seventh sound, where the chord has them. */
function hasGuideTones(chord: Chord, stack: readonly SoundingMidi[]): boolean {
  const places = new Set(stack.map((pitch) => categoryOf(chord, aboveRoot(chord, pitch))));
  return (["third", "seventh"] as const).every(
    (place) => basicTone(chord, place) === undefined || places.has(place),
  );
}

/** What stands right above the root: a guide tone, or the fifth of a chord without seventh. */
function isSecondPart(chord: Chord, pitch: SoundingMidi): boolean {
  const place = categoryOf(chord, aboveRoot(chord, pitch));
  if (place === "fifth") return basicTone(chord, "seventh") === undefined;
  return place === "third" || place === "seventh";
}

/**
 * Tells whether a stack is a spread voicing: root at the bottom, third or seventh next, another of
 * third, fifth and seventh above it, no gap over an octave, more than an octave in all.
 * @param chord - the chord as read
 * @param stack - distinct pitches, low to high
 * @returns true for four-part and five-part spreads
 * @source G. Lindsay, Jazz Arranging Techniques (2005), as carried by the elm-music-theory library
 */
export function isSpread(chord: Chord, stack: readonly SoundingMidi[]): boolean {
  const [bottom, second, third] = stack;
  if (stack.length !== 4 && stack.length !== 5) return false;
  if (bottom === undefined || second === undefined || third === undefined) return false;
  const gaps = stack.slice(1).map((pitch, index) => pitch - (stack[index] ?? 0));
  const inner = stack.slice(1).map((pitch) => aboveRoot(chord, pitch));
  return (
    aboveRoot(chord, bottom) === 0 &&
    (stack.at(-1) ?? 0) - bottom > 12 &&
    isSecondPart(chord, second) &&
    categoryOf(chord, aboveRoot(chord, third)) !== "root" &&
    new Set(inner).size === inner.length &&
    gaps.every((gap) => gap <= 12) &&
    (gaps.at(-1) ?? 0) > 1 &&
    hasGuideTones(chord, stack)
  );
}
