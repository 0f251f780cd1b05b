import { firstInquiry, readInquiry } from "../../src/explore/index.ts";
import { seededChance } from "../../src/base/index.ts";
import { lineUpById } from "../../src/band/index.ts";
import { bestOfCell, searchAtlas, type Question } from "../../src/voicing/index.ts";
import type { SearchOptions } from "../../src/voicing/index.ts";
import type { Bench } from "./bench.ts";

type Asked = Partial<ReturnType<typeof firstInquiry>>;

function questionOf(asked: Asked): Question {
  const reading = readInquiry({ ...firstInquiry(), ...asked });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join(" "));
  return reading.question;
}

function searched(question: Question, options: SearchOptions = {}): string {
  const search = searchAtlas(question, options);
  if (!search.ok) throw new Error(search.problem.message);
  for (;;) {
    const step = search.value.next();
    if (step.done !== true) continue;
    const { cells, stacks, solved } = step.value.counts;
    return `${cells} textures, ${stacks} stacks, ${solved} solved`;
  }
}

const usual = questionOf({});
const altered = questionOf({ chordText: "C7alt", melodyText: "Bb5", colour: "altered" });

function firstCells(question: Question): void {
  const search = searchAtlas(question);
  if (!search.ok) throw new Error(search.problem.message);
  for (const { cells } of search.value)
    if (cells.some(({ family }) => family === "harmony")) return;
}

/** Two hundred questions drawn once, all of them answerable by a big band. */
function drawnQuestions(): readonly Question[] {
  const chance = seededChance(11);
  const draw = <T>(list: readonly T[]): T => list[Math.floor(chance() * list.length)] as T;
  const roots = "C Db D Eb E F F# G Ab A Bb B".split(" ");
  const kinds = "maj7 6 m7 m9 7 9 13 7alt 7(b9) m7b5 dim7 7sus4 m6 maj9 69".split(" ");
  const notes = "C Db D Eb E F F# G Ab A Bb B".split(" ");
  const questions: Question[] = [];
  while (questions.length < 200) {
    const melodyText = draw(notes) + draw(["4", "4", "5"]);
    const asked = { ...firstInquiry(), chordText: draw(roots) + draw(kinds), melodyText };
    const reading = readInquiry(asked);
    if (reading.ok) questions.push(reading.question);
  }
  return questions;
}

function medianOfDrawn(): string {
  const times = drawnQuestions().map((question) => {
    const start = performance.now();
    searched(question);
    return performance.now() - start;
  });
  times.sort((a, b) => a - b);
  return `median question ${times[100]?.toFixed(1)} ms, slowest ${times.at(-1)?.toFixed(0)} ms`;
}

function withPlayers(count: number): Question {
  const band = lineUpById("big-band");
  if (!band.ok) throw new Error(band.problem.message);
  return questionOf({ players: band.value.players.slice(0, count) });
}

/** How long the search takes: the questions named in the project's targets. */
export const benches: readonly Bench[] = [
  { name: "atlas: F13 under D5, free layer", repeats: 9, run: () => searched(usual) },
  { name: "atlas: C7alt under Bb5, free layer", repeats: 3, run: () => searched(altered) },
  {
    name: "atlas: C7alt under Bb5, up to nine notes",
    repeats: 3,
    run: () => searched(altered, { mostNotes: 9 }),
  },
  ...(["by-section", "crossed"] as const).map((layer) => ({
    name: `one cell of F13 under D5, ${layer}`,
    run: () => void bestOfCell(usual, { span: 33, notes: 7, players: 13 }, 1, { layer }),
  })),
  { name: "first cells of F13 under D5", repeats: 9, run: () => firstCells(usual) },
  { name: "atlas: two hundred drawn questions", repeats: 1, run: medianOfDrawn },
  ...[3, 5, 8, 13].map((count) => ({
    name: `atlas: F13 under D5, ${count} players`,
    run: () => searched(withPlayers(count)),
  })),
];
