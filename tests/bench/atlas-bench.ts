import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { seededChance } from "../../src/base/index.ts";
import { lineUpById, makePlayer, type Player, type SeatId } from "../../src/band/index.ts";
import { firstInquiry, readInquiry, type Inquiry } from "../../src/explore/index.ts";
import {
  bestOfCell,
  searchAtlas,
  type Atlas,
  type AtlasProgress,
  type CellKey,
  type Question,
  type SearchOptions,
} from "../../src/voicing/index.ts";
import { Found, medianOf, timed } from "./bench.ts";

/** A question of the page, the first one where nothing else is said. */
export function questionOf(asked: Partial<Inquiry>): Question {
  const reading = readInquiry({ ...firstInquiry(), ...asked });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join(" "));
  return reading.question;
}

function begun(question: Question, options: SearchOptions = {}): Generator<AtlasProgress, Atlas> {
  const search = searchAtlas(question, options);
  if (!search.ok) throw new Error(search.problem.message);
  return search.value;
}

/** A whole atlas. */
function atlasOf(question: Question, options: SearchOptions = {}): Atlas {
  const search = begun(question, options);
  let step = search.next();
  while (step.done !== true) step = search.next();
  return step.value;
}

/** Searches an atlas and counts what it took. */
export function searched(question: Question, options: SearchOptions = {}): string {
  const { cells, stacks, solved } = atlasOf(question, options).counts;
  return `${cells} textures, ${stacks} stacks, ${solved} solved in full`;
}

/** Searches until the first textures that are no lines are reported. */
export function firstCells(question: Question): void {
  for (const { cells } of begun(question))
    if (cells.some(({ family }) => family === "harmony")) return;
}

/** Two hundred chord and melody pairs drawn once, all of them answerable by a big band. */
export function drawnQuestions(): readonly Question[] {
  const chance = seededChance(11);
  const draw = <T>(list: readonly T[]): T => list[Math.floor(chance() * list.length)] as T;
  const notes = "C Db D Eb E F F# G Ab A Bb B".split(" ");
  const kinds = "maj7 6 m7 m9 7 9 13 7alt 7(b9) m7b5 dim7 7sus4 m6 maj9 69".split(" ");
  const questions: Question[] = [];
  while (questions.length < 200) {
    const melodyText = draw(notes) + draw(["4", "4", "5"]);
    const asked = { ...firstInquiry(), chordText: draw(notes) + draw(kinds), melodyText };
    const reading = readInquiry(asked);
    if (reading.ok) questions.push(reading.question);
  }
  return questions;
}

async function timeOf(work: () => unknown): Promise<number> {
  const { clock, computing } = await timed(work);
  return Math.min(clock, computing);
}

/** Times each of the questions; the value is the median. */
export async function medianOver(questions: readonly Question[]): Promise<Found> {
  const times: number[] = [];
  for (const question of questions) times.push(await timeOf(() => atlasOf(question)));
  const sorted = [...times].sort((a, b) => a - b);
  const median = medianOf(times);
  const nine = sorted[Math.floor(0.9 * sorted.length)] ?? 0;
  return new Found(
    median,
    `median question ${median.toFixed(1)} ms, nine in ten under ${nine.toFixed(0)} ms, slowest ${Math.max(...times).toFixed(0)} ms`,
  );
}

/** Every texture within reach that is no line. */
export function harmonyCells(question: Question): readonly CellKey[] {
  return atlasOf(question).cells.flatMap(({ key, family }) => (family === "harmony" ? [key] : []));
}

/**
 * Asks for one more layer of each cell, one at a time. Each is the middle of three, so that one
 * interruption by the machine does not count; the value is that of the slowest cell.
 */
export async function layerOnDemand(
  question: Question,
  keys: readonly CellKey[],
  options: SearchOptions,
): Promise<Found> {
  const cells: { readonly key: CellKey; readonly time: number }[] = [];
  for (const key of keys) {
    const three: number[] = [];
    for (let i = 0; i < 3; i++)
      three.push(await timeOf(() => bestOfCell(question, key, 1, options)));
    cells.push({ key, time: medianOf(three) });
  }
  const slowest = [...cells].sort((a, b) => b.time - a.time)[0];
  if (slowest === undefined) throw new Error("a question without cells");
  const median = medianOf(cells.map(({ time }) => time));
  const { span, notes, players } = slowest.key;
  return new Found(
    slowest.time,
    `${cells.length} cells, median ${median.toFixed(1)} ms, slowest ${slowest.time.toFixed(1)} ms ` +
      `(${span} semitones, ${notes} notes, ${players} players)`,
  );
}

/** Searches held at once, so that what else the machine lets go of hardly counts. */
const heldAtOnce = 8;

/**
 * Memory of one atlas at the end of its search, when its working memory is largest, with all cells
 * reported; what can be let go let go. The value is in megabytes.
 */
export function memoryOf(question: Question): Found {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc") as () => void;
  const inUse = (): number => {
    // Once lets go of what is unreachable; again, of what only that held on to.
    for (let i = 0; i < 3; i++) collect();
    const { heapUsed, arrayBuffers } = process.memoryUsage();
    return (heapUsed + arrayBuffers) / 1e6;
  };
  const textures = atlasOf(question).cells.length;
  const before = inUse();
  const held = Array.from({ length: heldAtOnce }, () => {
    const search = begun(question);
    const reported: AtlasProgress[] = [];
    let cells = 0;
    while (cells < textures) {
      const step = search.next();
      if (step.done === true) throw new Error("a search that reports fewer cells than it finds");
      reported.push(step.value);
      cells += step.value.cells.length;
    }
    return { search, reported };
  });
  const each = (inUse() - before) / held.length;
  return new Found(each, `${textures} textures, ${each.toFixed(1)} MB while searching`);
}

/** Seats in the order in which a band grows; the last four are doubles that join in. */
const growing: readonly SeatId[] = [
  "tpt1",
  "alto1",
  "tbn1",
  "tenor1",
  "bari",
  "tpt2",
  "tbn2",
  "alto2",
  "btbn",
  "tpt3",
  "tenor2",
  "tpt4",
  "tbn3",
  "hn1",
  "sop1",
  "cl1",
  "tuba1",
];

/** F13 under D5 for so many players, 3 to 17. */
export function withPlayers(count: number): Question {
  const band = lineUpById("big-band");
  if (!band.ok) throw new Error(band.problem.message);
  const players: readonly Player[] = growing
    .slice(0, count)
    .map((seat) => band.value.players.find(({ id }) => id === seat) ?? makePlayer({ seat }));
  return questionOf({ players });
}

/** Tones above F in the order in which they are ticked. */
const ticking = [0, 4, 10, 9, 7, 2, 6, 1, 3, 11];

/** F13 under D5 for the big band with so many tones ticked, 3 to 10. */
export function withTones(count: number): Question {
  const choices = Array.from({ length: 12 }, (_, tone) => [
    tone,
    ticking.slice(0, count).includes(tone) ? "on" : "off",
  ]);
  return questionOf({ toneChoices: Object.fromEntries(choices) as Inquiry["toneChoices"] });
}
