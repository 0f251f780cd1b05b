import type { SoundingMidi } from "../../base/index.ts";
import { dynamicClass, type Dynamic, type Player } from "../../band/index.ts";
import type { Chord } from "../../theory/index.ts";
import type { Voicing } from "../voicing-types.ts";
import { nameIn } from "../words.ts";
import type { Assignment } from "./assign.ts";
import { highestFirst } from "./chair-order.ts";

/** Sounding F5 is written G5 for a B♭ trumpet, right above the staff; higher notes need ledger lines. */
const topOfTrumpetStaff = 77;

/**
 * What had to give when a construction was handed out.
 * @param assignment - the construction as handed out
 * @param group - plural name of those who play it: "trumpets"
 * @param chord - spells the pitches
 * @returns sentences; empty when everything is as written
 */
export function remarksOn(assignment: Assignment, group: string, chord: Chord): readonly string[] {
  const name = (pitch: SoundingMidi): string => nameIn(pitch, chord);
  const moved = assignment.moved.map(({ pitch, instead }) =>
    instead === undefined
      ? `${name(pitch)} is out of reach of the ${group} and is left out.`
      : `${name(pitch)} is out of reach of the ${group} and sounds as ${name(instead)}.`,
  );
  const leftOut = assignment.leftOut.map((pitch) => `${name(pitch)} is left out: nobody is free.`);
  const displaced = assignment.displaced.map(
    ({ player, sounding }) => `${player.name} takes ${name(sounding)} instead.`,
  );
  const resting = assignment.resting.map((player) => `${player.name} rests: no note in reach.`);
  return [...moved, ...leftOut, ...displaced, ...resting];
}

/**
 * Where the first sax doubles the lead.
 * @param voicing - who sounds what
 * @param lead - melody note, sounding
 * @returns "Alto 1 an octave under the lead."; empty when it does not double the lead
 */
export function saxLeadRemark(voicing: Voicing, lead: SoundingMidi): readonly string[] {
  const saxes = voicing.placements.filter(({ player }) => player.section === "saxes");
  const top = saxes.find(
    ({ player }) => player === highestFirst(saxes.map((one) => one.player))[0],
  );
  const words = new Map([
    [0, "with the lead"],
    [12, "an octave under the lead"],
    [24, "two octaves under the lead"],
  ]).get(lead - (top?.sounding ?? 0));
  return top && words ? [`${top.player.name} ${words}.`] : [];
}

/**
 * The usual caution about trumpets that are soft and high.
 * @param voicing - who sounds what
 * @param dynamic - dynamic on paper
 * @returns one sentence, or none
 * @source D. Berger, "Notes from the Trumpet Section": no pp above the staff
 */
export function cautionOf(voicing: Voicing, dynamic: Dynamic): readonly string[] {
  const isHigh = voicing.placements.some(
    ({ player, sounding }) => player.section === "trumpets" && sounding > topOfTrumpetStaff,
  );
  return isHigh && dynamicClass(dynamic) === "p"
    ? ["Trumpets above the staff cannot be relied on at this dynamic."]
    : [];
}

/**
 * Who is left out of a line.
 * @param horns - who might have played
 * @param voicing - who does
 * @returns "Out of reach of: …", or nothing when everybody plays
 */
export function restNote(horns: readonly Player[], voicing: Voicing): string {
  const sounding = new Set(voicing.placements.map(({ player }) => player));
  const names = horns.filter((player) => !sounding.has(player)).map((player) => player.name);
  return names.length > 0 ? `Out of reach of: ${names.join(", ")}.` : "";
}
