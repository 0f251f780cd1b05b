import type { Count, SoundingMidi } from "../base/index.ts";
import type { Player } from "../band/index.ts";
import { slideTable } from "./slide-table.ts";

const {
  positions,
  harmonics,
  flatHarmonic,
  flatPositions,
  pedal,
  attachment,
  attachmentPositions,
} = slideTable;

function positionsOf(tube: readonly number[], most: number, midi: number): number[] {
  const found: number[] = [];
  for (let position = 1; position <= most; position++) {
    const isThere = tube.some((open) => {
      if (open === flatHarmonic && !flatPositions.includes(position)) return false;
      return open - (position - 1) === midi;
    });
    if (isThere) found.push(position);
  }
  return found;
}

/**
 * Positions in which a trombone plays a pitch. The bass trombone has its F attachment as well.
 * @param instrument - which trombone
 * @param sounding - sounding pitch
 * @returns positions 1 to 7, nearest first; empty for a pitch the slide does not give
 * @source slide-table.ts
 * @example slidePositions("trombone", 58) // [1, 5]
 */
export function slidePositions(
  instrument: "trombone" | "bass-trombone",
  sounding: SoundingMidi,
): readonly Count[] {
  const plain = positionsOf([pedal, ...harmonics], positions, sounding);
  if (instrument === "trombone") return plain;
  const attached = positionsOf(attachment, attachmentPositions, sounding);
  return [...new Set([...plain, ...attached])].sort((a, b) => a - b);
}

/** Travel between any two pitches by instrument, −1 where not worked out yet. */
const known = new Map<string, Int8Array>();

/**
 * How far the slide must travel at least between two pitches.
 * @param player - whose instrument; only trombones have a slide
 * @param from - sounding pitch
 * @param to - sounding pitch
 * @returns positions, 0 for other instruments and for pitches the slide does not give
 * @example slideTravel({ instrument: "trombone" }, 46, 59) // 3
 */
export function slideTravel(
  player: Pick<Player, "instrument">,
  from: SoundingMidi,
  to: SoundingMidi,
): Count {
  const { instrument } = player;
  if (instrument !== "trombone" && instrument !== "bass-trombone") return 0;
  const table = known.get(instrument) ?? new Int8Array(128 * 128).fill(-1);
  known.set(instrument, table);
  const at = 128 * from + to;
  if (table[at]! < 0) table[at] = leastTravel(instrument, from, to);
  return table[at]!;
}

function leastTravel(
  instrument: "trombone" | "bass-trombone",
  from: SoundingMidi,
  to: SoundingMidi,
): Count {
  const starts = slidePositions(instrument, from);
  const ends = slidePositions(instrument, to);
  const travels = starts.flatMap((start) => ends.map((end) => Math.abs(start - end)));
  return travels.length === 0 ? 0 : Math.min(...travels);
}
