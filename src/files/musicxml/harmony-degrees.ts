import type { Chord } from "../../theory/index.ts";
import { chordKinds, kindOfBasic, type ChordKindRow } from "./chord-kind-table.ts";
import { parseLabel, type DegreeLabel } from "./degree-label.ts";

/** A degree element of a harmony. */
export interface HarmonyDegree {
  readonly value: number;
  /** Against the kind's own degree for `alter`, against a dominant chord for `add`. */
  readonly alter: number;
  readonly type: "add" | "alter" | "subtract";
  /** False where the text of the kind says it already. */
  readonly isPrinted: boolean;
}

/** A chord as MusicXML names it, without root and bass. */
export interface HarmonyKind {
  readonly kind: string;
  /** How people write it, without root, bass and printed degrees: "13", "ø7", "7sus4". */
  readonly text: string;
  readonly degrees: readonly HarmonyDegree[];
}

/**
 * A chord as kind and degrees that together hold exactly the tones the symbol states and implies:
 * the eleventh that MusicXML counts into a thirteenth chord is taken out again, unprinted.
 * @param chord - the chord
 * @returns kind, text and degrees; printed ones first, in printed order
 * @source W3C MusicXML 4.0, kind, degree-type, degree-alter
 * @example harmonyKindOf(C13).degrees // [{ value: 11, alter: 0, type: "subtract", isPrinted: false }]
 */
export function harmonyKindOf(chord: Chord): HarmonyKind {
  if (chord.family === "no-chord") return { kind: "none", text: "N.C.", degrees: [] };
  const { basic, text, printed } = takenApart(chord);
  const row = kindRow(basic, chord);
  const wanted = ownDegrees(chord);
  const degrees = differences(row, wanted).map((degree) => ({
    ...degree,
    isPrinted: printed.some((label) => isSaidBy(label, degree, row)),
  }));
  const place = (degree: HarmonyDegree): number => {
    const index = printed.findIndex((label) => isSaidBy(label, degree, row));
    return index < 0 ? printed.length : index;
  };
  return { kind: row.kind, text, degrees: degrees.sort((a, b) => place(a) - place(b)) };
}

/**
 * The degrees that a symbol states and implies, a foreign slash bass left out.
 * @param chord - the chord
 * @returns ASCII labels, by pitch above the root
 */
export function ownDegrees(chord: Chord): readonly string[] {
  return chord.tones
    .filter(({ kind, role }) => role !== "bass" && (kind === "stated" || kind === "implied"))
    .map(({ degree }) => degree);
}

/** A symbol cut into its first part and the marks in its bracket. */
interface TakenApart {
  /** ASCII, as the table of kinds has it, a suspension left out. */
  readonly basic: string;
  readonly text: string;
  /** "b9", "add11", "no3". */
  readonly printed: readonly string[];
}

function takenApart(chord: Chord): TakenApart {
  const [, whole = "", marks] =
    /^(.*?)(?:\(((?!maj)[^()]*)\))?$/.exec(withoutRootAndBass(chord)) ?? [];
  const basic = whole.replace(/sus[24]$/, "");
  const printed = marks?.split(",") ?? [];
  if (chord.family === "half-diminished")
    return { basic, text: `ø${basic.slice(1)}`, printed: printed.filter((one) => one !== "b5") };
  return { basic, text: whole.replace(/^dim/, "°"), printed };
}

/** "Bb7(b9)/D" without root and bass: "7(b9)". */
function withoutRootAndBass({ symbol, hasSlashBass }: Chord): string {
  const suffix = symbol.replace(/^[A-G](bb|##|[b#])?/, "");
  return hasSlashBass ? suffix.slice(0, suffix.lastIndexOf("/")) : suffix;
}

function kindRow(basic: string, chord: Chord): ChordKindRow {
  const kind = kindName(basic, chord);
  const row = chordKinds.find((each) => each.kind === kind);
  if (row === undefined) throw new RangeError(`no MusicXML kind for the chord ${chord.symbol}`);
  return row;
}

function kindName(basic: string, { symbol, family }: Chord): string | undefined {
  if (symbol.includes("sus2")) return "suspended-second";
  if (symbol.includes("sus4")) return "suspended-fourth";
  return family === "half-diminished" ? "half-diminished" : kindOfBasic[basic];
}

type Difference = Omit<HarmonyDegree, "isPrinted">;

function differences(row: ChordKindRow, wanted: readonly string[]): readonly Difference[] {
  const given = row.degrees.map(parseLabel);
  const asked = wanted.map(parseLabel);
  const isSame = (a: DegreeLabel) => (b: DegreeLabel) =>
    a.number === b.number && a.alteration === b.alteration;
  const spare = given.filter((label) => !asked.some(isSame(label)));
  const found: Difference[] = [];
  for (const label of asked.filter((each) => !given.some(isSame(each)))) {
    const at = spare.findIndex(({ number }) => number === label.number);
    const { number: value, alteration } = label;
    if (at < 0) found.push({ value, alter: alteration - dominantAlteration(value), type: "add" });
    else {
      const [own] = spare.splice(at, 1);
      found.push({ value, alter: alteration - own!.alteration, type: "alter" });
    }
  }
  return [...found, ...spare.map(({ number }) => subtracted(number))];
}

const subtracted = (value: number): Difference => ({ value, alter: 0, type: "subtract" });

/** The seventh of a dominant is the minor one; everything else is major or perfect. */
const dominantAlteration = (value: number): number => (value === 7 ? -1 : 0);

/** Whether a printed mark says the same as a degree element. */
function isSaidBy(printed: string, degree: Difference, row: ChordKindRow): boolean {
  if (degree.type === "subtract") return printed === `no${degree.value}`;
  const { number, alteration } = parseLabel(printed.replace(/^(add|no)(maj)?/, ""));
  const base =
    degree.type === "add"
      ? dominantAlteration(number)
      : row.degrees.map(parseLabel).find((own) => own.number === number)?.alteration;
  return (
    !printed.startsWith("no") &&
    number === degree.value &&
    alteration - (base ?? 0) === degree.alter
  );
}
