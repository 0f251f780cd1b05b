import { CHOICE_SENTENCES, type ChoiceId } from "./chord-choice-table.ts";
import type { ChordDraft } from "./chord-draft-types.ts";
import type { ChordTones } from "./chord-tones.ts";
import { isDominant } from "./chord-tones.ts";
import { parseDegree } from "./degree.ts";

/**
 * The readings chosen for this chord where the trade is split, in words.
 * @param draft - the checked symbol
 * @param found - its tones
 * @returns one sentence each, none twice
 */
export function choiceSentences(draft: ChordDraft, found: ChordTones): readonly string[] {
  const ids = [
    ...draft.choices,
    ...familyChoices(draft, found),
    ...numberChoices(draft, found),
    ...alterationChoices(draft, found),
    ...found.choices,
  ];
  return [...new Set(ids)].map((id) => CHOICE_SENTENCES[id]);
}

function familyChoices({ extension }: ChordDraft, { family, tones }: ChordTones): ChoiceId[] {
  const has = (degree: string) => tones.some((tone) => tone.degree === degree);
  const isAvailable = (degree: string) =>
    tones.some((tone) => tone.degree === degree && tone.kind === "available");
  switch (family) {
    case "major":
      return ["triad-stays"];
    case "minor":
      return ["minor-triad-stays"];
    case "diminished":
      return extension === 0 ? ["diminished-triad"] : [];
    case "major-seventh":
      return isAvailable("13") ? ["sixth-for-seventh"] : [];
    case "minor-seventh":
      return tones.some((tone) => tone.degree === "13" && tone.kind === "avoid")
        ? ["minor-thirteenth-avoided"]
        : [];
    case "half-diminished":
      return has("9") ? ["half-diminished-ninth"] : [];
    case "altered-dominant":
      return ["altered"];
    default:
      return [];
  }
}

function numberChoices({ extension }: ChordDraft, { family }: ChordTones): ChoiceId[] {
  if (extension === 11) {
    if (family === "dominant-suspended") return ["eleven"];
    return family === "major-seventh" ? ["major-eleven"] : [];
  }
  if (extension !== 13) return [];
  switch (family) {
    case "dominant":
    case "major-seventh":
      return ["thirteen-without-eleventh"];
    case "dominant-suspended":
      return ["thirteen-suspended"];
    case "minor-seventh":
      return ["minor-thirteenth"];
    default:
      return [];
  }
}

function alterationChoices(draft: ChordDraft, { family, tones }: ChordTones): ChoiceId[] {
  const printed = draft.marks.filter(({ kind }) => kind !== "omit").map(({ degree }) => degree);
  const prints = (degree: string) => printed.includes(degree);
  const notes = new Set(printed.map((degree) => parseDegree(degree).aboveRoot));
  const isOpen = tones.some((tone) => tone.degree === "13" && tone.kind === "available");
  const hasAlteredNinth = prints("b9") || prints("#9");
  const hasFifth = tones.some((tone) => tone.degree === "5" && tone.kind === "stated");
  const isFreed = tones.some((tone) => tone.degree === "5" && tone.kind === "available");
  return [
    ...(prints("b9") && prints("#9") ? ["two-ninths" as const] : []),
    ...(prints("b5") && prints("#5") ? ["two-fifths" as const] : []),
    ...(isDominant(family) && hasAlteredNinth && isOpen ? ["thirteenth-open" as const] : []),
    ...(isFreed ? ["flat-thirteenth" as const] : []),
    ...(prints("#11") && hasFifth ? ["sharp-eleventh" as const] : []),
    ...(notes.size < printed.length ? ["one-note" as const] : []),
  ];
}
