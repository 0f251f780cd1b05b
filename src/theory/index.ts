export type * from "./spelled-pitch-types.ts";
export type * from "./chord-types.ts";
export type { SignStyle } from "./signs.ts";
export { LETTERS } from "./letter-table.ts";
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
export type * from "./melody-types.ts";
export { barCount, barLength, barStart, beatLength, placeOf, placeText } from "./melody-place.ts";
export type { MelodyTime } from "./melody-place.ts";
export { diatonicSuffix, fifthsOf, keyText, scaleOf } from "./melody-key.ts";
export { heardNotes } from "./melody-heard.ts";
export { readMelody } from "./melody-check.ts";
export { melodyFromBars } from "./melody-from-bars.ts";
export type { MelodyHead, NoteLength, WrittenBar, WrittenItem } from "./melody-from-bars.ts";
export { withoutRepeats } from "./melody-repeats.ts";
