import { fail, ok, type PitchClass, type Result } from "../base/index.ts";
import { checkedDraft } from "./chord-check.ts";
import { choiceSentences } from "./chord-choices.ts";
import type { ChordDraft, Drafted, Refusal } from "./chord-draft-types.ts";
import { draftChord } from "./chord-grammar.ts";
import { chordSuffix } from "./chord-text.ts";
import { chordTokens } from "./chord-token.ts";
import { chordTones } from "./chord-tones.ts";
import type { Chord, ChordTone } from "./chord-types.ts";
import { foreignDegree } from "./foreign-degree.ts";
import { alterationOf, plainSigns } from "./signs.ts";
import { formatPitchClass, spelledPitchClass } from "./spelled-pitch.ts";
import type { Letter, SpelledPitchClass } from "./spelled-pitch-types.ts";

/** A symbol cut into root, suffix and bass, each read. */
interface ChordParts {
  readonly root: SpelledPitchClass;
  readonly draft: ChordDraft;
  readonly bass: SpelledPitchClass | undefined;
}

/**
 * Reads a chord symbol as players write it: triads, sixths, sevenths and their extensions,
 * alterations, suspensions, additions and omissions, slash basses, N.C.; b ♭ # ♯ and double signs,
 * MA maj M Δ ∆ ^, m mi min −, ° o dim, ø, +. What cannot be read for certain is refused.
 * @param typed - "F13", "Cm7b5", "B♭maj7/D", "C7(b9,b13)", "N.C."
 * @returns the chord with its tones and the readings chosen where the trade is split, or a problem
 *   with its place in `typed` and up to three symbols that can be read. Codes: `chord-empty`,
 *   `chord-root`, `chord-lower-case`, `chord-unknown`, `chord-number`, `chord-number-missing`,
 *   `chord-degree`, `chord-unclear`, `chord-contradiction`, `chord-twice`, `chord-omit`,
 *   `chord-sign`, `chord-bracket-open`, `chord-dangling`, `chord-bass`
 * @source kinds and degrees: W3C MusicXML 4.0, kind-value; tensions: tension-table.ts
 */
export function readChord(typed: string): Result<Chord> {
  const { text, typedAt } = plainSigns(typed);
  if (/^\s*n\.?\s*c\.?\s*$/i.test(text)) return ok(noChord(typed.trim()));
  const parts = chordParts(text);
  if (parts.ok) return ok(chordOf(typed.trim(), parts.value));
  const { code, message, at, candidates } = parts.refusal;
  return fail(code, message, {
    position: typedAt[at] ?? typed.length,
    suggestions: readableOf(candidates, text),
  });
}

const MOST_SUGGESTIONS = 3;

function readableOf(candidates: readonly string[], text: string): readonly string[] {
  const bass = /\/\s*[A-G](?:bb|##|[b#])?\s*$/.exec(text)?.[0].trim() ?? "";
  const whole = candidates.map((candidate) =>
    candidate.trim().endsWith(bass) ? candidate.trim() : candidate.trim() + bass,
  );
  return [...new Set(whole)]
    .filter((candidate) => candidate !== text.trim() && chordParts(candidate).ok)
    .slice(0, MOST_SUGGESTIONS);
}

function chordParts(text: string): Drafted<ChordParts> {
  const start = text.search(/\S/);
  const root = /^\s*([A-G])(bb|##|[b#]?)/.exec(text);
  if (start < 0 || root === null) return { ok: false, refusal: rootRefusal(text, start) };
  const slash = /\/\s*([A-G])(bb|##|[b#]?)\s*$/.exec(text);
  const end = slash === null ? text.length : slash.index;
  const [whole, letter = "", signs = ""] = root;
  const drafted = draftChord(chordTokens(text, whole.length, end), text, end);
  if (!drafted.ok) return drafted;
  const checked = checkedDraft(drafted.value, letter + signs);
  if (!checked.ok) return checked;
  const isDoubleFlat = signs === "bb" && /^(5|9|11|13)/.test(text.slice(whole.length));
  const draft = isDoubleFlat
    ? { ...checked.value, choices: [...checked.value.choices, "double-flat-root" as const] }
    : checked.value;
  const bass = slash === null ? undefined : spelled(slash[1], slash[2]);
  return { ok: true, value: { root: spelled(letter, signs), draft, bass } };
}

const spelled = (letter = "C", signs = ""): SpelledPitchClass => ({
  letter: letter as Letter,
  alteration: alterationOf(signs),
});

function rootRefusal(text: string, start: number): Refusal {
  if (start < 0)
    return {
      code: "chord-empty",
      message: "Type a chord symbol, such as F13 or Cm7.",
      at: 0,
      candidates: ["F13", "Cm7", "Bbmaj7"],
    };
  const rest = text.slice(start).trimEnd();
  const capital = rest.charAt(0).toUpperCase() + rest.slice(1);
  if (/^[a-g]/.test(rest))
    return {
      code: "chord-lower-case",
      message: "The root of a chord is a capital letter; a small one could mean a minor chord.",
      at: start,
      candidates: /^[A-G][b#]*$/.test(capital) ? [capital, `${capital}m`] : [capital],
    };
  return {
    code: "chord-root",
    message: `A chord starts with its root, a letter from A to G; “${[...rest][0] ?? ""}” is not one.`,
    at: start,
    candidates: /^[Hh]/.test(rest) ? [`B${rest.slice(1)}`] : [],
  };
}

function chordOf(written: string, { root, draft, bass }: ChordParts): Chord {
  const found = chordTones(draft, root);
  const slash = (signs: "ascii" | "unicode") =>
    bass === undefined ? "" : `/${formatPitchClass(bass, { signs })}`;
  const bassPitchClass = spelledPitchClass(bass ?? root);
  return {
    written,
    symbol: formatPitchClass(root) + chordSuffix(draft, "ascii") + slash("ascii"),
    display:
      formatPitchClass(root, { signs: "unicode" }) +
      chordSuffix(draft, "unicode") +
      slash("unicode"),
    family: found.family,
    root,
    rootPitchClass: spelledPitchClass(root),
    bass: bass ?? root,
    bassPitchClass,
    hasSlashBass: bass !== undefined,
    tones: bass === undefined ? found.tones : withBass(found.tones, bass, bassPitchClass, root),
    printedExtras: found.printedExtras,
    choices: choiceSentences(draft, found),
  };
}

/** A slash bass that is no tone of the chord above it joins the tones, spelled as written. */
function withBass(
  tones: readonly ChordTone[],
  bass: SpelledPitchClass,
  bassPitchClass: PitchClass,
  root: SpelledPitchClass,
): readonly ChordTone[] {
  const there = tones.find((tone) => tone.pitchClass === bassPitchClass);
  if (there !== undefined && (there.kind === "stated" || there.kind === "implied")) return tones;
  const aboveRoot = (bassPitchClass - spelledPitchClass(root) + 12) % 12;
  const tone: ChordTone = {
    spelled: bass,
    name: formatPitchClass(bass),
    pitchClass: bassPitchClass,
    aboveRoot,
    degree: there?.degree ?? foreignDegree(aboveRoot, tones),
    role: "bass",
    kind: "stated",
    isAltered: there?.isAltered ?? false,
    isNaturalTension: false,
  };
  return [...tones.filter((other) => other !== there), tone].sort(
    (a, b) => a.aboveRoot - b.aboveRoot,
  );
}

function noChord(written: string): Chord {
  const root = spelled("C");
  return {
    written,
    symbol: "N.C.",
    display: "N.C.",
    family: "no-chord",
    root,
    rootPitchClass: spelledPitchClass(root),
    bass: root,
    bassPitchClass: spelledPitchClass(root),
    hasSlashBass: false,
    tones: [],
    printedExtras: [],
    choices: [],
  };
}
