import type { Count } from "../base/index.ts";
import {
  bestOfCell as bestOf,
  emptiedBy,
  searchAtlas,
  voicingOf,
  type Atlas,
  type AtlasCell,
  type AtlasProgress,
  type CellKey,
  type LayerId,
  type Question,
  type RuleId,
  type SearchOptions,
  type Voicing,
} from "../voicing/index.ts";

/**
 * Searches an atlas step by step, so that a worker can report and stop. Ask with a question that
 * readInquiry gave: it has been checked.
 * @param question - the question
 * @param layer - which voicings count
 * @param options - sections that must sound, most notes
 * @returns progress, then the atlas
 * @throws RangeError when the question was never checked and cannot be searched
 */
export function searchSteps(
  question: Question,
  layer: LayerId,
  options: Omit<SearchOptions, "layer"> = {},
): Generator<AtlasProgress, Atlas> {
  const search = searchAtlas(question, { ...options, layer });
  if (!search.ok) throw new RangeError(search.problem.message);
  return search.value;
}

/**
 * The best voicings of one cell, each of another stack.
 * @param question - the question
 * @param key - the cell
 * @param layer - which voicings count
 * @param count - how many at most
 * @param options - sections that must sound
 * @returns best first; empty where the cell is out of reach
 */
export function bestOfCell(
  question: Question,
  key: CellKey,
  layer: LayerId,
  count: Count,
  options: Omit<SearchOptions, "layer"> = {},
): readonly AtlasCell[] {
  const found = bestOf(question, key, count, { ...options, layer });
  return found.ok ? found.value : [];
}

/**
 * The voicing of a cell.
 * @param question - the question
 * @param cell - the cell
 * @returns who sounds what
 */
export function voicingOfCell(question: Question, cell: AtlasCell): Voicing {
  return voicingOf(question, cell);
}

/**
 * Which rules leave a question without any answer.
 * @param question - a question whose atlas came out empty
 * @param layer - the layer that came out empty
 * @returns rules each of which, dropped alone, would give answers
 */
export function whyEmpty(question: Question, layer: LayerId): readonly RuleId[] {
  return emptiedBy(question, { layer });
}
