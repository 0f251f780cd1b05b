import fc from "fast-check";
import { buildInstance } from "../../../src/voicing/instance.ts";
import { cannot, type Instance } from "../../../src/voicing/instance-types.ts";
import { ask } from "./questions.ts";

/** A small question in numbers whose costs mean nothing: the search must be right for any. */
export interface DrawnInstance {
  readonly instance: Instance;
  /** Notes of the stack to fill: candidates 0 to notes − 1. */
  readonly notes: number;
}

const base = ((): Instance => {
  const built = buildInstance(ask("F13", "D5", "f"));
  if (!built.ok) throw new Error(built.problem.message);
  return built.value;
})();

/**
 * Rising costs of one player more. The first is free; all together the second may be cheaper than
 * that (as on the lead), since the first counts as needed, but not within a section.
 */
const risingSteps = (players: number, cheapest: number) =>
  fc
    .array(fc.integer({ min: cheapest, max: 7 }), { minLength: players, maxLength: players })
    .map((steps) => [0, ...steps.sort((a, b) => a - b)]);

/**
 * Draws instances.
 * @param most - players at most, and notes at most
 */
export function drawnInstance(most: {
  readonly players: number;
  readonly notes: number;
}): fc.Arbitrary<DrawnInstance> {
  return fc
    .record({
      players: fc.integer({ min: 1, max: most.players }),
      notes: fc.integer({ min: 1, max: most.notes }),
      sections: fc.integer({ min: 1, max: 3 }),
    })
    .chain(({ players, notes, sections }) =>
      fc.record({
        players: fc.constant(players),
        notes: fc.constant(Math.min(players, notes)),
        sections: fc.constant(sections),
        cost: fc.array(
          fc.oneof(
            { weight: 6, arbitrary: fc.nat(4) },
            { weight: 1, arbitrary: fc.constant(cannot) },
          ),
          { minLength: players * notes, maxLength: players * notes },
        ),
        sectionOf: fc.array(fc.nat(sections - 1), { minLength: players, maxLength: players }),
        chairs: fc.array(fc.nat(3), { minLength: players, maxLength: players }),
        held: fc.array(fc.oneof({ weight: 9, arbitrary: fc.constant(-1) }, fc.nat(notes - 1)), {
          minLength: players,
          maxLength: players,
        }),
        shared: fc.array(risingSteps(players, -1), { minLength: notes, maxLength: notes }),
        inSection: fc.array(risingSteps(players, 0), { minLength: notes, maxLength: notes }),
      }),
    )
    .map((drawn) => ({
      notes: drawn.notes,
      instance: {
        ...base,
        candidates: base.candidates.slice(0, drawn.shared.length),
        players: base.players.slice(0, drawn.players),
        sectionNames: base.sectionNames.slice(0, drawn.sections),
        sectionOf: Int32Array.from(drawn.sectionOf),
        chairs: Int32Array.from(drawn.chairs),
        heldTo: Int32Array.from(drawn.held),
        playerCost: Int32Array.from(drawn.cost),
        sharedNoteCost: Int32Array.from(drawn.shared.flat()),
        sharedInSectionCost: Int32Array.from(drawn.inSection.flat()),
      },
    }));
}

/** Every way to give players to notes, resting −1, whatever it costs. */
export function* everyAssignment(players: number, notes: number): Generator<readonly number[]> {
  const all = (notes + 1) ** players;
  for (let code = 0; code < all; code++) {
    const places: number[] = [];
    for (let p = 0, rest = code; p < players; p++, rest = Math.floor(rest / (notes + 1)))
      places.push((rest % (notes + 1)) - 1);
    yield places;
  }
}

/**
 * What an assignment costs, added up as the search model says: 4096 · cost, and chair · (12 − depth).
 * @returns null when somebody cannot
 */
export function priceOf(
  { instance, notes }: DrawnInstance,
  places: readonly number[],
): number | null {
  const counts = instance.players.length + 1;
  let cost = 0;
  let chairs = 0;
  for (const [p, j] of places.entries()) {
    if (j < 0) continue;
    const own = instance.playerCost[p * instance.candidates.length + j]!;
    if (own === cannot) return null;
    cost += own;
    chairs += instance.chairs[p]! * (12 - j);
  }
  for (let j = 0; j < notes; j++) {
    const here = places.flatMap((place, p) => (place === j ? [instance.sectionOf[p]!] : []));
    for (let m = 0; m < here.length; m++) cost += instance.sharedNoteCost[j * counts + m]!;
    for (const section of new Set(here)) {
      const own = here.filter((other) => other === section).length;
      for (let m = 0; m < own; m++) cost += instance.sharedInSectionCost[j * counts + m]!;
    }
  }
  return 4096 * cost + chairs;
}
