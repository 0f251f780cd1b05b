import type { Count } from "../base/index.ts";
import { createAssigner } from "./assignment.ts";
import { freeAssignment } from "./assignment-network.ts";
import { toCell } from "./cell.ts";
import { cannot, type Instance } from "./instance-types.ts";
import type { AtlasCell, CellKey, Question } from "./voicing-types.ts";

/** How many octaves below the lead a line may reach. */
const octavesBelow = 5;

/** Candidates that are octave copies of the lead, highest first; the lead is the first. */
function copiesOfLead(instance: Instance): readonly number[] {
  const lead = instance.candidates[instance.leadIndex]!;
  const octaves = Array.from({ length: octavesBelow + 1 }, (_, octave) => lead - 12 * octave);
  return octaves.map((midi) => instance.candidates.indexOf(midi)).filter((index) => index >= 0);
}

/** Every choice of octaves that includes the lead itself. */
function* choices(copies: readonly number[]): Generator<readonly number[]> {
  const [lead, ...others] = copies;
  if (lead === undefined) return;
  for (let mask = 0; mask < 1 << others.length; mask++)
    yield [lead, ...others.filter((_, index) => ((mask >> index) & 1) === 1)];
}

/**
 * Unison and octave lines: everyone on the melody or octaves below it. Only range, level and
 * register count; no rule of harmony and no cost of sharing a note.
 * @param question - the question
 * @param instance - the same in numbers
 * @returns the cheapest line of every reachable span, number of notes and number of players
 */
export function lineCells(question: Question, instance: Instance): readonly AtlasCell[] {
  const counts = instance.players.length + 1;
  const nothing = new Int32Array(instance.candidates.length * counts);
  const plain: Instance = { ...instance, sharedNoteCost: nothing, sharedInSectionCost: nothing };
  const assigner = createAssigner(plain, instance.lineCost);
  const best = new Map<string, { readonly cell: AtlasCell; readonly value: Count }>();
  for (const choice of choices(copiesOfLead(instance))) {
    const stack = Int32Array.from(choice);
    const notes = choice.length;
    const wanted = Array.from({ length: Math.max(0, counts - notes) }, (_, more) => notes + more);
    const limits = freeAssignment;
    for (const [players, places] of assigner.placesFor({ stack, notes, limits }, wanted)) {
      const value = assigner.values[players]!;
      const key = keyOf(instance, choice, players);
      const name = `${key.span} ${notes} ${players}`;
      if (value >= (best.get(name)?.value ?? cannot)) continue;
      const solved = { key, value, stack, places, family: "line" } as const;
      best.set(name, { cell: toCell(question, instance, solved), value });
    }
  }
  return [...best.values()].map(({ cell }) => cell);
}

function keyOf(instance: Instance, choice: readonly number[], players: Count): CellKey {
  const lowest = instance.candidates[choice[choice.length - 1]!]!;
  const span = instance.candidates[instance.leadIndex]! - lowest;
  return { span, notes: choice.length, players };
}
