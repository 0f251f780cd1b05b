import { fail, ok, pitchClass, type Result } from "../base/index.ts";
import { LETTER_SEMITONES, PLAIN_SPELLINGS } from "./letter-table.ts";
import { alterationOf, plainSigns, type PlainText } from "./signs.ts";
import { formatPitch, placeSpelling, spelledToMidi } from "./spelled-pitch.ts";
import type { Letter, ReadPitch, SpelledPitch } from "./spelled-pitch-types.ts";
import type { SoundingMidi } from "../base/index.ts";

const LOWEST_OCTAVE = -1;
const HIGHEST_OCTAVE = 9;
/** Octaves offered when none was given, most likely melody first. */
const LIKELY_OCTAVES = [4, 5, 3] as const;

/**
 * Reads a pitch as players type it: letter, accidental, octave (C4 is middle C). Small letters are
 * understood, since the first letter of a pitch is always its name: "bb4" is B♭4.
 * @param typed - "D5", "Bb4", "B♭4", "f#3", "F##4", "C-1"; octaves −1 to 9
 * @returns the spelled pitch with the key it sounds on, or a problem: `pitch-empty`,
 *   `pitch-letter`, `pitch-accidental`, `pitch-octave-missing`, `pitch-octave`, `pitch-rest`,
 *   `pitch-range`
 * @source octave numbers: ISO 16 / scientific pitch notation, C4 = MIDI note 60
 */
export function readPitch(typed: string): Result<ReadPitch> {
  const plain = plainSigns(typed);
  const start = plain.text.search(/\S/);
  if (start < 0)
    return fail("pitch-empty", "Type a melody note with its octave, such as D5.", {
      position: 0,
      suggestions: ["D5", "Bb4"],
    });
  const found = /^\s*([A-Ga-g])\s*(##|bb|[#bxn♮]?)\s*(-?\d+)\s*$/.exec(plain.text);
  if (found === null) return pitchProblem(plain, start);
  const [, letter = "", signs = "", digits = ""] = found;
  const octaveAt = plain.text.trimEnd().length - digits.length;
  const spelled: SpelledPitch = {
    letter: letter.toUpperCase() as Letter,
    alteration: alterationOf(plainAccidental(signs)),
    octave: Number(digits),
  };
  return checkedPitch(spelled, plain.typedAt[octaveAt] ?? 0);
}

const plainAccidental = (signs: string) => signs.replace("x", "##").replace(/[n♮]/, "");

function checkedPitch(spelled: SpelledPitch, octavePosition: number): Result<ReadPitch> {
  const { octave } = spelled;
  const sounding = 12 * (octave + 1) + LETTER_SEMITONES[spelled.letter] + spelled.alteration;
  if (octave < LOWEST_OCTAVE || octave > HIGHEST_OCTAVE)
    return fail(
      "pitch-octave",
      `Octave ${octave} does not exist; octaves run from -1 to 9, and C4 is middle C.`,
      { position: octavePosition, suggestions: inLikelyOctaves(spelled) },
    );
  if (sounding < 0 || sounding > 127)
    return fail(
      "pitch-range",
      `${formatPitch(spelled, { signs: "unicode" })} lies outside the notes that can be sounded, C-1 to G9.`,
      { position: octavePosition, suggestions: inLikelyOctaves(spelled) },
    );
  const midi = spelledToMidi(spelled);
  return ok({ spelled, sounding: midi, pitchClass: pitchClass(midi) });
}

/** Says what kept text from being a pitch. */
function pitchProblem(plain: PlainText, start: number) {
  const { text, typedAt } = plain;
  const [, letter = "", signs = ""] = /^\s*([A-Ga-g])\s*([#bxn♮]*)/.exec(text) ?? [];
  if (letter === "") return letterProblem(text.trim(), typedAt[start] ?? 0);
  const name = letter.toUpperCase() as Letter;
  const signsAt = text.indexOf(signs, start + 1);
  if (!/^(##|bb|[#bxn♮]?)$/.test(signs))
    return fail(
      "pitch-accidental",
      `"${signs}" is not an accidental; use b, bb, # or ##, then the octave.`,
      { position: typedAt[signsAt] ?? 0, suggestions: afterBadAccidental(name, signs, text) },
    );
  const alteration = alterationOf(plainAccidental(signs));
  const rest = text.slice(signsAt + signs.length);
  const restAt = signsAt + signs.length + Math.max(0, rest.search(/\S/));
  const suggestions = inLikelyOctaves({ letter: name, alteration });
  if (rest.trim() === "")
    return fail(
      "pitch-octave-missing",
      `${name}${signs} needs its octave, such as ${suggestions[0] ?? "C4"} (C4 is middle C).`,
      { position: typedAt[text.trimEnd().length] ?? 0, suggestions },
    );
  const marks = /^\s*('+)\s*$/.exec(rest)?.[1];
  if (marks !== undefined)
    return fail("pitch-octave", `Write the octave as a number: C4 is middle C, C5 the one above.`, {
      position: typedAt[restAt] ?? 0,
      suggestions: [formatPitch({ letter: name, alteration, octave: 3 + marks.length })],
    });
  const octave = /^\s*-?\d/.exec(rest)?.[0].trim();
  return fail(
    "pitch-rest",
    `"${rest.trim()}" is not an octave; a pitch is a letter, an accidental and one number, such as D5.`,
    {
      position: typedAt[restAt] ?? 0,
      suggestions:
        octave === undefined
          ? suggestions
          : readable([formatPitch({ letter: name, alteration, octave: Number(octave) })]),
    },
  );
}

function letterProblem(text: string, position: number) {
  const turned = /^(-?\d)\s*([A-Ga-g](?:##|bb|[#b])?)$/.exec(text);
  const german = /^[Hh]\s*(-?\d+)$/.exec(text);
  const asMidi = /^\d{1,3}$/.test(text) && Number(text) <= 127 ? Number(text) : undefined;
  const suggestions =
    asMidi !== undefined
      ? [formatPitch(plainPitch(asMidi as SoundingMidi))]
      : turned !== null
        ? [capital(`${turned[2] ?? ""}${turned[1] ?? ""}`)]
        : german !== null
          ? [`B${german[1] ?? ""}`]
          : [];
  return fail("pitch-letter", "A pitch starts with its letter, A to G, such as D5.", {
    position,
    suggestions: readable(suggestions),
  });
}

function plainPitch(midi: SoundingMidi): SpelledPitch {
  const spelled = PLAIN_SPELLINGS[pitchClass(midi)] ?? { letter: "C", alteration: 0 };
  return placeSpelling(midi, spelled);
}

function afterBadAccidental(letter: Letter, signs: string, text: string): readonly string[] {
  const octave = /-?\d+\s*$/.exec(text)?.[0].trim();
  const sign = signs.startsWith("b") ? "b" : "#";
  const names = [sign, sign + sign].map((accidental) => `${letter}${accidental}`);
  return readable(names.map((name) => `${name}${octave ?? LIKELY_OCTAVES[0]}`));
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

const inLikelyOctaves = (spelled: Omit<SpelledPitch, "octave">) =>
  LIKELY_OCTAVES.map((octave) => formatPitch({ ...spelled, octave }));

const readable = (texts: readonly string[]) => texts.filter((text) => readPitch(text).ok);
