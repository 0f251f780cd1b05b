import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import {
  bestOfCell,
  emptiedBy,
  searchAtlas,
  type Atlas,
  type Question,
  type RuleId,
} from "../../src/voicing/index.ts";
import { ask, playersOf } from "./support/questions.ts";

/* Covers src/voicing/check-question.ts: questions that are refused, at the end. */
const fourHorns = playersOf("four-horn");
const sixHorns = playersOf("six-horn");

function atlasOf(question: Question): Atlas {
  const search = searchAtlas(question);
  if (!search.ok) throw new Error(search.problem.message);
  let step = search.value.next();
  while (!step.done) step = search.value.next();
  return step.value;
}

const keyOf = (key: { span: number; notes: number; players: number }): string =>
  `${key.span} ${key.notes} ${key.players}`;

const harmony = (atlas: Atlas): ReadonlyMap<string, number> =>
  new Map(
    atlas.cells
      .filter((cell) => cell.family === "harmony")
      .map((cell) => [keyOf(cell.key), cell.cost] as const),
  );

const drawn = fc.record({
  symbol: fc.constantFrom("F13", "Cm9", "Bbmaj7", "G7alt", "Dm7b5", "A7", "Eb6"),
  lead: fc.constantFrom("C5", "D5", "Eb5", "F5", "G4", "A4", "Bb4"),
});

describe("the atlas", () => {
  it("loses no cell and raises none when a player joins", () => {
    fc.assert(
      fc.property(drawn, fc.nat(3), ({ symbol, lead }, at) => {
        const fewer = fourHorns.filter((_, index) => index !== at);
        const before = harmony(atlasOf(ask(symbol, lead, "mf", { players: fewer })));
        const after = harmony(atlasOf(ask(symbol, lead, "mf", { players: fourHorns })));
        for (const [key, cost] of before) expect(after.get(key) ?? 999).toBeLessThanOrEqual(cost);
      }),
      { seed: 7, numRuns: 12 },
    );
  });

  it("raises no cell when a rule is switched off", () => {
    const ids: readonly RuleId[] = ["H4", "H5", "H5b", "H6", "H7", "H8", "H9"];
    fc.assert(
      fc.property(drawn, fc.constantFrom(...ids), ({ symbol, lead }, id) => {
        const question = ask(symbol, lead, "f", { players: fourHorns });
        const before = harmony(atlasOf(question));
        const after = harmony(atlasOf({ ...question, rules: { ...question.rules, [id]: false } }));
        for (const [key, cost] of before) expect(after.get(key) ?? 999).toBeLessThanOrEqual(cost);
      }),
      { seed: 7, numRuns: 20 },
    );
  });

  it("does not depend on the order of the players", () => {
    fc.assert(
      fc.property(drawn, ({ symbol, lead }) => {
        const question = ask(symbol, lead, "f", { players: sixHorns });
        const turned = { ...question, players: [...question.players].reverse() };
        const one = atlasOf(question);
        const other = atlasOf(turned);
        const values = (atlas: Atlas): unknown =>
          atlas.cells.map(({ key, cost, chairCost }) => ({ key, cost, chairCost }));
        expect(values(other)).toEqual(values(one));
      }),
      { seed: 7, numRuns: 8 },
    );
  });

  it("costs ever more for each further player on the best of a fixed stack", () => {
    // Convexity for one stack; the atlas takes the least over stacks, so it is asked for one only.
    const question = ask("Am", "A4", "f", {
      players: fourHorns,
      toneChoices: { 7: "off" },
    });
    const atlas = atlasOf(question);
    const byPlayers = atlas.cells.filter(
      ({ key, family }) => family === "harmony" && key.notes === 2 && key.span === 9,
    );
    const costs = byPlayers.map((cell) => cell.cost);
    const steps = costs.slice(1).map((cost, i) => cost - costs[i]!);
    expect(steps.length).toBeGreaterThan(1);
    for (let i = 1; i < steps.length; i++) expect(steps[i]).toBeGreaterThanOrEqual(steps[i - 1]!);
  });

  it("yields the same cells in the end as in the reports on the way, each once", () => {
    const search = searchAtlas(ask("F13", "D5", "f"));
    if (!search.ok) throw new Error(search.problem.message);
    const seen: string[] = [];
    let step = search.value.next();
    while (!step.done) {
      seen.push(...step.value.cells.map((cell) => JSON.stringify(cell)));
      step = search.value.next();
    }
    expect(seen.sort()).toEqual(step.value.cells.map((cell) => JSON.stringify(cell)).sort());
  });

  it("offers as the next few the best of other stacks, the first being the cell's own", () => {
    const question = ask("F13", "D5", "f");
    const atlas = atlasOf(question);
    const key = { span: 33, notes: 7, players: 13 };
    const own = atlas.cells.find((cell) => keyOf(cell.key) === keyOf(key));
    const few = bestOfCell(question, key, 5);
    if (!few.ok) throw new Error(few.problem.message);
    expect(few.value[0]).toEqual(own);
    const stacks = few.value.map((cell) => [...new Set(cell.pitches)].sort().join());
    expect(new Set(stacks).size).toBe(5);
    const costs = few.value.map((cell) => cell.cost);
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
  });

  it("says which rules leave nothing when the seventh is asked for under the root", () => {
    // B under C5 is a semitone below it (H7) or a minor ninth below it (H6); nobody reaches B2.
    const question = ask("Cmaj7", "C5", "f", {
      players: fourHorns.map((player) => ({
        ...player,
        range: { low: soundingMidi(55), high: player.range.high },
      })),
      toneChoices: { 11: "required" },
    });
    expect(atlasOf(question).cells.filter((cell) => cell.family === "harmony")).toEqual([]);
    expect(emptiedBy(question)).toEqual(expect.arrayContaining(["H6", "H7"]));
  });
});

describe("a question that cannot be searched", () => {
  const base = ask("F13", "D5", "f");
  const problemOf = (question: Question): string => {
    const search = searchAtlas(question);
    return search.ok ? "none" : search.problem.code;
  };
  const [first, ...others] = base.players;

  it("is refused with its reason when nobody is in the line-up", () => {
    expect(problemOf({ ...base, players: [] })).toBe("line-up-empty");
  });

  it("is refused with more than 24 players", () => {
    const many = [...base.players, ...base.players.map((p) => ({ ...p, id: `${p.id}b` }))];
    expect(problemOf({ ...base, players: many })).toBe("line-up-too-large");
  });

  it("is refused when a range is upside down", () => {
    const upside = { ...first!, range: { low: first!.range.high, high: first!.range.low } };
    expect(problemOf({ ...base, players: [upside, ...others] })).toBe("range-upside-down");
  });

  it("is refused when locks contradict", () => {
    expect(
      problemOf({
        ...base,
        leadPlayer: "tpt1",
        locks: [{ playerId: "tpt1", sounding: "rest" }],
      }),
    ).toBe("locks-contradict");
  });

  it("is refused when the melody is out of everyone's reach", () => {
    expect(problemOf({ ...base, lead: 100 as never })).toBe("melody-out-of-reach");
  });

  it("is refused when a player is fixed out of range or off the chord", () => {
    const at = (playerId: string, sounding: number): string =>
      problemOf({ ...base, locks: [{ playerId, sounding: sounding as never }] });
    expect(at("tpt1", 40)).toBe("lock-out-of-range");
    expect(at("tpt1", 73)).toBe("lock-not-in-chord");
  });
});
