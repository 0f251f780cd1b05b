import type { Count } from "../../base/index.ts";
import type { Melody, SpelledPitch, Tuplet } from "../../theory/index.ts";

/** A note or rest as it is written in one bar, from and to in divisions from the melody's start. */
export interface AbcPiece {
  readonly from: Count;
  readonly to: Count;
  /** Left out for a rest. */
  readonly pitch?: SpelledPitch;
  readonly isTied: boolean;
  readonly chord?: string;
  readonly tuplet?: Tuplet;
  /** Set on the first of a tuplet: so many pieces follow, this one included. */
  readonly opens?: { readonly tuplet: Tuplet; readonly notes: Count };
}

/** Plain and dotted values in quarters, longest first: what one sign can stand for. */
const VALUES = Object.freeze([
  8, 6, 4, 3, 2, 1.5, 1, 0.75, 0.5, 0.375, 0.25, 0.1875, 0.125, 0.0625,
]);

/**
 * Notes and rests of a stretch of a melody, none longer than one sign can stand for, cut where a
 * chord begins.
 * @param melody - the melody
 * @param start - first division
 * @param end - last division, excluded
 * @returns pieces in order without gaps
 */
export function barPieces(melody: Melody, start: Count, end: Count): readonly AbcPiece[] {
  const plain = stretchesOf(melody, start, end).flatMap((piece) => atChords(piece, melody));
  return grouped(
    plain.flatMap((piece) => asValues(piece, melody.division, start)),
    melody,
  );
}

function stretchesOf(melody: Melody, start: Count, end: Count): readonly AbcPiece[] {
  const pieces: AbcPiece[] = [];
  let at = start;
  const rest = (to: Count): void => {
    // A rest beside a tuplet is cut at the beats, so that each part fits its own group.
    for (let next: number; at < to; at = next) {
      const quarter = start + Math.floor((at - start) / melody.division + 1) * melody.division;
      const isEven = isPlainTime(at - start, melody) && isPlainTime(to - start, melody);
      next = isEven ? to : Math.min(to, quarter);
      pieces.push({ from: at, to: next, isTied: false });
    }
  };
  for (const note of melody.notes) {
    const from = Math.max(start, note.onset);
    const noteEnd = note.onset + note.duration;
    const to = Math.min(end, noteEnd);
    if (to <= from) continue;
    rest(from);
    const isTied = note.isTied || to < noteEnd;
    pieces.push({
      from,
      to,
      pitch: note.pitch,
      isTied,
      ...(note.tuplet ? { tuplet: note.tuplet } : {}),
    });
    at = to;
  }
  rest(end);
  return pieces;
}

/** Whether a time lies where halves of quarters, and halves of those, fall. */
function isPlainTime(at: Count, { division }: Pick<Melody, "division">): boolean {
  return Number.isInteger((at * 32) / division);
}

function atChords(piece: AbcPiece, { changes }: Melody): readonly AbcPiece[] {
  const inside = changes.filter(({ onset }) => onset > piece.from && onset < piece.to);
  const cuts: readonly Count[] = [piece.from, ...inside.map(({ onset }) => onset)];
  return cuts.map((from, index) => {
    const to = cuts[index + 1] ?? piece.to;
    const chord = changes.find(({ onset }) => onset === from)?.text;
    const goesOn = to < piece.to && piece.pitch !== undefined;
    return {
      ...piece,
      from,
      to,
      isTied: goesOn || piece.isTied,
      ...(chord === undefined ? {} : { chord }),
    };
  });
}

/** One sign each. */
function asValues(piece: AbcPiece, division: Count, start: Count): readonly AbcPiece[] {
  const isPlain =
    isPlainTime(piece.to - piece.from, { division }) &&
    isPlainTime(piece.from - start, { division });
  if (!isPlain) return [{ ...piece, tuplet: piece.tuplet ?? tupletFor(piece, division) }];
  const plain = withoutTuplet(piece);
  const parts: AbcPiece[] = [];
  let at = piece.from;
  while (at < piece.to) {
    const left = (piece.to - at) / division;
    const value = piece.tuplet ? left : (VALUES.find((each) => each <= left) ?? left);
    const to = at + value * division;
    const part = { ...(piece.tuplet ? piece : plain), from: at, to };
    const isTied = to < piece.to ? piece.pitch !== undefined : piece.isTied;
    parts.push(at === piece.from ? { ...part, isTied } : { ...withoutChord(part), isTied });
    at = to;
  }
  return parts;
}

function withoutTuplet({ from, to, pitch, isTied, chord }: AbcPiece): AbcPiece {
  return {
    from,
    to,
    isTied,
    ...(pitch === undefined ? {} : { pitch }),
    ...(chord === undefined ? {} : { chord }),
  };
}

function withoutChord(piece: AbcPiece): AbcPiece {
  const { from, to, pitch, isTied } = piece;
  return {
    from,
    to,
    isTied,
    ...(pitch === undefined ? {} : { pitch }),
    ...(piece.tuplet === undefined ? {} : { tuplet: piece.tuplet }),
  };
}

/** The tuplet that a length without one must belong to. */
function tupletFor({ from, to }: AbcPiece, division: Count): Tuplet {
  const parts = division / greatestCommon(to - from, division);
  const odd = [5, 7, 3].find((count) => parts % count === 0) ?? 3;
  return { notes: odd, inTimeOf: odd === 3 ? 2 : 4 };
}

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}

/** Tells the first of each tuplet how many belong to it: up to the next even place. */
function grouped(pieces: readonly AbcPiece[], melody: Melody): readonly AbcPiece[] {
  const found: AbcPiece[] = [];
  let open = 0;
  let start = pieces[0]?.from ?? 0;
  const origin = start;
  pieces.forEach((piece) => {
    if (piece.tuplet === undefined) {
      open = 0;
      return found.push(piece);
    }
    if (open === 0) start = found.length;
    open += 1;
    found.push(piece);
    const isWhole = isGroup(found.slice(start), piece.tuplet, melody.division);
    if (!isWhole || !isPlainTime(piece.to - origin, melody)) return undefined;
    found[start] = { ...found[start]!, opens: { tuplet: piece.tuplet, notes: open } };
    open = 0;
    return undefined;
  });
  return found.map((piece, index) =>
    piece.tuplet && !isInGroup(found, index)
      ? { ...piece, opens: { tuplet: piece.tuplet, notes: 1 } }
      : piece,
  );
}

/** Whether pieces fill a tuplet of plain notes. */
function isGroup(pieces: readonly AbcPiece[], { inTimeOf }: Tuplet, division: Count): boolean {
  const length = pieces.reduce((sum, { from, to }) => sum + to - from, 0) / division / inTimeOf;
  return Number.isInteger(Math.log2(length));
}

function isInGroup(pieces: readonly AbcPiece[], index: Count): boolean {
  for (let at = index; at >= 0; at -= 1) {
    const opens = pieces[at]?.opens;
    if (opens) return at + opens.notes > index;
  }
  return false;
}
