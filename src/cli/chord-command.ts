import { displayDegree, formatPitchClass, readChord, type Chord } from "../theory/index.ts";
import type { Answer, Command, Request } from "./option-types.ts";
import { inColumns } from "./columns.ts";

/** `chord SYMBOL`: the tones of a chord, what each is and how it belongs. */
export const chordCommand: Command = {
  name: "chord",
  summary: "Reads a chord symbol and lists its tones",
  options: [
    {
      name: "symbol",
      kind: "text",
      isPlain: true,
      isRequired: true,
      words: "chord symbol as players write it, such as F13 or C7(b9,b13)",
    },
  ],
  run,
};

function run(request: Request): Answer {
  const read = readChord(String(request["symbol"]));
  if (!read.ok) return read;
  const chord = read.value;
  return { ok: true, data: chordData(chord), text: () => chordText(chord) };
}

/**
 * A chord as data for programs.
 * @param chord - the chord, read
 * @returns symbol, root and bass as ASCII names, and the tones root upwards
 */
export function chordData(chord: Chord) {
  const isChord = chord.family !== "no-chord";
  return {
    symbol: chord.symbol,
    display: chord.display,
    family: chord.family,
    root: isChord ? formatPitchClass(chord.root) : null,
    bass: isChord ? formatPitchClass(chord.bass) : null,
    tones: chord.tones.map(({ name, pitchClass, degree, role, kind }) => ({
      name,
      pitchClass,
      degree,
      role,
      kind,
    })),
    choices: chord.choices,
  };
}

function chordText(chord: Chord): string {
  const rows = chord.tones.map(({ spelled, degree, role, kind }) => [
    formatPitchClass(spelled, { signs: "unicode" }),
    displayDegree(degree),
    role,
    kind,
  ]);
  const heading = `${chord.display}: ${chord.family}\n`;
  const table = rows.length > 0 ? inColumns([["tone", "degree", "role", "kind"], ...rows]) : "";
  return [heading, table, ...chord.choices.map((choice) => `${choice}\n`)].join("");
}
