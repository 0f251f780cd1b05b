/** How dark a place is: 0 to 4, or null where the measure is not defined there. */
export type ShadeStep = 0 | 1 | 2 | 3 | 4 | null;

/**
 * Where a value lies on a measure's scale, 0 to 1; values beyond the ends are held there.
 * @param value - in the measure's unit
 * @param axis - ends of the scale
 * @returns a share
 */
export function shareOf(value: number, axis: readonly [low: number, high: number]): number {
  const [low, high] = axis;
  return Math.min(1, Math.max(0, (value - low) / (high - low)));
}

/**
 * The shade of a value: five equal steps of the measure's scale.
 * @param value - in the measure's unit, or null where it is not defined
 * @param axis - ends of the scale
 * @returns the step
 */
export function shadeStep(
  value: number | null,
  axis: readonly [low: number, high: number],
): ShadeStep {
  if (value === null) return null;
  return Math.min(4, Math.floor(shareOf(value, axis) * 5)) as ShadeStep;
}

/**
 * Upper ends of the five shades, as the legend writes them.
 * @param axis - ends of the measure's scale
 * @returns five short numbers
 */
export function shadeEnds(axis: readonly [low: number, high: number]): readonly string[] {
  const [low, high] = axis;
  return [1, 2, 3, 4, 5].map((step) => {
    const end = low + ((high - low) * step) / 5;
    return Number.isInteger(end) ? String(end) : String(Number(end.toPrecision(2)));
  });
}
