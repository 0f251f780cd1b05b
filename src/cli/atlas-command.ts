import { whyEmpty } from "../explore/index.ts";
import { printProblem, voicingOf, type AtlasCell, type Question } from "../voicing/index.ts";
import { layerOption, questionOptions, searchIn, sectionsOption } from "./ask.ts";
import { wholeAtlas } from "./chosen-cells.ts";
import { inColumns } from "./columns.ts";
import type { Answer, Command, Request } from "./option-types.ts";
import { readQuestion } from "./read-question.ts";

/** `atlas --chord F13 --melody D5 …`: every reachable texture with its best voicing. */
export const atlasCommand: Command = {
  name: "atlas",
  summary: "Lists every reachable texture with its best voicing",
  options: [
    ...questionOptions,
    layerOption,
    sectionsOption,
    {
      name: "problem",
      kind: "switch",
      words: "print the search as a numeric problem with the answers claimed, as JSON",
    },
  ],
  run,
};

function run(request: Request): Answer {
  const asked = readQuestion(request);
  if (!asked.ok) return asked;
  const { question, data } = asked.value;
  const options = searchIn(request);
  const { layer } = options;
  const start = performance.now();
  const atlas = wholeAtlas(question, options);
  const ms = Math.round((performance.now() - start) * 10) / 10;
  if (!atlas.ok) return atlas;
  if (request["problem"] === true) {
    const problem = printProblem(question, atlas.value, options);
    return problem.ok
      ? { ok: true, data: problem.value, text: () => `${JSON.stringify(problem.value)}\n` }
      : problem;
  }
  const { counts, cells } = atlas.value;
  const emptiedBy = cells.length === 0 ? { emptiedBy: whyEmpty(question, layer) } : {};
  return {
    ok: true,
    data: {
      question: { ...data, ...options },
      counts,
      ms,
      cells: cells.map((cell) => cellData(cell, question)),
      ...emptiedBy,
    },
    text: () =>
      `${counts.cells} textures from ${counts.stacks} stacks, ${ms} ms\n` +
      (cells.length === 0 ? "" : inColumns(cellRows(cells, question))),
  };
}

function cellData(cell: AtlasCell, question: Question) {
  const { placements } = voicingOf(question, cell);
  return {
    ...cell.key,
    cost: cell.cost,
    family: cell.family,
    voicing: Object.fromEntries(placements.map(({ player, sounding }) => [player.id, sounding])),
  };
}

function cellRows(cells: readonly AtlasCell[], question: Question): string[][] {
  const ids = question.players.map(({ id }) => id);
  const rows = cells.map(({ key, cost, pitches }) => [
    ...[key.span, key.notes, key.players, cost].map(String),
    ...pitches.map((pitch) => (pitch > 0 ? String(pitch) : "")),
  ]);
  return [["span", "notes", "players", "cost", ...ids], ...rows];
}
