import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makePlayer, type Player, type SeatId } from "../../src/band/index.ts";
import type { LayerId, Question, RuleId } from "../../src/voicing/index.ts";
import { buildInstance } from "../../src/voicing/instance.ts";
import { cannot } from "../../src/voicing/instance-types.ts";
import { isInSet } from "../../src/voicing/stack-sets.ts";
import { printProblem } from "../../src/voicing/problem.ts";
import { searchAtlas } from "../../src/voicing/search.ts";
import { restrictedTo, type SearchOptions } from "../../src/voicing/search-options.ts";
import { bruteForce, printedKey } from "./support/brute-force.ts";
import { ask } from "./support/questions.ts";

const seats: readonly SeatId[] = ["tpt1", "tpt2", "tbn1", "btbn", "alto1", "tenor1", "bari"];
const symbols = ["F13", "Cm9", "C7alt", "Dm7b5", "Bbmaj7", "G7sus4", "Eb6", "C/E", "Am", "Bdim7"];
const leads = ["A3", "C4", "Eb4", "F4", "Gb4", "A4", "B4", "D5"];
const rules: readonly RuleId[] = ["H3", "H4", "H5", "H5b", "H6", "H7", "H8", "H9"];

/*
 * Covers src/voicing/spans.ts, src/voicing/span-best.ts, src/voicing/cell.ts,
 * src/voicing/stack-pool.ts, src/voicing/stack-lister.ts, src/voicing/stack-solver.ts,
 * src/voicing/section-parts.ts and src/voicing/sectioned-assignment.ts: the parts of one search,
 * judged as a whole by trying everything on small questions.
 */
/** A small question: three or four players whose ranges are cut so that few notes are left. */
const smallQuestion = fc
  .record({
    symbol: fc.constantFrom(...symbols),
    lead: fc.constantFrom(...leads),
    dynamic: fc.constantFrom("p" as const, "mf" as const, "f" as const),
    seats: fc.subarray([...seats], { minLength: 2, maxLength: 4 }),
    reach: fc.integer({ min: 9, max: 17 }),
    off: fc.subarray([...rules], { maxLength: 3 }),
    bassSounds: fc.boolean(),
    homes: fc.boolean(),
    clusterSetting: fc.boolean(),
  })
  .map((drawn) => ({ drawn, question: questionOf(drawn) }));

interface Drawn {
  readonly symbol: string;
  readonly lead: string;
  readonly dynamic: "p" | "mf" | "f";
  readonly seats: readonly SeatId[];
  readonly reach: number;
  readonly off: readonly RuleId[];
  readonly bassSounds: boolean;
  readonly homes: boolean;
  readonly clusterSetting: boolean;
}

function questionOf(drawn: Drawn): Question | null {
  const { symbol, lead, dynamic, bassSounds, homes, clusterSetting } = drawn;
  const players = drawn.seats.map((seat) => makePlayer({ seat }));
  try {
    const whole = ask(symbol, lead, dynamic, { players, bassSounds, homes, clusterSetting });
    const reached = players.map((player) => cut(player, whole.lead, drawn.reach));
    const settings = { ...whole.rules };
    for (const id of drawn.off) settings[id] = false;
    return { ...whole, players: reached, rules: settings };
  } catch {
    return null; // Nobody reaches the melody: another test's subject.
  }
}

/** Lifts the bottom of a range so that at most `reach` semitones under the lead are left. */
function cut(player: Player, lead: number, reach: number): Player {
  const low = Math.max(player.range.low, lead - reach) as Player["range"]["low"];
  return low > player.range.high ? player : { ...player, range: { ...player.range, low } };
}

function compare(question: Question, options: SearchOptions & { readonly layer: LayerId }): number {
  const restricted = restrictedTo(question, options.sections);
  const built = restricted.ok ? buildInstance(restricted.value) : restricted;
  const search = searchAtlas(question, options);
  if (!built.ok || !search.ok) return 0;
  const instance = built.value;
  if (instance.candidates.length > 12) return 0;
  let step = search.value.next();
  while (!step.done) step = search.value.next();
  const printed = printProblem(question, step.value, options);
  if (!printed.ok) throw new Error(printed.problem.message);
  const bottoms = new Map<number, number>();
  instance.bottomCost.forEach((cost, c) => {
    if (cost !== cannot) bottoms.set(c, cost);
  });
  const groups = (notes: number): readonly (readonly number[])[] => {
    const words = instance.groupsByNotes[notes]!;
    return Array.from({ length: words.length / 2 }, (_, g) =>
      Array.from(instance.candidates.keys()).filter((c) =>
        isInSet(words[2 * g]!, words[2 * g + 1]!, c),
      ),
    );
  };
  const judged = bruteForce(printed.value, groups, bottoms);
  const claimed = printed.value.cells.filter((cell) => cell.family === "harmony");
  expect(new Set(claimed.map(printedKey))).toEqual(new Set(judged.keys()));
  for (const cell of claimed) {
    expect(cell.claimed, printedKey(cell)).toEqual(judged.get(printedKey(cell)));
  }
  return claimed.length;
}

describe("the atlas of a small line-up", () => {
  for (const layer of ["free", "by-section", "crossed"] as const)
    it(`is what trying everything gives, on every cell of the layer ${layer}`, () => {
      let cells = 0;
      fc.assert(
        fc.property(smallQuestion, ({ question }) => {
          if (question) cells += compare(question, { layer });
        }),
        { seed: 7, numRuns: 60 },
      );
      // Guards against a property that never meets a question.
      expect(cells).toBeGreaterThan(100);
    });

  it("is what trying everything gives when a set of sections must sound, in every layer", () => {
    const sets = [["trumpets", "saxes"], ["trombones", "saxes"], ["saxes"]] as const;
    const layers = fc.constantFrom("free" as const, "by-section" as const, "crossed" as const);
    let cells = 0;
    fc.assert(
      fc.property(smallQuestion, fc.constantFrom(...sets), layers, ({ question }, set, layer) => {
        if (question) cells += compare(question, { layer, sections: set });
      }),
      { seed: 7, numRuns: 120 },
    );
    expect(cells).toBeGreaterThan(100);
  });

  it("holds with the melody inside the chord instead of on top", () => {
    const players = (["tpt1", "tbn1", "alto1"] as const).map((seat) => makePlayer({ seat }));
    const whole = ask("Am7", "C4", "f", { players });
    const question: Question = {
      ...whole,
      rules: { ...whole.rules, H1: false },
      players: players.map((player) => ({
        ...player,
        range: { low: 55, high: 67 } as Player["range"],
      })),
    };
    expect(compare(question, { layer: "free" })).toBeGreaterThan(3);
  });

  it("keeps players who are fixed where they are", () => {
    const players = (["tpt1", "tpt2", "tenor1", "alto1"] as const).map((seat) =>
      makePlayer({ seat }),
    );
    const whole = ask("F13", "D5", "f", {
      players: players.map((player) => cut(player, 74, 16)),
      locks: [{ playerId: "tenor1", sounding: 67 as never }],
    });
    expect(compare(whole, { layer: "free" })).toBeGreaterThan(0);
    const search = searchAtlas(whole);
    if (!search.ok) throw new Error(search.problem.message);
    let step = search.value.next();
    while (!step.done) step = search.value.next();
    const harmony = step.value.cells.filter((cell) => cell.family === "harmony");
    expect(harmony.every((cell) => cell.pitches[2] === 67)).toBe(true);
  });
});
