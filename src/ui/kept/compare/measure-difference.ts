import type { Measured } from "../../../metrics/index.ts";

/**
 * By how much a measure differs, from the figures as they are written, so that they add up.
 * @param measured - of the voicing
 * @param against - of the one it is compared with
 * @returns "+5", "−0.25", "same"; empty where one of them has no value
 */
export function measureDifference(measured: Measured, against: Measured): string {
  if (measured.value === null || against.value === null) return "";
  const places = Math.max(decimals(measured.text), decimals(against.text));
  const by = Number((written(measured) - written(against)).toFixed(places));
  if (by === 0) return "same";
  return `${by > 0 ? "+" : "−"}${Math.abs(by).toFixed(places)}`;
}

/** "11 of 13" counts as 11. */
function written({ text, value }: Measured): number {
  const number = Number.parseFloat(text);
  return Number.isFinite(number) ? number : (value ?? 0);
}

function decimals(text: string): number {
  return /\d\.(\d+)/.exec(text)?.[1]?.length ?? 0;
}
