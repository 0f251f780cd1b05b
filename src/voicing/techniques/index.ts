export type { TechniqueOptions } from "./categories.ts";
export { closeVoicing } from "./close.ts";
export { dropVoices } from "./drop.ts";
export { doubleLead, dropTwoDoubleLead, fivePartWithTension } from "./double-lead.ts";
export { spreadsFromBass, spreadsFromLead, type SpreadParts } from "./spread.ts";
export { upperStructures, type UpperStructure } from "./upper-structure.ts";
export { quartalVoicing, quartalWithThirdOnTop } from "./quartal.ts";
export { fifthsPairs } from "./fifths-pair.ts";
export { clusterVoicing } from "./cluster.ts";
export {
  tuttiGuideTones,
  tuttiOctaveCopy,
  tuttiWide,
  type HornSection,
  type SectionPitches,
  type SectionSizes,
} from "./tutti.ts";
export { assignPitches, type Assignment, type MovedPitch } from "./assign.ts";
export { bySectionVoicings } from "./by-section.ts";
export type { BySectionOptions, BySectionVoicing } from "./by-section-types.ts";
export { octavesLine, unisonLine } from "./lines.ts";
export { interleavingOf, isCrossSection, type Interleaving } from "./interleaving.ts";
export { techniquesOf, techniquesOfStack } from "./recognise.ts";
export { techniqueTexts, type TechniqueText } from "./technique-table.ts";
