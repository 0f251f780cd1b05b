import type { Count, Ratio, Semitones } from "../base/index.ts";

/**
 * A number for people: whole numbers plain, others with so many decimals.
 * @param value - the number
 * @param decimals - digits after the point for a number that is not whole
 * @returns "33", "2.50"
 * @example numberText(5.333, 2) // "5.33"
 */
export function numberText(value: Ratio, decimals: Count): string {
  return Number.isInteger(value) ? String(value) : value.toFixed(decimals);
}

/**
 * A share in whole percent.
 * @param share - 0 to 1
 * @returns "40 %"
 * @example percentText(0.4) // "40 %"
 */
export function percentText(share: Ratio): string {
  return `${Math.round(share * 100)} %`;
}

const intervals = ["", "m2", "M2", "m3", "M3", "P4", "TT", "P5", "m6", "M6", "m7", "M7"];

/**
 * An interval in octaves and the name of what is left.
 * @param semitones - 0 or more
 * @returns "2 octaves + M6", "octave", "P5", "unison"
 * @example intervalText(33) // "2 octaves + M6"
 */
export function intervalText(semitones: Semitones): string {
  const octaves = Math.floor(semitones / 12);
  const rest = intervals[semitones % 12] ?? "";
  const octaveText = octaves === 0 ? "" : octaves === 1 ? "octave" : `${octaves} octaves`;
  if (octaveText === "" && rest === "") return "unison";
  return [octaveText, rest].filter((part) => part !== "").join(" + ");
}

/**
 * A count with its noun.
 * @param count - how many
 * @param noun - singular
 * @param plural - noun + "s" unless given
 * @returns "1 player", "13 players"
 * @example countText(1, "player") // "1 player"
 */
export function countText(count: Count, noun: string, plural = `${noun}s`): string {
  return `${count} ${count === 1 ? noun : plural}`;
}
