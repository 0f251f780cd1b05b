import type { ChordDraft, ChordMark, Drafted, Refusal } from "./chord-draft-types.ts";
import { chordSuffix } from "./chord-text.ts";
import { displayDegree, parseDegree } from "./degree.ts";

/**
 * Brings a draft into its one form (a minor seventh with ♭5 is half-diminished, a raised fifth on a
 * seventh chord is an alteration) and refuses what contradicts itself.
 * @param draft - the symbol taken apart
 * @param root - the root as text, for the symbols suggested
 * @returns the draft in its one form, or a refusal: `chord-contradiction`, `chord-twice`,
 *   `chord-unclear`, `chord-omit`
 */
export function checkedDraft(draft: ChordDraft, root: string): Drafted<ChordDraft> {
  const naming =
    (from: ChordDraft): Named =>
    (changed) =>
      root + chordSuffix({ ...from, ...changed }, "ascii");
  const twice = repeated(draft, naming(draft));
  if (twice !== undefined) return { ok: false, refusal: twice };
  const normal = withNinthAsNumber(withOneFifth(withoutEmptyOmissions(draft)));
  for (const check of CHECKS) {
    const refusal = check(normal, naming(normal));
    if (refusal !== undefined) return { ok: false, refusal };
  }
  return { ok: true, value: normal };
}

type Named = (changed: Partial<ChordDraft>) => string;
type Check = (draft: ChordDraft, named: Named) => Refusal | undefined;

const without = (marks: readonly ChordMark[], mark: ChordMark) =>
  marks.filter((other) => other !== mark);

// --- one form ---

/** Leaving the third out of a triad gives a fifth; a 13 has no eleventh to leave out. */
function withoutEmptyOmissions(draft: ChordDraft): ChordDraft {
  const { marks, extension, suspension, quality } = draft;
  const noThird = marks.find(({ kind, degree }) => kind === "omit" && degree === "3");
  const isTriad = extension === 0 && suspension === 0;
  if (noThird !== undefined && isTriad && (quality === "major" || quality === "minor"))
    return { ...draft, quality: "major", extension: 5, marks: without(marks, noThird) };
  const noEleventh = marks.find(({ kind, degree }) => kind === "omit" && degree === "11");
  if (noEleventh !== undefined && extension === 13 && quality === "major")
    return { ...draft, marks: without(marks, noEleventh) };
  return draft;
}

const alters = (draft: ChordDraft, degree: string) =>
  draft.marks.find((mark) => mark.kind === "alter" && mark.degree === degree);

function withOneFifth(draft: ChordDraft): ChordDraft {
  const { quality, extension, suspension, marks } = draft;
  const flat = alters(draft, "b5");
  const sharp = alters(draft, "#5");
  const isTriad = extension === 0 && suspension === 0;
  const isSeventh = extension >= 7 && extension !== 69;
  if (quality === "augmented" && !isTriad) {
    const raised: ChordMark = sharp ?? { kind: "alter", degree: "#5", at: 0 };
    return { ...draft, quality: "major", marks: [raised, ...without(marks, raised)] };
  }
  if (quality === "augmented" && sharp !== undefined)
    return { ...draft, marks: without(marks, sharp) };
  if (quality === "major" && isTriad && sharp !== undefined && flat === undefined)
    return { ...draft, quality: "augmented", marks: without(marks, sharp) };
  if (flat === undefined) return draft;
  if (quality === "diminished" || quality === "half-diminished")
    return { ...draft, marks: without(marks, flat) };
  if (quality === "minor" && isTriad && sharp === undefined)
    return { ...draft, quality: "diminished", marks: without(marks, flat) };
  if (quality === "minor" && isSeventh && !draft.isMajorSeventh)
    return { ...draft, quality: "half-diminished", marks: without(marks, flat) };
  return draft;
}

/** C7(add9) is C9, and C6(add9) is C69. */
function withNinthAsNumber(draft: ChordDraft): ChordDraft {
  const { extension, marks } = draft;
  const [first, ...others] = marks;
  if (first?.kind !== "add" || first.degree !== "9") return draft;
  if (extension === 6) return { ...draft, extension: 69, marks: others };
  return extension === 7 ? { ...draft, extension: 9, marks: others } : draft;
}

// --- contradictions ---

const sign = (mark: ChordMark) => displayDegree(mark.degree);

function altWithMarks(draft: ChordDraft, named: Named): Refusal | undefined {
  const [first] = draft.marks;
  if (!draft.isAlt || first === undefined) return undefined;
  return {
    code: "chord-contradiction",
    message:
      "“alt” already says which notes are altered; print it alone, or the alterations alone.",
    at: first.at,
    candidates: [named({ marks: [] }), named({ isAlt: false })],
  };
}

function repeated(draft: ChordDraft, named: Named): Refusal | undefined {
  const { marks } = draft;
  const mark = marks.find((one, index) => marks.findIndex((m) => m.degree === one.degree) < index);
  if (mark === undefined) return undefined;
  return {
    code: "chord-twice",
    message: `${sign(mark)} is printed twice.`,
    at: mark.at,
    candidates: [named({ marks: without(marks, mark) })],
  };
}

/** C(♭9), Csus(♯11): an altered tension over a chord that has no seventh. */
function alteredTriad(draft: ChordDraft, named: Named): Refusal | undefined {
  if (draft.extension > 5) return undefined;
  const mark = draft.marks.find(
    ({ kind, degree }) => kind === "alter" && parseDegree(degree).number > 6,
  );
  if (mark === undefined) return undefined;
  const marks = draft.marks.map((one) => (one === mark ? { ...one, kind: "add" as const } : one));
  return {
    code: "chord-unclear",
    message: `${sign(mark)} is not clear on a chord without a seventh; print the seventh, or “add”.`,
    at: mark.at,
    candidates: [named({ extension: 7 }), named({ marks })],
  };
}

function alteredFifthOfPower(draft: ChordDraft, named: Named): Refusal | undefined {
  const mark = draft.marks.find(
    ({ kind, degree }) => kind === "alter" && parseDegree(degree).number === 5,
  );
  if (draft.extension !== 5 || mark === undefined) return undefined;
  return {
    code: "chord-contradiction",
    message: `A chord of root and fifth has no room for ${sign(mark)}.`,
    at: mark.at,
    candidates: [named({ extension: 0 }), named({ marks: without(draft.marks, mark) })],
  };
}

function flatSixthOfSeventh(draft: ChordDraft, named: Named): Refusal | undefined {
  const mark = draft.marks.find(({ degree }) => degree === "b6");
  if (mark === undefined || draft.extension < 6) return undefined;
  const marks = draft.marks.map((one) => (one === mark ? { ...one, degree: "b13" } : one));
  return {
    code: "chord-degree",
    message: "On this chord ♭6 is called ♭13.",
    at: mark.at,
    candidates: [named({ marks })],
  };
}

/** Whether the symbol itself prints the natural form of a tension. */
function statesNatural({ extension, marks, suspension }: ChordDraft, number: number): boolean {
  if (marks.some(({ kind, degree }) => kind === "add" && degree === `${number}`)) return true;
  if (number === 9) return extension === 9 || extension === 69 || suspension === 2;
  if (number === 11) return extension === 11 || suspension === 4;
  return extension === 13;
}

function alteredAgainstNatural(draft: ChordDraft, named: Named): Refusal | undefined {
  const { marks, extension } = draft;
  const mark = marks.find(({ kind, degree }) => {
    const { number, alteration } = parseDegree(degree);
    return kind !== "omit" && number > 8 && alteration !== 0 && statesNatural(draft, number);
  });
  if (mark === undefined) return undefined;
  const { number } = parseDegree(mark.degree);
  return {
    code: "chord-contradiction",
    message: `This chord prints both ${sign(mark)} and a natural ${number}.`,
    at: mark.at,
    candidates: [
      ...(extension > 7 && extension !== 69 ? [named({ extension: 7 })] : []),
      named({ marks: without(marks, mark) }),
    ],
  };
}

function thirdWithoutSuspension(draft: ChordDraft, named: Named): Refusal | undefined {
  const mark = draft.marks.find(({ kind, degree }) => kind === "add" && degree === "3");
  if (mark === undefined || draft.suspension !== 0) return undefined;
  return {
    code: "chord-contradiction",
    message: "Only a suspended chord can have its third added.",
    at: mark.at,
    candidates: [named({ marks: without(draft.marks, mark) })],
  };
}

function emptyOmission(draft: ChordDraft, named: Named): Refusal | undefined {
  const present = presentNumbers(draft);
  const mark = draft.marks.find(({ kind, degree }) => kind === "omit" && !present.has(degree));
  if (mark === undefined) return undefined;
  return {
    code: "chord-omit",
    message: `This chord has no ${mark.degree} to leave out.`,
    at: mark.at,
    candidates: [named({ marks: without(draft.marks, mark) })],
  };
}

function presentNumbers(draft: ChordDraft): ReadonlySet<string> {
  const { extension, suspension, isMajorSeventh, quality, marks } = draft;
  const isSeventh = extension >= 7 && extension !== 69;
  const isEleventhChord = extension === 11 && quality === "major" && !isMajorSeventh;
  const numbers = marks
    .filter(({ kind }) => kind !== "omit")
    .map(({ degree }) => `${parseDegree(degree).number}`);
  if (extension !== 5 && suspension === 0 && !isEleventhChord) numbers.push("3");
  if (!draft.isAlt) numbers.push("5");
  if (isSeventh) numbers.push("7");
  if (extension >= 9) numbers.push("9");
  if (extension === 11 || (extension === 13 && quality !== "major")) numbers.push("11");
  if (extension === 13) numbers.push("13");
  return new Set(numbers);
}

const CHECKS: readonly Check[] = [
  altWithMarks,
  alteredTriad,
  alteredFifthOfPower,
  flatSixthOfSeventh,
  alteredAgainstNatural,
  thirdWithoutSuspension,
  emptyOmission,
];
