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
 * @returns a few short sentences
 */
export function placeSpoken(view: InView, answer: Answer): string {
  const { cell, stack, measures } = view.report;
  const notes = stack.map((pitch) => spoken(answer.asked.nameOf(pitch).name)).join(", ");
  const measured = measures
    .filter(({ metric }) => measuresSpoken.includes(metric.id))
    .map(({ metric, measured: { value, text } }) =>
      value === null ? `${metric.label} ${text}` : `${metric.label} ${text} ${metric.unit}`,
    );
  return [
    `${spanSpoken(cell.span)}, ${counted(cell.notes, "note")}, ${counted(cell.players, "player")}.`,
    ...(isShown({ key: cell }) ? [] : ["Not among those you asked to see."]),
    `${notes}.`,
    `${measured.join(", ")}.`,
    neighbourWords(answer, view),
  ].join(" ");
}

/**
 * What lies around a place, in words.
 * @param answer - the map
 * @param view - the voicing in view
 * @returns short sentences, one a direction, e.g. "Narrower: 2 octaves and a major second."
 */
export function neighbourWords(answer: Answer, view: InView): string {
  const { cell } = view.report;
  const say = (direction: Direction, word: string) => {
    const next = neighbourCell(answer.map.cells, cell, direction);
    if (next === undefined) return `${word}: none`;
    const span = next.key.span === cell.span ? "" : spanSpoken(next.key.span);
    const notes = next.key.notes === cell.notes ? "" : counted(next.key.notes, "note");
    return `${word}: ${[span, notes].filter((words) => words !== "").join(", ")}`;
  };
  return [
    say("narrower", "Narrower"),
    say("wider", "Wider"),
    say("more", "More notes"),
    say("fewer", "Fewer notes"),
    "",
  ]
    .join(". ")
    .trim();
}
