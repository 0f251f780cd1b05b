import {
  dynamics,
  lineUps,
  sectionOrder,
  type Dynamic,
  type PlayerLevel,
  type SectionId,
} from "../band/index.ts";
import type { Colour } from "../theory/index.ts";
import type { LayerId, SearchOptions } from "../voicing/index.ts";
import type { Option, Request } from "./option-types.ts";

const levels: readonly PlayerLevel[] = ["school", "semi-pro", "pro"];
const layers: readonly LayerId[] = ["free", "by-section", "crossed"];
const colours: readonly Colour[] = ["plain", "tensions", "altered"];

/** The chord that every question needs. */
export const chordOption: Option = {
  name: "chord",
  kind: "text",
  isRequired: true,
  words: "chord symbol, such as F13",
};

/** How loud it is played. */
export const dynamicOption: Option = {
  name: "dynamic",
  kind: "text",
  choices: dynamics,
  words: "how loud; f unless given",
};

/** How far the players have come. */
export const levelOption: Option = {
  name: "level",
  kind: "text",
  choices: levels,
  words: "how far the players have come",
};

/** Whether a bass player sounds the root below the horns. */
export const bassOption: Option = {
  name: "bass",
  kind: "text",
  choices: ["root", "none"],
  words: "root: a bass player has it; none: the lowest horn must; root unless given",
};

/** A voicing of one's own. */
export const notesOption: Option = {
  name: "notes",
  kind: "list",
  words: "player=sounding pitch for each, such as tpt1=D5,alto1=B4",
};

/** Which line-up. */
export const bandOption: Option = {
  name: "band",
  kind: "text",
  choices: lineUps.map(({ id }) => id),
  words: "line-up; big-band unless given",
};

/** Which tones may sound. */
export const colourOption: Option = {
  name: "colour",
  kind: "text",
  choices: colours,
  words: "which tones may sound; tensions unless given",
};

/** Everything that makes a question. */
export const questionOptions: readonly Option[] = [
  chordOption,
  {
    name: "melody",
    kind: "text",
    isRequired: true,
    words: "melody note, sounding, with its octave (C4 is middle C), such as D5",
  },
  bandOption,
  levelOption,
  dynamicOption,
  bassOption,
  colourOption,
  { name: "tick", kind: "list", words: "degrees to add to those, such as 9,13" },
  { name: "untick", kind: "list", words: "degrees to leave out" },
  { name: "require", kind: "list", words: "degrees that must sound" },
];

/** Which voicings count. */
export const layerOption: Option = {
  name: "layer",
  kind: "text",
  choices: layers,
  words: "free; by-section: sections unbroken; crossed: sections interlocked; free unless given",
};

/** Which sections must sound, and no others. */
export const sectionsOption: Option = {
  name: "sections",
  kind: "list",
  choices: sectionOrder.filter((section) => section !== "rhythm"),
  words: "exactly these sections sound, each with a player: trumpets,saxes; any unless given",
};

/** Voicings: given note by note, or the best one under a melody note. */
export const voicingOptions: readonly Option[] = [
  ...questionOptions.map((option) =>
    option.name === "melody" ? { ...option, isRequired: false } : option,
  ),
  layerOption,
  sectionsOption,
  {
    ...notesOption,
    words: `${notesOption.words}; several in turn with "; " between; without it the best voicing under --melody`,
  },
];

/**
 * The search asked for: layer and sections.
 * @param request - what was asked, checked for form
 * @returns options of the search
 */
export function searchIn(request: Request): SearchOptions & { readonly layer: LayerId } {
  const sections = request["sections"] as readonly SectionId[] | undefined;
  return { layer: layerIn(request), ...(sections === undefined ? {} : { sections }) };
}

/**
 * The layer asked for.
 * @param request - what was asked, checked for form
 * @returns that layer, free unless given
 */
export const layerIn = (request: Request): LayerId => (request["layer"] ?? "free") as LayerId;

/**
 * The dynamic asked for.
 * @param request - what was asked, checked for form
 * @returns that dynamic, f unless given
 */
export const dynamicIn = (request: Request): Dynamic => (request["dynamic"] ?? "f") as Dynamic;

/**
 * Whether the bass player sounds the root.
 * @param request - what was asked
 * @returns true unless "none" was asked
 */
export const bassSoundsIn = (request: Request): boolean => request["bass"] !== "none";
