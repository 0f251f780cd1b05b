import { chairScale, createAssigner, freeAssignment } from "./assignment.ts";
import { toCell } from "./cell.ts";
import { cannot, type Instance } from "./instance-types.ts";
import type { AtlasCell, Question } from "./voicing-types.ts";

/** How many octaves below the lead a line may reach. */
const octavesBelow = 5;

/** Candidates that are octave copies of the lead, highest first; the lead is the first. */
function copiesOfLead(instance: Instance): readonly number[] {
  const lead = instance.candidates[instance.leadIndex]!;
  const copies: number[] = [];
  for (let octave = 0; octave <= octavesBelow; octave++) {
    const index = instance.candidates.indexOf(lead - 12 * octave);
    if (index >= 0) copies.push(index);
  }
  return copies;
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
  const best = new Map<string, AtlasCell & { readonly value: number }>();
  for (const choice of choices(copiesOfLead(instance))) {
    const stack = Int32Array.from(choice);
    const notes = choice.length;
    if (notes >= counts) continue;
    const lowest = instance.candidates[choice[notes - 1]!]!;
    const span = instance.candidates[instance.leadIndex]! - lowest;
    for (let players = notes; players < counts; players++) {
      const places = assigner.placesFor(stack, notes, freeAssignment, players);
      const value = assigner.values[players]!;
      const key = `${span} ${notes} ${players}`;
      if (value === cannot || value >= (best.get(key)?.value ?? cannot)) continue;
      const cell = toCell(
        question,
        instance,
        { span, notes, players },
        value,
        stack,
        places,
        "line",
      );
      best.set(key, { ...cell, value });
    }
  }
  return [...best.values()].map(({ value, ...cell }) => ({
    ...cell,
    cost: Math.floor(value / chairScale),
  }));
}
