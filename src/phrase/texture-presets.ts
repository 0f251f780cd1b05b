import { quantity } from "../base/index.ts";
import type { Player } from "../band/index.ts";
import { barCount, barStart, type Divisions, type Melody } from "../theory/index.ts";
import type { Curve, TextureCurves } from "./curves.ts";
import { textureEnds, texturePresets } from "./texture-preset-table.ts";
import type { ShapePoint, TexturePresetId } from "./texture-preset-table.ts";
import type { Turn } from "./who-plays.ts";

/** Curves and turns that belong together. */
export interface TexturePlan {
  readonly curves: TextureCurves;
  readonly turns: readonly Turn[];
}

/**
 * A shape laid over a melody for a band.
 * @param id - which shape
 * @param melody - gives the length and the bars
 * @param players - the line-up; gives the most players and the sections that can take turns
 * @returns curves and turns, ready to be drawn over
 * @throws RangeError when there is no such shape
 */
export function texturePlan(
  id: TexturePresetId,
  melody: Melody,
  players: readonly Player[],
): TexturePlan {
  const row = texturePresets.find((each) => each.id === id);
  if (!row) throw new RangeError(`there is no texture shape "${id}"`);
  const most = players.length;
  const fewest = Math.min(textureEnds.fewestPlayers, most);
  const laid = (shape: readonly ShapePoint[], [low, high]: readonly [number, number]): Curve =>
    shape.map(([share, level]) => ({
      at: quantity<Divisions>(Math.round(share * melody.length)),
      value: Math.round((low + level * (high - low)) * 100) / 100,
    }));
  return {
    curves: {
      span: laid(row.span, textureEnds.span),
      density: laid(row.density, textureEnds.density),
      weight: laid(row.weight, [fewest, most]),
    },
    turns: turnsOf(row.turns, melody, players),
  };
}

/** Two bars each; a band that lacks one of the sides does not take turns. */
function turnsOf(
  sides: readonly (readonly string[])[],
  melody: Melody,
  players: readonly Player[],
): readonly Turn[] {
  const isWhole = sides.every((side) => players.some(({ section }) => side.includes(section)));
  if (sides.length < 2 || !isWhole) return [];
  const bars = barCount(melody);
  const turns: Turn[] = [];
  for (let bar = 1; bar <= bars; bar += 2) {
    const side = sides[((bar - 1) / 2) % sides.length] ?? [];
    const from = bar === 1 ? quantity<Divisions>(0) : barStart(melody, bar);
    const to = bar + 2 > bars ? melody.length : barStart(melody, bar + 2);
    for (const who of sides.flat())
      if (!side.includes(who)) turns.push({ who, from, to, plays: false });
  }
  return turns;
}
