export type * from "./staff-layout-types.ts";
export type { Clef, SectionId } from "../band/index.ts";
export { layoutVoicing, type LayoutOptions } from "./layout-voicing.ts";
export { describeVoicing } from "./describe-voicing.ts";
export { concertClef } from "./choose-clef.ts";
export { readably } from "./layout-by-player.ts";
export {
  CONCERT,
  concertReading,
  moveSpelled,
  readingOf,
  strictReading,
  withoutDoubles,
  type Reading,
} from "./transposed-spelling.ts";
export { inScoreOrder, namesBySection, type SectionNames } from "./player-groups.ts";
export type { BarShape, Stretch } from "./bar-shape-types.ts";
export { stretchesOf } from "./bar-stretches.ts";
export { writtenValues, type WrittenValue } from "./note-values.ts";
export { tupletWindows, type TupletWindow } from "./tuplet-windows.ts";
export { beamsOf, type Beams } from "./beams.ts";
export { accidentalMemory, type AccidentalMemory } from "./accidental-memory.ts";
export { fifthsAdded, keyReading } from "./key-reading.ts";
export type * from "./phrase-layout-types.ts";
export { layoutPhrase, type PhraseLayoutOptions } from "./layout-phrase.ts";
