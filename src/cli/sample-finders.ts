import { readInquiry, firstInquiry } from "../explore/index.ts";
import {
  interleavingOf,
  voicingOf,
  type AtlasCell,
  type LayerId,
  type Question,
} from "../voicing/index.ts";
import { wholeAtlas } from "./chosen-cells.ts";
import type { Answered } from "./own-voicing.ts";
import { coveredAndHeardFlute, lowAndHigherNinth } from "./sample-constructions.ts";
import type { FinderId, SamplePair } from "./sample-table.ts";

/** Two voicings that differ in one thing, each with its question. */
export type FoundPair = readonly [Answered, Answered];

/**
 * Finds the two voicings of a pair of listening examples.
 * @param pair - chord, melody, dynamic, way of finding
 * @returns both; ties go to what stands first in the atlas: narrow, few notes, few players
 * @throws RangeError when there is no such pair
 */
export function findPair(pair: SamplePair): FoundPair {
  return finders[pair.find](pair);
}

const finders: Readonly<Record<FinderId, (pair: SamplePair) => FoundPair>> = {
  "narrow and wide": (pair) =>
    fromAtlas(pair, (cells) =>
      farthest(
        wholeBand(alike(cells, pair)),
        ({ key }) => key.notes,
        ({ key }) => key.span,
      ),
    ),
  "few and many players": (pair) =>
    fromAtlas(pair, (cells) => farthest(alike(cells, pair), stackText, ({ key }) => key.players)),
  "few and many notes": (pair) =>
    fromAtlas(pair, (cells) =>
      farthest(
        wholeBand(cells),
        ({ key }) => key.span,
        ({ key }) => key.notes,
      ),
    ),
  "by section and across": bySectionAndAcross,
  "low and higher ninth": lowAndHigherNinth,
  "covered and heard flute": coveredAndHeardFlute,
};

type CellPair = readonly [AtlasCell, AtlasCell];

function fromAtlas(
  pair: SamplePair,
  choose: (cells: readonly AtlasCell[]) => CellPair | undefined,
): FoundPair {
  const question = questionOf(pair);
  return answered(pair, question, choose(harmonyOf(question, "free")));
}

/** The same notes twice: every section on its own stretch of them, and all sections interlocked. */
function bySectionAndAcross(pair: SamplePair): FoundPair {
  const question = questionOf(pair);
  const crossed = wholeBand(alike(harmonyOf(question, "crossed"), pair));
  const twins = wholeBand(alike(harmonyOf(question, "by-section"), pair)).flatMap((own) => {
    const twin = crossed.find((cell) => stackText(cell) === stackText(own));
    return twin === undefined ? [] : [[own, twin] as const];
  });
  const best = twins.reduce<CellPair | undefined>(
    (found, next) =>
      found === undefined || interlocked(next, question) > interlocked(found, question)
        ? next
        : found,
    undefined,
  );
  return answered(pair, question, best);
}

const interlocked = ([, crossed]: CellPair, question: Question): number =>
  interleavingOf(voicingOf(question, crossed)).value ?? 0;

function questionOf({ chord, melody, dynamic, names }: SamplePair): Question {
  const inquiry = { ...firstInquiry(), chordText: chord, melodyText: melody, dynamic };
  const reading = readInquiry(inquiry);
  if (!reading.ok) throw new RangeError(`${names[0]}: ${reading.problems[0]?.message}`);
  return reading.question;
}

function harmonyOf(question: Question, layer: LayerId): readonly AtlasCell[] {
  const atlas = wholeAtlas(question, { layer });
  if (!atlas.ok) throw new RangeError(atlas.problem.message);
  return atlas.value.cells.filter(({ family }) => family === "harmony");
}

function wholeBand(cells: readonly AtlasCell[]): readonly AtlasCell[] {
  const most = Math.max(...cells.map(({ key }) => key.players));
  return cells.filter(({ key }) => key.players === most);
}

/** Cells with the number of notes and the span that the pair asks for. */
const alike = (cells: readonly AtlasCell[], { notes, span }: SamplePair): readonly AtlasCell[] =>
  cells.filter(
    ({ key }) =>
      (notes === undefined || key.notes === notes) && (span === undefined || key.span === span),
  );

const stackText = ({ pitches }: AtlasCell): string =>
  [...new Set(pitches.filter((pitch) => pitch > 0))].sort((a, b) => a - b).join(" ");

/** Of the cells that are alike in one thing, the two that lie furthest apart in another. */
function farthest(
  cells: readonly AtlasCell[],
  groupOf: (cell: AtlasCell) => string | number,
  value: (cell: AtlasCell) => number,
): CellPair | undefined {
  const groups = new Map<string | number, CellPair>();
  for (const cell of cells) {
    const [least, most] = groups.get(groupOf(cell)) ?? [cell, cell];
    groups.set(groupOf(cell), [
      value(cell) < value(least) ? cell : least,
      value(cell) > value(most) ? cell : most,
    ]);
  }
  const distance = ([least, most]: CellPair): number => value(most) - value(least);
  return [...groups.values()].reduce<CellPair | undefined>(
    (found, next) => (found === undefined || distance(next) > distance(found) ? next : found),
    undefined,
  );
}

function answered(
  { names }: SamplePair,
  question: Question,
  cells: CellPair | undefined,
): FoundPair {
  if (cells === undefined) throw new RangeError(`${names.join(" and ")}: no such voicings`);
  const [first, second] = cells.map((cell) => ({ question, voicing: voicingOf(question, cell) }));
  return [first!, second!];
}
