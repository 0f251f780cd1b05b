import type { CellKey } from "../../voicing/index.ts";
import type { Answer, InView } from "../state/page-state.ts";
import { neighbourCell, type Direction } from "../state/places.ts";
import { counted } from "../words/counts.ts";
import { spanSpoken } from "../words/interval-words.ts";
import { spoken } from "../words/signs.ts";
import { isShown } from "./filter.ts";

const measuresSpoken = ["density", "weight", "interleaving"];

/**
 * A place of the map in words: where it is, what sounds, how it measures, what lies around it.
 * @param view - the voicing there
 * @param answer - the map
 * @param shownMetric - id of the measure that shades the map; it is spoken first
 * @returns a few short sentences
 */
export function placeSpoken(view: InView, answer: Answer, shownMetric: string): string {
  const { cell, stack, measures } = view.report;
  const notes = stack.map((pitch) => spoken(answer.asked.nameOf(pitch).name)).join(", ");
  const measured = [shownMetric, ...measuresSpoken.filter((id) => id !== shownMetric)]
    .flatMap((id) => measures.filter(({ metric }) => metric.id === id))
    .map(({ metric, measured: { value, text } }) =>
      value === null ? `${metric.label} ${text}` : `${metric.label} ${text} ${metric.unit}`,
    );
  return [
    `${spanSpoken(cell.span)}, ${counted(cell.notes, "note")}, ${counted(cell.players, "player")}.`,
    ...(isShown(cell) ? [] : ["Not among those you asked to see."]),
    `${notes}.`,
    `${measured.join(", ")}.`,
    neighbourWords(answer, cell),
  ].join(" ");
}

const ways: readonly (readonly [direction: Direction, word: string])[] = [
  ["narrower", "Left"],
  ["wider", "Right"],
  ["more", "Up"],
  ["fewer", "Down"],
];

/** Where each arrow leads and how the place there differs: "Left: 2 semitones narrower." */
function neighbourWords(answer: Answer, from: CellKey): string {
  return ways
    .map(([direction, word]) => {
      const next = neighbourCell(answer.map.cells, from, direction);
      return `${word}: ${next === undefined ? "none" : differenceWords(from, next.key)}.`;
    })
    .join(" ");
}

function differenceWords(from: CellKey, to: CellKey): string {
  const span = to.span - from.span;
  const notes = to.notes - from.notes;
  const words: string[] = [];
  if (span !== 0)
    words.push(`${counted(Math.abs(span), "semitone")} ${span > 0 ? "wider" : "narrower"}`);
  if (notes !== 0)
    words.push(`${counted(Math.abs(notes), "note")} ${notes > 0 ? "more" : "fewer"}`);
  return words.join(", ");
}
