import type { ArticulationMark } from "../score/score-model.ts";

/**
 * Marks by their MusicXML element, in the order they are written.
 * Source: W3C MusicXML 4.0, articulations (the vertical wedge, marcato, is strong-accent there).
 */
export const articulationTable: readonly (readonly [ArticulationMark, string])[] = Object.freeze([
  ["accent", "accent"],
  ["marcato", "strong-accent"],
  ["soft-accent", "soft-accent"],
  ["staccato", "staccato"],
  ["staccatissimo", "staccatissimo"],
  ["tenuto", "tenuto"],
  ["scoop", "scoop"],
  ["plop", "plop"],
  ["doit", "doit"],
  ["fall", "falloff"],
  ["breath", "breath-mark"],
] as const);
