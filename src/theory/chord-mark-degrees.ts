import type { Count } from "../base/index.ts";
import type { ChordExtension } from "./chord-draft-types.ts";

const ALTERED: ReadonlySet<string> = new Set(["b5", "#5", "b6", "b9", "#9", "#11", "b13"]);

/**
 * Degree of a printed alteration.
 * @param signs - "b" or "#"
 * @param value - the number behind it
 * @returns ASCII degree label, or undefined where chord symbols have no such alteration
 * @example alteredDegree("#", 11) // "#11"
 */
export function alteredDegree(signs: string, value: Count): string | undefined {
  const degree = `${signs}${value}`;
  return ALTERED.has(degree) ? degree : undefined;
}

/**
 * Degree of an added note: 2, 4 are 9, 11; 6 is 13 on a chord with a seventh.
 * @param signs - "", "b" or "#"
 * @param value - the number behind it
 * @param extension - number of the chord it is added to
 * @returns ASCII degree label, or undefined where nothing of the kind is added
 * @example addedDegree("", 2, 0) // "9"
 */
export function addedDegree(
  signs: string,
  value: Count,
  extension: ChordExtension,
): string | undefined {
  const hasSeventh = extension >= 7 && extension !== 69;
  const named: Readonly<Record<string, string | undefined>> = {
    "2": "9",
    "3": "3",
    "4": "11",
    "6": hasSeventh ? "13" : "6",
    "9": "9",
    "11": "11",
    "13": "13",
    b2: "b9",
    b6: hasSeventh ? "b13" : "b6",
    b9: "b9",
    "#9": "#9",
    "#4": "#11",
    "#11": "#11",
    b13: "b13",
  };
  return named[`${signs}${value}`];
}

/**
 * Degree of a note that is left out.
 * @param value - the number printed
 * @returns degree number as text, or undefined where nothing of the kind can be left out
 * @example omittedDegree(3) // "3"
 */
export function omittedDegree(value: Count): string | undefined {
  return [3, 5, 7, 9, 11, 13].includes(value) ? `${value}` : undefined;
}
