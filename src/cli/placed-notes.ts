import { fail, ok, type Result } from "../base/index.ts";
import {
  canSound,
  instrumentOf,
  makePlayer,
  seatIds,
  type PlayerLevel,
  type SeatId,
} from "../band/index.ts";
import { layoutVoicing } from "../notation/index.ts";
import { degreeOf, formatPitch, pitchName, readPitch, type Chord } from "../theory/index.ts";
import type { Placement, Voicing } from "../voicing/index.ts";

/** One player's note as programs read it. */
export interface NoteData {
  readonly player: string;
  /** Sounding MIDI note number. */
  readonly midi: number;
  /** Sounding pitch, scientific, ASCII. */
  readonly name: string;
  /** What the player reads, scientific, ASCII. */
  readonly written: string;
  /** Degree in the chord, ASCII; empty for no chord. */
  readonly degree: string;
}

/**
 * A voicing's notes as data, in line-up order.
 * @param voicing - who sounds what
 * @param chord - gives the spelling
 * @returns one entry a sounding player
 */
export function noteData(voicing: Voicing, chord: Chord): readonly NoteData[] {
  // As the page writes it: one staff a player.
  const { staves } = layoutVoicing(voicing, { chord, view: "by-player", pitch: "written" });
  const written = new Map(staves.map(({ id, notes }) => [id, notes[0]?.spelled]));
  return voicing.placements.map(({ player, sounding }) => {
    const read = written.get(player.id);
    return {
      player: player.id,
      midi: sounding,
      name: pitchName(sounding, chord),
      written: read === undefined ? "" : formatPitch(read),
      degree: degreeOf(sounding, chord),
    };
  });
}

/**
 * The same for people, with ♭ and ♯.
 * @param voicing - who sounds what
 * @param chord - gives the spelling
 * @returns player, sounding pitch, degree, written pitch; one row a player
 */
export function noteRows(voicing: Voicing, chord: Chord): readonly (readonly string[])[] {
  return noteData(voicing, chord).map(({ player, name, degree, written }) => [
    player,
    ...[name, degree, written].map(withSigns),
  ]);
}

/**
 * ASCII accidentals as people read them.
 * @param text - a pitch or a degree: "Bb4", "#11"
 * @returns "B♭4", "♯11"
 */
export const withSigns = (text: string): string => text.replaceAll("b", "♭").replaceAll("#", "♯");

/**
 * Reads a voicing written as "tpt1=D5", "alto1=B4" …, pitches sounding.
 * @param pairs - player id and pitch, one text a player
 * @param chord - the chord they sound in; spells pitches in messages
 * @param level - how far the players have come
 * @returns the voicing in line-up order, or the problem: "notes-empty", "note-unreadable",
 *   "player-unknown", "player-twice", "note-out-of-range" or as readPitch has it
 */
export function readPlacedNotes(
  pairs: readonly string[],
  chord: Chord,
  level: PlayerLevel = "pro",
): Result<Voicing> {
  if (pairs.length === 0)
    return fail("notes-empty", "Give at least one note, such as --notes tpt1=D5.");
  const placements: Placement[] = [];
  for (const pair of pairs) {
    const placement = readPlacement(pair, chord, level);
    if (!placement.ok) return placement;
    if (placements.some(({ player }) => player.id === placement.value.player.id))
      return fail("player-twice", `${placement.value.player.id} is given two notes; give one.`);
    placements.push(placement.value);
  }
  const order = (placement: Placement) => seatIds.indexOf(placement.player.id as SeatId);
  return ok({ placements: placements.sort((a, b) => order(a) - order(b)) });
}

function readPlacement(pair: string, chord: Chord, level: PlayerLevel): Result<Placement> {
  const [id = "", pitchText, ...more] = pair.split("=").map((part) => part.trim());
  if (pitchText === undefined || more.length > 0)
    return fail("note-unreadable", `"${pair}" is not a note; write player=pitch, such as tpt1=D5.`);
  const seat = seatIds.find((each) => each === id);
  if (seat === undefined)
    return fail("player-unknown", `There is no player "${id}"; there are ${seatIds.join(", ")}.`);
  const pitch = readPitch(pitchText);
  if (!pitch.ok) {
    const { code, message, suggestions } = pitch.problem;
    return fail(code, `${pair}: ${message}`, suggestions === undefined ? {} : { suggestions });
  }
  const player = makePlayer({ seat, level });
  const { sounding } = pitch.value;
  // A chair may go past its own limits, a rule that is then named as broken; the instrument may not.
  const compass = instrumentOf(player.instrument).range;
  const isPossible = sounding >= compass.low && sounding <= compass.high;
  if (isPossible || canSound(player, sounding)) return ok({ player, sounding });
  const [low, high] = [pitchName(compass.low, chord), pitchName(compass.high, chord)];
  return fail(
    "note-out-of-range",
    `${player.name} cannot sound ${pitchText}: the instrument goes from ${low} to ${high}.`,
  );
}
