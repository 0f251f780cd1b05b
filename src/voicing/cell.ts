import { chairScale } from "./assignment.ts";
import type { Instance } from "./instance-types.ts";
import type { AtlasCell, CellKey, Question } from "./voicing-types.ts";

/**
 * Turns positions in a stack into pitches by the question's players.
 * @param question - the question
 * @param instance - the same in numbers
 * @param key - the cell, players counted without one who plays an octave above the lead
 * @param value - cost · chairScale + chair cost
 * @param stack - candidate indices, highest note first
 * @param places - position in the stack by player of the instance, −1 for rest
 * @param family - line or harmony
 * @returns the cell
 */
export function toCell(
  question: Question,
  instance: Instance,
  key: CellKey,
  value: number,
  stack: Int32Array,
  places: Int32Array,
  family: AtlasCell["family"],
): AtlasCell {
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
