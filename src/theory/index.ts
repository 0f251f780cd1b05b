export type * from "./spelled-pitch-types.ts";
export type * from "./chord-types.ts";
export type { SignStyle } from "./signs.ts";
export { readPitch } from "./read-pitch.ts";
export {
  formatPitch,
  formatPitchClass,
  spelledPitchClass,
  spelledToMidi,
  type PitchFormat,
} from "./spelled-pitch.ts";
export { displayDegree } from "./degree.ts";
export { degreeOf, pitchName, spellPitch } from "./pitch-in-chord.ts";
export { readChord } from "./read-chord.ts";
export { tickedTones } from "./ticked-tones.ts";
export { roleOf } from "./role-of.ts";
export { requiredGroups } from "./required-groups.ts";
