import type { SoundingMidi } from "../../base/index.ts";
import type { Chord } from "../../theory/index.ts";
import type { Dynamic, Player } from "../../band/index.ts";
import type { TechniqueId, Voicing } from "../voicing-types.ts";
import type { TechniqueOptions } from "./categories.ts";
import type { HornSection, SectionPitches, SectionSizes } from "./tutti.ts";

/** Which tones a writer uses, and how loud it is. */
export interface BySectionOptions extends TechniqueOptions {
  readonly dynamic: Dynamic;
}

/** What a writer gets by voicing each section on its own by the textbook. */
export interface BySectionVoicing {
  readonly technique: TechniqueId;
  /** For people: "Tutti, octave copy; saxes drop 2 with the lead". */
  readonly label: string;
  readonly voicing: Voicing;
  /** Full sentences: how it is built and what had to give; empty when there is nothing to say. */
  readonly note: string;
}

/** The question as the textbook recipes see it. */
export interface SectionTask {
  readonly chord: Chord;
  readonly lead: SoundingMidi;
  readonly options: BySectionOptions;
  readonly sections: Readonly<Record<HornSection, readonly Player[]>>;
  readonly sizes: SectionSizes;
}

/** One way of voicing the whole band section by section. */
export interface BandRecipe {
  readonly technique: TechniqueId;
  readonly label: string;
  readonly note: string;
  /** Pitches of each section, or undefined where this chord, lead or band does not allow it. */
  readonly build: (task: SectionTask) => SectionPitches | undefined;
}
