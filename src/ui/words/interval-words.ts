const short = ["", "m2", "M2", "m3", "M3", "P4", "tritone", "P5", "m6", "M6", "m7", "M7"] as const;
const long = [
  "",
  "a minor second",
  "a major second",
  "a minor third",
  "a major third",
  "a fourth",
  "a tritone",
  "a fifth",
  "a minor sixth",
  "a major sixth",
  "a minor seventh",
  "a major seventh",
] as const;

/**
 * A span as players say it on paper.
 * @param semitones - 0 and up
 * @param size - "full" writes octaves out, "brief" shortens them
 * @returns e.g. "2 octaves + M6", "2 oct + M6", "M6", "unison"
 */
export function spanText(semitones: number, size: "full" | "brief" = "full"): string {
  const octaves = Math.floor(semitones / 12);
  const rest = short[semitones % 12] ?? "";
  if (octaves === 0) return rest === "" ? "unison" : rest;
  const octaveText =
    size === "brief" ? `${octaves} oct` : octaves === 1 ? "1 octave" : `${octaves} octaves`;
  return rest === "" ? octaveText : `${octaveText} + ${rest}`;
}

/**
 * A span in words to be spoken.
 * @param semitones - 0 and up
 * @returns e.g. "2 octaves and a major sixth"
 */
export function spanSpoken(semitones: number): string {
  const octaves = Math.floor(semitones / 12);
  const rest = long[semitones % 12] ?? "";
  if (octaves === 0) return rest === "" ? "unison" : rest;
  const octaveText = octaves === 1 ? "1 octave" : `${octaves} octaves`;
  return rest === "" ? octaveText : `${octaveText} and ${rest}`;
}
