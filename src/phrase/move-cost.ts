import { quantity, type Count, type Seconds, type SoundingMidi } from "../base/index.ts";
import { instrumentOf, soundingMinusWritten, type Player } from "../band/index.ts";
import {
  lowSaxKeys,
  moveCosts,
  registerBreaks,
  slideCosts,
  speedLimits,
} from "./line-cost-table.ts";
import { slidePositions, slideTravel } from "./slide-positions.ts";

/** How much time a move has. */
export type Speed = "fast" | "medium" | "slow";

/** Sounding pitch, or 0 for rest. */
export type PitchOrRest = SoundingMidi | 0;

/** Parts of a move's cost. */
export type MoveTermId = "size" | "brass-leap" | "slide" | "break" | "low-keys" | "enter" | "leave";

/** One named part of a move's cost. */
export interface MoveTerm {
  readonly id: MoveTermId;
  readonly value: Count;
  /** In words: "slide from position 1 to 6". */
  readonly text: string;
}

/** What surrounds a move. */
export interface MoveSituation {
  readonly speed: Speed;
  /** The melody strikes a new note of another pitch; else standing still is right. */
  readonly isMelodyMoving: boolean;
  /** The melody is silent in between: nobody needs a reason to come in or drop out. */
  readonly isAfterRest: boolean;
}

/** A move as the cost functions see it. */
interface Move {
  readonly player: Player;
  readonly from: number;
  readonly to: number;
  readonly at: MoveSituation;
}

/**
 * Class of the time between two notes.
 * @param seconds - from onset to onset
 * @returns fast, medium or slow
 * @source line-cost-table.ts
 */
export function speedOf(seconds: Seconds): Speed {
  if (seconds <= speedLimits.fast) return "fast";
  return seconds <= speedLimits.medium ? "medium" : "slow";
}

function sizeCost({ from, to, at }: Move): number {
  const size = Math.abs(to - from);
  if (size === 0 && (!at.isMelodyMoving || at.isAfterRest)) return 0;
  const full = moveCosts.bySize[size] ?? moveCosts.beyondOctave + (size - 12);
  return at.isAfterRest ? Math.floor(full / 2) : full;
}

function brassCost({ player, from, to, at }: Move): number {
  const { from: least, cost } = moveCosts.brassLeap;
  if (Math.abs(to - from) < least || at.isAfterRest) return 0;
  return instrumentOf(player.instrument).isBrass ? cost : 0;
}

function slideCost({ player, from, to, at }: Move): number {
  if (at.isAfterRest) return 0;
  return slideCosts[at.speed][slideTravel(player, quantity(from), quantity(to))] ?? 0;
}

function breakCost({ player, from, to, at }: Move): number {
  const row = registerBreaks[player.instrument];
  if (!row || at.isAfterRest) return 0;
  const below = row.below + soundingMinusWritten(player.instrument);
  return from > below === to > below ? 0 : row.cost[at.speed];
}

function lowKeyCost({ player, from, to, at }: Move): number {
  if (at.isAfterRest || from === to || !player.instrument.endsWith("-sax")) return 0;
  const shift = soundingMinusWritten(player.instrument);
  const isLow = (pitch: number): boolean => lowSaxKeys.notes.includes(pitch - shift);
  return isLow(from) && isLow(to) ? lowSaxKeys.cost[at.speed] : 0;
}

const parts: readonly {
  readonly id: MoveTermId;
  readonly cost: (move: Move) => number;
  readonly text: (move: Move) => string;
}[] = [
  { id: "size", cost: sizeCost, text: sizeText },
  { id: "brass-leap", cost: brassCost, text: () => "a wide leap on a brass instrument" },
  { id: "slide", cost: slideCost, text: slideText },
  { id: "break", cost: breakCost, text: () => "crosses the register break" },
  { id: "low-keys", cost: lowKeyCost, text: () => "two low keys under one finger" },
];

function sizeText({ from, to }: Move): string {
  const size = Math.abs(to - from);
  return size === 0 ? "repeats a note under a moving melody" : `leaps ${size} semitones`;
}

function slideText({ player, from, to }: Move): string {
  const { instrument } = player;
  if (instrument !== "trombone" && instrument !== "bass-trombone") return "";
  const travel = slideTravel(player, quantity(from), quantity(to));
  const ends = slidePositions(instrument, quantity(to));
  for (const start of slidePositions(instrument, quantity(from)))
    for (const end of ends)
      if (Math.abs(start - end) === travel) return `slide from position ${start} to ${end}`;
  return "";
}

function restCost(from: number, to: number, { isAfterRest }: MoveSituation): number {
  if (isAfterRest || from === to) return 0;
  return from === 0 ? moveCosts.enter : moveCosts.leave;
}

/**
 * What a player's move costs, term by term and in words.
 * @param player - who moves
 * @param from - sounding pitch before, 0 for rest
 * @param to - sounding pitch after, 0 for rest
 * @param at - time and what the melody does
 * @returns the terms that are not 0
 * @source line-cost-table.ts
 */
export function moveTerms(
  player: Player,
  from: PitchOrRest,
  to: PitchOrRest,
  at: MoveSituation,
): readonly MoveTerm[] {
  if (from === 0 || to === 0) {
    const value = restCost(from, to, at);
    const isEntry = from === 0;
    const text = isEntry ? "comes in while others go on" : "drops out while others go on";
    return value === 0 ? [] : [{ id: isEntry ? "enter" : "leave", value, text }];
  }
  const move: Move = { player, from, to, at };
  return parts
    .map(({ id, cost, text }) => ({ id, value: cost(move), text: text(move) }))
    .filter(({ value }) => value > 0);
}

/**
 * What a player's move costs.
 * @param player - who moves
 * @param from - sounding pitch before, 0 for rest
 * @param to - sounding pitch after, 0 for rest
 * @param at - time and what the melody does
 * @returns whole number, 0 or more
 * @source line-cost-table.ts
 */
export function moveCost(
  player: Player,
  from: PitchOrRest,
  to: PitchOrRest,
  at: MoveSituation,
): Count {
  if (from === 0 || to === 0) return restCost(from, to, at);
  const move: Move = { player, from, to, at };
  let sum = 0;
  for (const { cost } of parts) sum += cost(move);
  return sum;
}

/** Remembers the costs of moves: a phrase asks for the same ones again and again. */
export class MoveMemory {
  private readonly tables = new Map<string, Int16Array>();

  /**
   * @param player - who moves
   * @param at - time and what the melody does
   * @returns 128 × 128 costs, row from, column to, 0 for rest; −1 where not asked for yet
   */
  private tableOf(player: Player, at: MoveSituation): Int16Array {
    const key = `${player.instrument} ${at.speed} ${at.isMelodyMoving} ${at.isAfterRest}`;
    const found = this.tables.get(key) ?? new Int16Array(128 * 128).fill(-1);
    this.tables.set(key, found);
    return found;
  }

  /**
   * Costs of a player's moves between two sets of pitches.
   * @param player - who moves
   * @param from - pitches before, 0 for rest
   * @param to - pitches after, 0 for rest
   * @param at - time and what the melody does
   * @returns from × to
   */
  between(
    player: Player,
    from: readonly PitchOrRest[],
    to: readonly PitchOrRest[],
    at: MoveSituation,
  ): Int16Array {
    const table = this.tableOf(player, at);
    const costs = new Int16Array(from.length * to.length);
    from.forEach((start, f) =>
      to.forEach((end, t) => {
        const place = 128 * start + end;
        if (table[place]! < 0) table[place] = moveCost(player, start, end, at);
        costs[f * to.length + t] = table[place]!;
      }),
    );
    return costs;
  }
}
