import type { Count } from "../../base/index.ts";
import {
  barCount,
  barLength,
  barStart,
  beatLength,
  formatPitchClass,
  type Melody,
  type SpelledPitch,
  type Tuplet,
} from "../../theory/index.ts";
import { barPieces, type AbcPiece } from "./abc-pieces.ts";
import { signatureOfKey } from "./abc-signature.ts";

const BARS_PER_LINE = 4;
/** Numerator of the unit length over a quarter: eighth notes. */
const UNITS_PER_QUARTER = 2;
const SIGNS: Readonly<Record<string, string>> = Object.freeze({
  "-2": "__",
  "-1": "_",
  "0": "=",
  "1": "^",
  "2": "^^",
});

/**
 * A melody as ABC text, chord symbols in quotes, four bars a line. What readAbc makes of it is the
 * same melody, apart from the names of its notes.
 * @param melody - a melody in order
 * @returns the text, ending with a line break
 * @source ABC music standard 2.1 (2011)
 */
export function writeAbc(melody: Melody): string {
  const bars: string[] = [];
  const first = melody.pickup > 0 ? 0 : 1;
  const last = barCount(melody);
  for (let bar = first; bar <= last; bar += 1)
    bars.push(openingOf(melody, bar) + barText(melody, bar) + closingOf(melody, bar, last));
  const lines: string[] = [];
  for (let at = 0; at < bars.length; at += BARS_PER_LINE + (at === 0 ? 1 - first : 0))
    lines.push(bars.slice(at, at + BARS_PER_LINE + (at === 0 ? 1 - first : 0)).join(" "));
  return [...headOf(melody), ...lines, ""].join("\n");
}

function headOf({ title, metre, tempo, style, key }: Melody): readonly string[] {
  return [
    "X:1",
    `T:${title.replace(/\s+/g, " ").trim()}`,
    `M:${metre.beats}/${metre.beatType}`,
    "L:1/8",
    `Q:1/4=${tempo}`,
    `R:${style}`,
    `K:${formatPitchClass(key.tonic)}${key.mode === "minor" ? "m" : ""}`,
  ];
}

/** Signs before a bar: a repeat, an ending. The bar line itself stands at the end of the bar before. */
function openingOf({ repeats }: Melody, bar: Count): string {
  const begins = repeats.some(({ fromBar }) => fromBar === bar) ? "|: " : "";
  const ending = repeats.flatMap(({ endings = [] }) => endings).find((e) => e.fromBar === bar);
  return begins + (ending ? `[${ending.passes.join(",")} ` : "");
}

function closingOf({ repeats }: Melody, bar: Count, last: Count): string {
  const turnsBack = repeats.some(({ fromBar, toBar, endings = [] }) => {
    if (endings.length === 0) return toBar === bar;
    const isLast = (index: number): boolean => index === endings.length - 1 && index > 0;
    return endings.some((ending, index) => ending.toBar === bar && !isLast(index) && bar > fromBar);
  });
  if (turnsBack) return " :|";
  return bar === last ? " |]" : " |";
}

function barText(melody: Melody, bar: Count): string {
  const start = barStart(melody, bar);
  const end = bar === 0 ? melody.pickup : start + barLength(melody);
  const pieces = barPieces(melody, start, Math.min(end, melody.length));
  const beat = beatLength(melody);
  const offset = bar === 0 ? barLength(melody) - melody.pickup : 0;
  const shown = new Signs(signatureOfKey(melody.key));
  return pieces
    .map((piece, index) => {
      const at = piece.from - start + offset;
      const gap = index > 0 && (at % beat === 0 || piece.opens !== undefined) ? " " : "";
      return gap + pieceText(piece, shown, melody.division);
    })
    .join("");
}

function pieceText(piece: AbcPiece, shown: Signs, division: Count): string {
  const { chord, pitch, opens, isTied } = piece;
  const symbol = chord === undefined ? "" : `"${chord.replace(/["\n]/g, "")}"`;
  const group = opens === undefined ? "" : groupText(opens.tuplet, opens.notes);
  const name = pitch === undefined ? "z" : shown.textOf(pitch);
  const length = lengthText(piece, division);
  return `${group}${symbol}${name}${length}${isTied ? "-" : ""}`;
}

const groupText = ({ notes, inTimeOf }: Tuplet, count: Count): string =>
  notes === 3 && inTimeOf === 2 && count === 3 ? "(3" : `(${notes}:${inTimeOf}:${count}`;

function lengthText({ from, to, tuplet }: AbcPiece, division: Count): string {
  const { notes, inTimeOf } = tuplet ?? { notes: 1, inTimeOf: 1 };
  let above = (to - from) * UNITS_PER_QUARTER * notes;
  let below = division * inTimeOf;
  const common = greatestCommon(above, below);
  above /= common;
  below /= common;
  if (below === 1) return above === 1 ? "" : String(above);
  return `${above === 1 ? "" : above}/${below === 2 ? "" : below}`;
}

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}

/**
 * Accidentals of one bar. A sign is written where readers could differ on whether the one before
 * holds in other octaves.
 */
class Signs {
  private readonly byLetter = new Map<string, number>();
  private readonly byPitch = new Map<string, number>();

  constructor(private readonly signature: ReadonlyMap<string, number>) {}

  textOf({ letter, alteration, octave }: SpelledPitch): string {
    const usual = this.signature.get(letter) ?? 0;
    const place = letter + String(octave);
    const isPlain =
      (this.byLetter.get(letter) ?? usual) === alteration &&
      (this.byPitch.get(place) ?? usual) === alteration;
    this.byLetter.set(letter, alteration);
    this.byPitch.set(place, alteration);
    const sign = isPlain ? "" : (SIGNS[String(alteration)] ?? "");
    const name =
      octave >= 5
        ? letter.toLowerCase() + "'".repeat(octave - 5)
        : letter + ",".repeat(Math.max(0, 4 - octave));
    return sign + name;
  }
}
