import type { ChoiceId } from "./chord-choice-table.ts";
import type { ChordDraft, ChordMark } from "./chord-draft-types.ts";
import type { AboveRoot, ChordFamily, ChordTone, ToneKind, ToneRole } from "./chord-types.ts";
import { parseDegree, spellDegree } from "./degree.ts";
import { formatPitchClass, spelledPitchClass } from "./spelled-pitch.ts";
import type { SpelledPitchClass } from "./spelled-pitch-types.ts";
import { TENSIONS } from "./tension-table.ts";

/** The tones of a chord without its slash bass. */
export interface ChordTones {
  readonly family: ChordFamily;
  /** Ascending by `aboveRoot`, each once. */
  readonly tones: readonly ChordTone[];
  readonly printedExtras: readonly AboveRoot[];
  /** Readings that follow from the tones. */
  readonly choices: readonly ChoiceId[];
}

/** A degree the chord has, before it is spelled. */
interface Entry {
  readonly degree: string;
  readonly kind: ToneKind;
}

/**
 * Works out the tones of a chord: what the symbol states and implies, and the tensions of its family
 * that do not conflict with them.
 * @param draft - the checked symbol
 * @param root - its root
 * @returns family, tones, printed extras, readings chosen
 * @source tensions: tension-table.ts; natural tensions go where the symbol prints an altered one
 */
export function chordTones(draft: ChordDraft, root: SpelledPitchClass): ChordTones {
  const family = familyOf(draft);
  const own = ownEntries(draft);
  const offered = offeredEntries(draft, family, own);
  const natural = naturalDegrees(draft, family);
  let isRespelled = false;
  const tones = [...own, ...offered].map(({ degree, kind }): ChordTone => {
    const found = spellDegree(root, degree);
    isRespelled ||= found.isRespelled && kind !== "available" && kind !== "avoid";
    return {
      spelled: found.spelled,
      name: formatPitchClass(found.spelled),
      pitchClass: spelledPitchClass(found.spelled),
      aboveRoot: parseDegree(degree).aboveRoot,
      degree,
      role: roleOfDegree(degree),
      kind,
      isAltered: isDominant(family) && ALTERED_TENSIONS.has(degree),
      isNaturalTension: kind === "available" && natural.has(degree),
    };
  });
  return {
    family,
    tones: tones.sort((a, b) => a.aboveRoot - b.aboveRoot),
    printedExtras: printedExtras(draft),
    choices: isRespelled ? ["respelled"] : [],
  };
}

const ALTERED_TENSIONS: ReadonlySet<string> = new Set(["b9", "#9", "#11", "b13"]);

/**
 * Whether a family is a dominant, suspended or not.
 * @param family - chord family
 * @returns true for the three dominant families
 */
export function isDominant(family: ChordFamily): boolean {
  return family === "dominant" || family === "altered-dominant" || family === "dominant-suspended";
}

const hasSeventh = ({ extension }: ChordDraft) => extension >= 7 && extension !== 69;

/** C11 is sounded as a suspended ninth. */
const isEleventhChord = ({ extension, quality, isMajorSeventh, suspension }: ChordDraft) =>
  extension === 11 && quality === "major" && !isMajorSeventh && suspension === 0;

function familyOf(draft: ChordDraft): ChordFamily {
  const { quality, extension, suspension, isMajorSeventh, isAlt } = draft;
  const isSixth = extension === 6 || extension === 69;
  if (isAlt) return "altered-dominant";
  if (extension === 5) return "power";
  if (suspension === 2) return "suspended-second";
  if (suspension === 4)
    return hasSeventh(draft) && !isMajorSeventh ? "dominant-suspended" : "suspended-fourth";
  if (isEleventhChord(draft)) return "dominant-suspended";
  switch (quality) {
    case "augmented":
      return "augmented";
    case "half-diminished":
      return "half-diminished";
    case "diminished":
      return hasSeventh(draft) && !isMajorSeventh ? "diminished-seventh" : "diminished";
    case "minor":
      if (isSixth) return "minor-sixth";
      if (!hasSeventh(draft)) return "minor";
      return isMajorSeventh ? "minor-major-seventh" : "minor-seventh";
    case "major":
      if (isSixth) return "sixth";
      if (!hasSeventh(draft)) return "major";
      return isMajorSeventh ? "major-seventh" : "dominant";
  }
}

// --- what the symbol states and implies ---

const stated = (...degrees: readonly string[]): readonly Entry[] =>
  degrees.map((degree) => ({ degree, kind: "stated" }));
const implied = (...degrees: readonly string[]): readonly Entry[] =>
  degrees.map((degree) => ({ degree, kind: "implied" }));

function ownEntries(draft: ChordDraft): readonly Entry[] {
  const added = draft.marks.filter(({ kind, degree }) => kind !== "omit" && !isFifth(degree));
  const omitted = new Set(
    draft.marks.filter(({ kind }) => kind === "omit").map((mark) => mark.degree),
  );
  const entries = [
    ...stated("1", ...thirdOf(draft), ...fifthsOf(draft), ...sixthOf(draft), ...seventhOf(draft)),
    ...stated(...added.map(({ degree }) => degree)),
    ...extensionOf(draft),
  ];
  return eachNoteOnce(entries).filter(
    ({ degree }) => degree === "1" || !omitted.has(`${parseDegree(degree).number}`),
  );
}

function eachNoteOnce(entries: readonly Entry[]): readonly Entry[] {
  const seen = new Set<number>();
  return entries.filter(({ degree }) => {
    const { aboveRoot } = parseDegree(degree);
    const isNew = !seen.has(aboveRoot);
    seen.add(aboveRoot);
    return isNew;
  });
}

const isFifth = (degree: string) => degree === "b5" || degree === "#5";

function thirdOf(draft: ChordDraft): readonly string[] {
  if (draft.suspension !== 0) return [`${draft.suspension}`];
  if (draft.extension === 5 || isEleventhChord(draft)) return [];
  return draft.quality === "major" || draft.quality === "augmented" ? ["3"] : ["b3"];
}

function fifthsOf(draft: ChordDraft): readonly string[] {
  const printed = draft.marks
    .filter(({ kind, degree }) => kind === "alter" && isFifth(degree))
    .map(({ degree }) => degree);
  switch (draft.quality) {
    case "diminished":
    case "half-diminished":
      return ["b5", ...printed];
    case "augmented":
      return ["#5", ...printed];
    default:
      if (printed.length > 0) return printed;
      return draft.isAlt || replacesFifth(draft) ? [] : ["5"];
  }
}

/** A printed ♭13 stands in for the natural fifth of a dominant. */
const replacesFifth = (draft: ChordDraft) =>
  isDominant(familyOf(draft)) &&
  draft.marks.some(({ kind, degree }) => kind === "alter" && degree === "b13");

const sixthOf = ({ extension }: ChordDraft): readonly string[] =>
  extension === 6 || extension === 69 ? ["6"] : [];

function seventhOf(draft: ChordDraft): readonly string[] {
  if (!hasSeventh(draft)) return [];
  if (draft.isMajorSeventh) return ["7"];
  return draft.quality === "diminished" ? ["bb7"] : ["b7"];
}

function extensionOf(draft: ChordDraft): readonly Entry[] {
  const { extension, marks, isAlt } = draft;
  if (isAlt) return implied("b9", "#9", "#11", "b13");
  const isAltered = (number: number) =>
    marks.some(({ kind, degree }) => kind !== "omit" && parseDegree(degree).number === number);
  const ninth = isAltered(9) ? [] : implied("9");
  const hasMinorThird = draft.quality !== "major" && draft.quality !== "augmented";
  const eleventh = hasMinorThird && !isAltered(11) ? implied("11") : [];
  switch (extension) {
    case 9:
    case 69:
      return stated("9");
    case 11:
      return [...stated("11"), ...ninth];
    case 13:
      return [...stated("13"), ...ninth, ...eleventh];
    default:
      return [];
  }
}

function printedExtras({ extension, marks }: ChordDraft): readonly AboveRoot[] {
  const number = extension === 69 ? 9 : extension;
  const fromNumber = number >= 9 ? [`${number}`] : [];
  const fromMarks = marks.filter(({ kind }) => kind !== "omit").map(({ degree }) => degree);
  const semitones = [...fromNumber, ...fromMarks].map((degree) => parseDegree(degree).aboveRoot);
  return [...new Set(semitones)];
}

// --- what may be added ---

function offeredEntries(
  draft: ChordDraft,
  family: ChordFamily,
  own: readonly Entry[],
): readonly Entry[] {
  const { natural, further, avoid } = TENSIONS[family];
  const fits = (degree: string) => !conflicts(degree, own, draft.marks);
  const offered = (degrees: readonly string[], kind: ToneKind): readonly Entry[] =>
    degrees.filter(fits).map((degree) => ({ degree, kind }));
  const freedFifth =
    replacesFifth(draft) && !own.some(({ degree }) => isFifth(degree)) ? ["5"] : [];
  return eachNoteOnce([
    ...offered([...natural, ...further, ...freedFifth], "available"),
    ...offered(avoid, "avoid"),
  ]);
}

/** Whether a note is there already, was left out on purpose, or contradicts a form of its degree. */
function conflicts(degree: string, own: readonly Entry[], marks: readonly ChordMark[]): boolean {
  const { number, alteration, aboveRoot } = parseDegree(degree);
  const isLeftOut = marks.some((mark) => mark.kind === "omit" && mark.degree === `${number}`);
  if (isLeftOut) return true;
  return own.some((entry) => {
    const other = parseDegree(entry.degree);
    if (other.aboveRoot === aboveRoot) return true;
    // A raised fifth is the note of a flat thirteenth, and takes the natural one's place.
    if (entry.degree === "#5") return sameDegree(number, 13) && alteration === 0;
    const isNaturalAgainstOther = other.alteration === 0 || alteration === 0;
    const isTension = number > 7 || number === 6;
    return sameDegree(number, other.number) && isTension && isNaturalAgainstOther;
  });
}

const sameDegree = (a: number, b: number) => (a - b) % 7 === 0;

/**
 * With an altered ninth printed on a dominant, the symbol does not say which thirteenth is meant, so
 * none is ticked.
 */
function naturalDegrees(draft: ChordDraft, family: ChordFamily): ReadonlySet<string> {
  const { natural } = TENSIONS[family];
  const hasAlteredNinth = draft.marks.some(({ degree }) => degree === "b9" || degree === "#9");
  return new Set(
    isDominant(family) && hasAlteredNinth ? natural.filter((one) => one !== "13") : natural,
  );
}

function roleOfDegree(degree: string): ToneRole {
  const roles: Readonly<Record<number, ToneRole>> = {
    1: "root",
    2: "suspended-second",
    3: "third",
    4: "suspended-fourth",
    5: "fifth",
    6: "sixth",
    7: "seventh",
    9: "ninth",
    11: "eleventh",
    13: "thirteenth",
  };
  return roles[parseDegree(degree).number] ?? "root";
}
