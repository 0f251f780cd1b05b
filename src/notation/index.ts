export type * from "./staff-layout-types.ts";
export type { Clef, SectionId } from "../band/index.ts";
export { layoutVoicing, type LayoutOptions } from "./layout-voicing.ts";
export { describeVoicing } from "./describe-voicing.ts";
export { namesBySection, type SectionNames } from "./player-groups.ts";
export { degreeSpoken, degreeText, pitchClassText, pitchSpoken, pitchText } from "./text-signs.ts";
export { readingOf, moveSpelled, withoutDoubles, type Reading } from "./transposed-spelling.ts";
export { symbolFor } from "./written-symbol.ts";
export { spellInChord, degreeInChord } from "./note-in-chord.ts";
