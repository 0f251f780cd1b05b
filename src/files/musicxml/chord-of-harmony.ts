import { readChord, type Chord, type SpelledPitchClass } from "../../theory/index.ts";
import { formatPitchClass } from "../../theory/index.ts";
import { chordKinds } from "./chord-kind-table.ts";
import { labelText, parseLabel, semitonesOf, type DegreeLabel } from "./degree-label.ts";
import { ownDegrees, type HarmonyDegree, type HarmonyKind } from "./harmony-degrees.ts";

/** A chord of a file and how sure its reading is. */
export interface ReadHarmony {
  readonly chord: Chord;
  /** True when the chord holds exactly the tones that kind and degrees spell. */
  readonly isExact: boolean;
}

/**
 * The chord of a harmony element. First what the file prints is read, then kind and degrees in
 * words; the first reading whose tones are those that kind and degrees spell is taken.
 * @param root - at concert pitch
 * @param harmony - kind, text and degrees
 * @param bass - at concert pitch, where the file has one
 * @returns the chord; undefined where nothing can be read
 * @source W3C MusicXML 4.0, kind, degree
 */
export function chordOfHarmony(
  root: SpelledPitchClass,
  harmony: HarmonyKind,
  bass: SpelledPitchClass | undefined,
): ReadHarmony | undefined {
  if (harmony.kind === "none") return exact(readChord("N.C."));
  const slash = bass === undefined ? "" : `/${formatPitchClass(bass)}`;
  const found: Chord[] = [];
  const wanted = spelledOut(harmony);
  for (const suffix of suffixesOf(harmony)) {
    const read = readChord(formatPitchClass(root) + suffix + slash);
    if (!read.ok) continue;
    if (wanted !== undefined && sameTones(read.value, wanted))
      return { chord: read.value, isExact: true };
    found.push(read.value);
  }
  return found[0] === undefined ? undefined : { chord: found[0], isExact: false };
}

const exact = (read: ReturnType<typeof readChord>): ReadHarmony | undefined =>
  read.ok ? { chord: read.value, isExact: true } : undefined;

/** Degrees that kind and degree elements spell; undefined for a kind that spells nothing. */
function spelledOut({ kind, degrees }: HarmonyKind): readonly DegreeLabel[] | undefined {
  const row = chordKinds.find((each) => each.kind === kind);
  if (row === undefined) return undefined;
  let labels = row.degrees.map(parseLabel);
  for (const { value, alter, type } of degrees) {
    const own = labels.find(({ number }) => number === value);
    if (type === "add") {
      const alteration = alter + (value === 7 ? -1 : 0);
      labels = [...labels, { number: value, alteration }];
    } else if (type === "subtract") labels = labels.filter((label) => label !== own);
    else {
      const changed = { number: value, alteration: (own?.alteration ?? 0) + alter };
      labels = [...labels.filter((label) => label !== own), changed];
    }
  }
  return labels;
}

function sameTones(chord: Chord, wanted: readonly DegreeLabel[]): boolean {
  const own = new Set(ownDegrees(chord).map((label) => semitonesOf(parseLabel(label))));
  const asked = new Set(wanted.map(semitonesOf));
  return own.size === asked.size && [...asked].every((each) => own.has(each));
}

/** Suffixes that may say the same, the likeliest first. */
function suffixesOf(harmony: HarmonyKind): readonly string[] {
  const { kind, text, degrees } = harmony;
  const row = chordKinds.find((each) => each.kind === kind);
  const printed = marksOf(
    degrees.filter(({ isPrinted }) => isPrinted),
    row?.degrees,
  );
  const all = marksOf(degrees, row?.degrees);
  const own = row?.suffix;
  return [
    ...(text === "" ? [] : [...printed.map((marks) => text + marks), text]),
    ...suspendedSuffixes(harmony),
    ...(own === undefined ? [] : [...majorSevenths(own, degrees), ...all.map((m) => own + m)]),
    ...(own === undefined ? [] : [...printed.map((marks) => own + marks), own]),
  ];
}

/** "(b9,#11)", and the same with "add" before altered tones, as triads need it. */
function marksOf(
  degrees: readonly HarmonyDegree[],
  own: readonly string[] = [],
): readonly string[] {
  if (degrees.length === 0) return [""];
  return [false, true].map(
    (saysAdd) => `(${degrees.map((degree) => markOf(degree, own, saysAdd)).join(",")})`,
  );
}

function markOf(
  { value, alter, type }: HarmonyDegree,
  own: readonly string[],
  saysAdd: boolean,
): string {
  if (type === "subtract") return `no${value}`;
  if (type === "add") {
    if (value === 7) return alter > 0 ? "addmaj7" : "7";
    const label = labelText({ number: value, alteration: alter });
    return alter === 0 || saysAdd ? `add${label}` : label;
  }
  const base = own.map(parseLabel).find(({ number }) => number === value)?.alteration ?? 0;
  return labelText({ number: value, alteration: base + alter });
}

/** A triad with a major seventh added: "dim(maj7)". */
function majorSevenths(own: string, degrees: readonly HarmonyDegree[]): readonly string[] {
  const isSeventh = ({ value, type, alter }: HarmonyDegree): boolean =>
    value === 7 && type === "add" && alter === 1;
  if (!degrees.some(isSeventh)) return [];
  return marksOf(degrees.filter((degree) => !isSeventh(degree))).map(
    (marks) => `${own}(maj7)${marks}`,
  );
}

/**
 * Suspensions: a suspended kind with what is added to it, or a chord whose third a fourth or second
 * replaces.
 */
function suspendedSuffixes({ kind, degrees }: HarmonyKind): readonly string[] {
  const isReplaced = (numbers: readonly number[]): boolean =>
    degrees.some(({ value, type }) => value === 3 && type === "subtract") &&
    degrees.some(
      ({ value, type, alter }) => numbers.includes(value) && type === "add" && alter === 0,
    );
  const isFourth = kind === "suspended-fourth" || isReplaced([4, 11]);
  if (!isFourth && kind !== "suspended-second" && !isReplaced([2])) return [];
  const word = isFourth ? "sus4" : "sus2";
  const row = chordKinds.find((each) => each.kind === kind);
  const before = kind.startsWith("suspended") ? [] : [row?.suffix ?? ""];
  const rest = degrees.filter(
    ({ value, type }) =>
      !(type === "subtract" && value === 3) &&
      !(type === "add" && [2, 4, 11].includes(value) && !kind.startsWith("suspended")),
  );
  const numbers = rest.filter(({ type, alter }) => type === "add" && alter === 0);
  const seventh = rest.find(({ value, type }) => value === 7 && type === "add");
  const highest = Math.max(7, ...numbers.map(({ value }) => value).filter((value) => value > 7));
  const others = rest.filter((degree) => degree !== seventh);
  const unnumbered = others.filter((degree) => !numbers.includes(degree));
  const major = seventh !== undefined && seventh.alter > 0 ? "maj" : "";
  const withSeventh =
    seventh === undefined
      ? []
      : [
          ...marksOf(unnumbered).map((marks) => `${major}${highest}${word}${marks}`),
          ...marksOf(others).map((marks) => `${major}7${word}${marks}`),
        ];
  return [...withSeventh, ...before.flatMap((basic) => marksOf(rest).map((m) => basic + word + m))];
}
