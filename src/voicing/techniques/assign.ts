import type { SoundingMidi } from "../../base/index.ts";
import { canSound, type Player } from "../../band/index.ts";
import type { Placement } from "../voicing-types.ts";
import { highestFirst } from "./chair-order.ts";
import { distanceFromHome } from "./lines.ts";

/** A pitch that nobody here reaches, with the octave that stands for it, if any does. */
export interface MovedPitch {
  readonly pitch: SoundingMidi;
  readonly instead?: SoundingMidi;
}

/** A construction handed to players, with what could not be done as written. */
export interface Assignment {
  /** Who plays what, highest chair first. */
  readonly placements: readonly Placement[];
  readonly moved: readonly MovedPitch[];
  /** Pitches within somebody's reach that nobody is left to play. */
  readonly leftOut: readonly SoundingMidi[];
  /** Players who reach none of the pitches and take an octave of one. */
  readonly displaced: readonly Placement[];
  readonly resting: readonly Player[];
}

/** Costs: a note left out weighs more than any distance from home, a silent player more still. */
const NOTE_LEFT_OUT = 1_000;
const PLAYER_SILENT = 100_000;

interface Plan {
  readonly cost: number;
  /** Index of a pitch for each player, or −1 for rest. */
  readonly picks: readonly number[];
}

/**
 * Hands pitches to players so that no player lies above one of a higher chair, every pitch sounds
 * if it can, and everybody lies as near to home as that allows.
 */
function cheapestPlan(players: readonly Player[], pitches: readonly SoundingMidi[]): Plan {
  const known = new Map<number, Plan>();
  const from = (player: number, next: number): Plan => {
    const key = player * (pitches.length + 1) + next;
    const found = known.get(key) ?? compute(player, next);
    known.set(key, found);
    return found;
  };
  const compute = (at: number, next: number): Plan => {
    const player = players[at];
    if (!player) return { cost: NOTE_LEFT_OUT * (pitches.length - next), picks: [] };
    const silent = from(at + 1, next);
    let best: Plan = { cost: silent.cost + PLAYER_SILENT, picks: [-1, ...silent.picks] };
    for (let pick = Math.max(0, next - 1); pick < pitches.length; pick++) {
      const pitch = pitches[pick] as SoundingMidi;
      if (!canSound(player, pitch)) continue;
      const rest = from(at + 1, Math.max(next, pick + 1));
      const skipped = NOTE_LEFT_OUT * Math.max(0, pick - next);
      const cost = rest.cost + skipped + distanceFromHome(player, pitch);
      if (cost < best.cost) best = { cost, picks: [pick, ...rest.picks] };
    }
    return best;
  };
  return from(0, 0);
}

/** An octave of `pitch` that somebody reaches, at or below the lead and not a semitone under it. */
function octaveWithinReach(
  pitch: SoundingMidi,
  lead: SoundingMidi,
  players: readonly Player[],
): SoundingMidi | undefined {
  const octaves = [12, -12, 24, -24].map((shift) => (pitch + shift) as SoundingMidi);
  return octaves.find(
    (one) => one <= lead && one !== lead - 1 && players.some((player) => canSound(player, one)),
  );
}

/** For a player whom the plan left silent: the octave of any pitch here that lies nearest to home. */
function spareNote(
  player: Player,
  pitches: readonly SoundingMidi[],
  lead: SoundingMidi,
): SoundingMidi | undefined {
  const all = pitches.flatMap((pitch) =>
    [-24, -12, 0, 12, 24].map((shift) => (pitch + shift) as SoundingMidi),
  );
  return all
    .filter((pitch) => canSound(player, pitch) && pitch <= lead && pitch !== lead - 1)
    .sort((a, b) => distanceFromHome(player, a) - distanceFromHome(player, b))[0];
}

/** As written: first player, highest pitch; undefined when a pitch lies outside a range. */
function asWritten(
  players: readonly Player[],
  highToLow: readonly SoundingMidi[],
): readonly Placement[] | undefined {
  if (players.length !== highToLow.length) return undefined;
  const placements = players.map((player, index) => ({
    player,
    sounding: highToLow[index] as SoundingMidi,
  }));
  return placements.every(({ player, sounding }) => canSound(player, sounding))
    ? placements
    : undefined;
}

/**
 * Hands the pitches of a construction to players: highest chair highest, everyone inside the
 * range. A pitch that nobody reaches moves by octaves, never above the lead nor a semitone under
 * it; a player who reaches none of the pitches takes an octave of one, or rests.
 * @param pitches - pitches, repeated where they are meant to be doubled
 * @param players - who may play
 * @param lead - melody note; nothing goes above it
 * @returns who plays what, highest first, and what had to give
 */
export function assignPitches(
  pitches: readonly SoundingMidi[],
  players: readonly Player[],
  lead: SoundingMidi,
): Assignment {
  const order = highestFirst(players);
  const written = [...pitches].sort((a, b) => b - a);
  const exact = asWritten(order, written);
  if (exact) return { placements: exact, moved: [], leftOut: [], displaced: [], resting: [] };
  const distinct = [...new Set(written)];
  const isReached = (pitch: SoundingMidi): boolean =>
    players.some((player) => canSound(player, pitch));
  const moved = distinct
    .filter((pitch) => !isReached(pitch))
    .map((pitch): MovedPitch => {
      const instead = octaveWithinReach(pitch, lead, players);
      return instead === undefined ? { pitch } : { pitch, instead };
    });
  const octaves = moved.flatMap(({ instead }) => (instead === undefined ? [] : [instead]));
  const usable = [...new Set([...distinct.filter(isReached), ...octaves])].sort((a, b) => b - a);
  const handed = handOut(order, usable, distinct, lead);
  const sounding = new Set(handed.placements.map((placement) => placement.sounding));
  return { moved, leftOut: usable.filter((pitch) => !sounding.has(pitch)), ...handed };
}

function handOut(
  order: readonly Player[],
  usable: readonly SoundingMidi[],
  distinct: readonly SoundingMidi[],
  lead: SoundingMidi,
): Pick<Assignment, "placements" | "displaced" | "resting"> {
  const { picks } = cheapestPlan(order, usable);
  const placements: Placement[] = [];
  const displaced: Placement[] = [];
  const resting: Player[] = [];
  order.forEach((player, index) => {
    const picked = usable[picks[index] ?? -1];
    const sounding = picked ?? spareNote(player, distinct, lead);
    if (sounding === undefined) resting.push(player);
    else placements.push({ player, sounding });
    if (picked === undefined && sounding !== undefined) displaced.push({ player, sounding });
  });
  return { placements, displaced, resting };
}
