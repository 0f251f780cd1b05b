import { ok, type Count, type Result } from "../base/index.ts";
import {
  bestOfCell,
  searchAtlas,
  type Atlas,
  type AtlasCell,
  type CellKey,
  type LayerId,
  type Question,
  type SearchOptions,
} from "../voicing/index.ts";

/** Which textures are wanted; what is left out is free. */
export interface Wanted {
  readonly span?: number;
  readonly notes?: Count;
  readonly players?: Count;
  readonly layer: LayerId;
  readonly sections?: SearchOptions["sections"];
  readonly limit: Count;
}

/**
 * Searches the whole atlas.
 * @param question - the question
 * @param options - layer, sections that must sound, distinct notes at most
 * @returns the atlas, or the problem with the question
 */
export function wholeAtlas(question: Question, options: SearchOptions): Result<Atlas> {
  const search = searchAtlas(question, options);
  if (!search.ok) return search;
  for (;;) {
    const step = search.value.next();
    if (step.done === true) return ok(step.value);
  }
}

/**
 * The voicings to show. With span, notes and players all given: the best of that cell, each of
 * another stack. Otherwise the best of each cell that fits; without a number of players, those with
 * the most players, because costs of different numbers say nothing about each other.
 * @param question - the question
 * @param wanted - which textures
 * @returns cells, least cost first, then narrow before wide and few notes before many
 */
export function chosenCells(question: Question, wanted: Wanted): Result<readonly AtlasCell[]> {
  const { span, notes, players, layer, sections, limit } = wanted;
  const within = { layer, ...(sections === undefined ? {} : { sections }) };
  if (span !== undefined && notes !== undefined && players !== undefined)
    return bestOfCell(question, { span, notes, players }, limit, within);
  const atlas = wholeAtlas(question, {
    ...within,
    ...(notes === undefined ? {} : { mostNotes: notes }),
  });
  if (!atlas.ok) return atlas;
  const fitting = atlas.value.cells.filter(({ key }) => fits(key, wanted));
  const most = players ?? Math.max(...fitting.map(({ key }) => key.players));
  const isLine = (cell: AtlasCell): number => (cell.family === "line" ? 1 : 0);
  return ok(
    fitting
      .filter(({ key }) => key.players === most)
      .sort(
        (a, b) =>
          isLine(a) - isLine(b) ||
          a.cost - b.cost ||
          a.key.span - b.key.span ||
          a.key.notes - b.key.notes,
      )
      .slice(0, limit),
  );
}

const fits = (key: CellKey, { span, notes, players }: Wanted): boolean =>
  (span === undefined || key.span === span) &&
  (notes === undefined || key.notes === notes) &&
  (players === undefined || key.players === players);
