import type { Count } from "../base/index.ts";
import type { Instance } from "./instance-types.ts";
import { chairScale } from "./ranking.ts";
import type { AtlasCell, CellKey, Question } from "./voicing-types.ts";

/** A solved cell in the numbers of an instance. */
export interface SolvedCell {
  /** Players counted without one who plays an octave above the lead. */
  readonly key: CellKey;
  /** Cost · chairScale + chair cost. */
  readonly value: Count;
  /** Candidate indices, highest note first. */
  readonly stack: Int32Array;
  /** Position in the stack by player of the instance, −1 for rest. */
  readonly places: Int32Array;
  readonly family: AtlasCell["family"];
}

/**
 * Turns positions in a stack into pitches by the question's players.
 * @param question - the question
 * @param instance - the same in numbers
 * @param solved - what was found
 * @returns the cell, one who plays an octave above the lead included
 */
export function toCell(question: Question, instance: Instance, solved: SolvedCell): AtlasCell {
  const { key, value, stack, places, family } = solved;
  const pitches = new Array<number>(question.players.length).fill(0);
  let players = key.players;
  places.forEach((place, p) => {
    if (place >= 0) pitches[instance.questionIndex[p]!] = instance.candidates[stack[place]!]!;
  });
  const above = question.players.findIndex((player) => player.id === question.octaveAbovePlayer);
  if (above >= 0) {
    pitches[above] = question.lead + 12;
    players += 1;
  }
  const cost = Math.floor(value / chairScale);
  return {
    key: { ...key, players },
    cost,
    chairCost: value - cost * chairScale,
    pitches,
    family,
  };
}
