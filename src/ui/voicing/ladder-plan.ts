import { scaleLinear } from "d3-scale";
import type { Player } from "../../band/index.ts";
import type { Pitches } from "../state/session.ts";
import { ladderStrips, narrowLabel, type Strip, type StripBy } from "./ladder-strips.ts";

/** Measures of the ladder, CSS pixels. */
export const ladderSizes = {
  /** Degrees and note names stand left of this. */
  left: 70,
  head: 26,
  /** Shelf for those who rest. */
  shelf: 34,
  token: 24,
  mostPerSemitone: 18,
} as const;

/** A player's token. */
export interface PlacedToken {
  readonly player: Player;
  /** Sounding MIDI note number; null for a player who rests, on the shelf below. */
  readonly pitch: number | null;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly label: string;
}

/** A sounding note across the ladder. */
export interface Rung {
  readonly pitch: number;
  readonly y: number;
  /** Where the thread runs over a strip that sounds it: left and right ends. */
  readonly over: readonly (readonly [number, number])[];
}

/** Where everything on the ladder lies. */
export interface LadderPlan {
  readonly by: StripBy;
  readonly strips: readonly Strip[];
  readonly tokens: readonly PlacedToken[];
  /** Top to bottom. */
  readonly rungs: readonly Rung[];
  readonly yOf: (pitch: number) => number;
  readonly pitchAt: (y: number) => number;
  /** Right end of the strips. */
  readonly right: number;
  readonly height: number;
  readonly shelfY: number;
}

/** What to lay out. */
export interface LadderInput {
  readonly players: readonly Player[];
  readonly pitches: Pitches;
  readonly by: StripBy;
  /** Highest and lowest pitch of the scale, whatever sounds now, so that it stays put. */
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly width: number;
  readonly height: number;
}

/**
 * Lays the ladder out: strips, rungs and tokens on one vertical pitch scale.
 * @param input - players, pitches and room
 * @returns where everything lies
 */
export function ladderPlan(input: LadderInput): LadderPlan {
  const { players, pitches, by, left, width, height } = input;
  const sounding = Object.values(pitches);
  const top = Math.max(input.top, ...sounding) + 3.5;
  const bottom = Math.min(input.bottom, ...sounding) - 3;
  const room = height - ladderSizes.head - ladderSizes.shelf;
  const perSemitone = Math.min(ladderSizes.mostPerSemitone, room / (top - bottom));
  const end = ladderSizes.head + perSemitone * (top - bottom);
  const scale = scaleLinear().domain([top, bottom]).range([ladderSizes.head, end]);
  const strips = ladderStrips(players, by, left, width - left);
  const shelfY = end + ladderSizes.shelf / 2 + 2;
  return {
    by,
    strips,
    tokens: strips.flatMap((strip) => stripTokens(strip, pitches, by, scale, shelfY)),
    rungs: rungsOf(strips, pitches, scale),
    yOf: scale,
    pitchAt: (y) => Math.round(scale.invert(y)),
    right: Math.max(left, ...strips.map((strip) => strip.x + strip.width)),
    height: end + ladderSizes.shelf,
    shelfY,
  };
}

function rungsOf(
  strips: readonly Strip[],
  pitches: Pitches,
  yOf: (pitch: number) => number,
): readonly Rung[] {
  const stack = [...new Set(Object.values(pitches))].sort((a, b) => b - a);
  return stack.map((pitch) => ({
    pitch,
    y: yOf(pitch),
    over: strips
      .filter((strip) => strip.players.some((player) => pitches[player.id] === pitch))
      .map((strip) => [strip.x, strip.x + strip.width] as const),
  }));
}

/** Tokens of one strip; those that would overlap stand side by side, narrower if need be. */
function stripTokens(
  strip: Strip,
  pitches: Pitches,
  by: StripBy,
  yOf: (pitch: number) => number,
  shelfY: number,
): readonly PlacedToken[] {
  const placed = strip.players
    .map((player, order) => {
      const pitch = pitches[player.id] ?? null;
      return { player, order, pitch, y: pitch === null ? shelfY : yOf(pitch) };
    })
    .sort((a, b) => a.y - b.y || a.order - b.order);
  return clusters(placed).flatMap((cluster) => {
    const slots = slotsFor(cluster, strip.slots);
    const count = Math.max(strip.slots, ...slots.map((slot) => slot + 1));
    const step = strip.width / count;
    return cluster.map(({ player, pitch, y }, index) => ({
      player,
      pitch,
      x: strip.x + step * (slots[index] ?? 0) + 1,
      y,
      width: step - 2,
      label: step >= 40 ? player.abbreviation : narrowLabel(player, by),
    }));
  });
}

interface Standing {
  readonly player: Player;
  readonly order: number;
  readonly pitch: number | null;
  readonly y: number;
}

const apart = ladderSizes.token + 1;

/** Runs of tokens in which each touches the next. */
function clusters(tokens: readonly Standing[]): readonly (readonly Standing[])[] {
  const runs: Standing[][] = [];
  for (const token of tokens) {
    const run = runs[runs.length - 1];
    const last = run?.[run.length - 1];
    if (run !== undefined && last !== undefined && token.y - last.y < apart) run.push(token);
    else runs.push([token]);
  }
  return runs;
}

/** A slot for each token of a run: its chair's own side if free there, else the first free one. */
function slotsFor(run: readonly Standing[], usual: number): readonly number[] {
  const slots: number[] = [];
  run.forEach((token, index) => {
    const taken = new Set(
      run.slice(0, index).flatMap((other, at) => (token.y - other.y < apart ? [slots[at]] : [])),
    );
    let slot = token.order % usual;
    if (taken.has(slot)) {
      slot = 0;
      while (taken.has(slot)) slot += 1;
    }
    slots.push(slot);
  });
  return slots;
}

/**
 * Moves labels apart that would touch, as little as possible, keeping their order.
 * @param ys - wanted middles, top to bottom
 * @param distance - least distance, CSS pixels
 * @returns middles that keep the distance
 */
export function spreadLabels(ys: readonly number[], distance: number): readonly number[] {
  const groups: { middle: number; members: number[] }[] = [];
  ys.forEach((y, index) => {
    groups.push({ middle: y, members: [index] });
    for (;;) {
      const [before, last] = groups.slice(-2);
      if (before === undefined || last === undefined || groups.length < 2) return;
      const reach = ((before.members.length + last.members.length) / 2) * distance;
      if (last.middle - before.middle >= reach) return;
      groups.pop();
      const members = [...before.members, ...last.members];
      // The middle that moves everybody least: the mean of where each would put it.
      const wanted = members.map(
        (member, at) => (ys[member] ?? 0) - (at - (members.length - 1) / 2) * distance,
      );
      before.members = members;
      before.middle = wanted.reduce((sum, each) => sum + each, 0) / wanted.length;
    }
  });
  return groups.flatMap(({ middle, members }) =>
    members.map((_, at) => middle + (at - (members.length - 1) / 2) * distance),
  );
}
