import { fail, ok, type Result, type SoundingMidi } from "../../base/index.ts";
import { instrumentOf, type Player } from "../../band/index.ts";
import { assignPitches, type Assignment } from "../../voicing/index.ts";
import { withPitches, type Pitches } from "../state/session.ts";
import { cellAt } from "../state/places.ts";
import { pitchesOf } from "../state/view-of.ts";
import { page, session } from "../store.ts";
import { counted, listed } from "../words/counts.ts";
import { spanText } from "../words/interval-words.ts";
import { plainName } from "../words/pitch-names.ts";
import { withSigns } from "../words/signs.ts";
import { readTyped } from "../voicing/read-typed.ts";
import { announce } from "./announce.ts";
import { take } from "./steps.ts";

/** Lowest and highest note the ladder holds, MIDI. */
const reach = { low: 24, high: 96 };

const nobody = { placements: [] };

/**
 * Shows a voicing that was typed, as one step that can be taken back.
 * @param text - players with their notes, or notes alone
 * @returns one or two sentences on what came of it, or what could not be read and where
 */
export function showTyped(text: string): Result<string> {
  const { answer, view } = page.getState();
  if (answer === null)
    return fail("no-question", "Ask for a chord and a melody note first, then type.");
  const { players } = answer.asked.question;
  const typed = readTyped(text, players);
  if (!typed.ok) return typed;
  const { value } = typed;
  const assignment = value.kind === "notes" ? assigned(value.notes, players) : null;
  const pitches = value.kind === "players" ? value.pitches : pitchesOf(assignment ?? nobody);
  const far = outOfReach(pitches, players);
  if (far !== null) return fail("note-out-of-range", far);
  if (Object.keys(pitches).length === 0)
    return fail("notes-out-of-range", "None of the players reaches any of these notes.");
  const before = view?.pitches ?? pitches;
  take(withPitches(session(), before, pitches, Object.keys(pitches), "type a voicing", "as typed"));
  const rest = value.kind === "players" ? unnamedWords(value.unnamed) : lostWords(assignment);
  const words = [whereItFalls(), ...rest].join(" ");
  announce(words);
  return ok(words);
}

function assigned(notes: readonly SoundingMidi[], players: readonly Player[]): Assignment {
  const top = notes.reduce((high, note) => (note > high ? note : high));
  return assignPitches(notes, players, top);
}

/** Rules may be broken, instruments may not. */
function outOfReach(pitches: Pitches, players: readonly Player[]): string | null {
  for (const player of players) {
    const pitch = pitches[player.id];
    if (pitch === undefined) continue;
    const { low, high } = instrumentOf(player.instrument).range;
    const isInside = pitch >= low && pitch <= high;
    const isOwn = pitch >= player.range.low && pitch <= player.range.high;
    if (!isInside && !isOwn)
      return `${player.name} cannot sound ${nameOf(pitch)}: the instrument goes from ${nameOf(low)} to ${nameOf(high)}.`;
    if (pitch < reach.low || pitch > reach.high)
      return `${nameOf(pitch)} lies off the ladder, which goes from ${nameOf(reach.low)} to ${nameOf(reach.high)}.`;
  }
  return null;
}

/** Where the voicing in view lies on the map, and whether the map has anything there. */
function whereItFalls(): string {
  const { view, answer } = page.getState();
  if (view === null || answer === null) return "";
  const { span, notes, players } = view.report.cell;
  const place = `${spanText(span)}, ${counted(notes, "note")}, ${counted(players, "player")}`;
  const has = cellAt(answer.map.cells, view.report.cell) !== undefined;
  return has
    ? `It lies at ${place}, where the map has a best of its own.`
    : `It lies at ${place}, where the map has nothing.`;
}

function unnamedWords(unnamed: readonly Player[]): readonly string[] {
  if (unnamed.length === 0) return [];
  const names = listed(unnamed.map((player) => player.abbreviation));
  return [`${names} ${unnamed.length === 1 ? "rests" : "rest"}.`];
}

function lostWords(assignment: Assignment | null): readonly string[] {
  if (assignment === null) return [];
  const { moved, leftOut, resting } = assignment;
  const lost = [
    ...leftOut,
    ...moved.flatMap(({ pitch, instead }) => (instead === undefined ? [pitch] : [])),
  ];
  const shifted = moved.flatMap(({ pitch, instead }) => (instead === undefined ? [] : [pitch]));
  return [
    ...(shifted.length > 0
      ? [`Nobody reaches ${listed(shifted.map(nameOf))}: taken in another octave.`]
      : []),
    ...(lost.length > 0 ? [`Nobody is left for ${listed(lost.map(nameOf))}.`] : []),
    ...(resting.length > 0
      ? [`${listed(resting.map((player) => player.abbreviation))} cannot join.`]
      : []),
  ];
}

function nameOf(pitch: number): string {
  const { answer } = page.getState();
  return withSigns(answer?.asked.nameOf(pitch).name ?? plainName(pitch));
}
