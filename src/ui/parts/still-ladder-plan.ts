import { sectionOrder, type Player, type SectionId } from "../../band/index.ts";
import { stackOf, type Voicing } from "../../voicing/index.ts";
import { tokenLabel } from "../teaching/token-label.ts";
import { spreadLabels } from "../voicing/ladder-plan.ts";

/** The players of one section on one note. */
export interface StillToken {
  readonly section: SectionId;
  readonly players: readonly Player[];
  readonly pitch: number;
  readonly x: number;
  /** Middle. */
  readonly y: number;
  readonly width: number;
  readonly label: string;
}

/** A note across the ladder, and where its name stands. */
export interface StillRung {
  readonly pitch: number;
  readonly y: number;
  readonly labelY: number;
  /** Stretches that a section sounds. */
  readonly over: readonly (readonly [from: number, to: number])[];
}

/** Where everything of a ladder that is only looked at lies. */
export interface StillLadderPlan {
  readonly height: number;
  readonly from: number;
  readonly to: number;
  readonly tokens: readonly StillToken[];
  readonly rungs: readonly StillRung[];
}

/** Highest and lowest pitch that ladders side by side share. */
export interface PitchScale {
  readonly top: number;
  readonly bottom: number;
}

/** CSS pixels. */
export const stillSizes = Object.freeze({
  token: 16,
  type: 11.5,
  perSemitone: 9,
  labels: 56,
  labelGap: 13,
  margin: 12,
});

/**
 * The scale that voicings side by side share.
 * @param voicings - at least one that sounds
 * @returns from the highest to the lowest sounding pitch
 */
export function sharedScale(voicings: readonly Voicing[]): PitchScale {
  const pitches = voicings.flatMap(({ placements }) => placements.map((one) => one.sounding));
  return { top: Math.max(...pitches, 60), bottom: Math.min(...pitches, 60) };
}

/**
 * Lays a ladder out: players of a section who share a note share a token.
 * @param voicing - who sounds what
 * @param players - the line-up: its sections have their columns although they rest
 * @param scale - pitches at the top and at the bottom
 * @param width - CSS pixels
 * @param perSemitone - height of a semitone, CSS pixels
 * @returns where everything lies
 */
export function stillLadderPlan(
  voicing: Voicing,
  players: readonly Player[],
  scale: PitchScale,
  width: number,
  perSemitone: number = stillSizes.perSemitone,
): StillLadderPlan {
  const { margin, labels, labelGap } = stillSizes;
  const yOf = (pitch: number) => margin + perSemitone * (scale.top - pitch);
  const sections = sectionOrder.filter((id) => players.some(({ section }) => section === id));
  const column = (width - labels - 8) / Math.max(1, sections.length);
  const tokens = sections.flatMap((section, index) =>
    tokensOf(voicing, section, { from: labels + 4 + index * column, width: column - 6, yOf }),
  );
  const stack = [...stackOf(voicing)].reverse();
  const labelYs = spreadLabels(stack.map(yOf), labelGap);
  return {
    height: 2 * margin + perSemitone * (scale.top - scale.bottom),
    from: labels,
    to: width - 4,
    tokens,
    rungs: stack.map((pitch, index) => ({
      pitch,
      y: yOf(pitch),
      labelY: labelYs[index] ?? yOf(pitch),
      over: tokens
        .filter((token) => token.pitch === pitch)
        .map(({ x, width: wide }) => [x - 4, x + wide + 4] as const),
    })),
  };
}

interface Column {
  readonly from: number;
  readonly width: number;
  readonly yOf: (pitch: number) => number;
}

/** Tokens too close to stand under each other share the width, left and right in turn. */
function tokensOf({ placements }: Voicing, section: SectionId, column: Column): StillToken[] {
  const own = placements.filter(({ player }) => player.section === section);
  const pitches = [...new Set(own.map(({ sounding }) => sounding as number))].sort((a, b) => b - a);
  const isClose = (a: number | undefined, b: number | undefined) =>
    a !== undefined &&
    b !== undefined &&
    Math.abs(column.yOf(a) - column.yOf(b)) < stillSizes.token;
  let side = 0;
  return pitches.map((pitch, index) => {
    const [before, after] = [pitches[index - 1], pitches[index + 1]];
    side = isClose(before, pitch) ? 1 - side : 0;
    const isHalf = isClose(before, pitch) || isClose(pitch, after);
    const width = isHalf ? column.width / 2 - 1 : column.width;
    const players = own.filter(({ sounding }) => sounding === pitch).map(({ player }) => player);
    return {
      section,
      players,
      pitch,
      x: column.from + (isHalf ? side * (column.width / 2 + 1) : 0),
      y: column.yOf(pitch),
      width,
      label: tokenLabel(players, width, stillSizes.type),
    };
  });
}
