import type { Chord } from "../theory/index.ts";

/** Semitones of the degrees of a major scale. */
const majorScale: Readonly<Record<string, number>> = {
  "1": 0,
  "2": 2,
  "3": 4,
  "4": 5,
  "5": 7,
  "6": 9,
  "7": 11,
  "9": 2,
  "11": 5,
  "13": 9,
};

/**
 * The tone a degree means in a chord. A plain 3, 5, 6 or 7 means the chord's own, as players say
 * it: the 7 of a dominant is its minor seventh.
 * @param degree - "9", "b9", "#11", "♭13", "7"
 * @param chord - the chord
 * @returns semitones above the root, 0 to 11; nothing when the text is no degree
 */
export function toneOfDegree(degree: string, chord: Chord): number | undefined {
  const plain = degree.trim().replaceAll("♭", "b").replaceAll("♯", "#");
  const [, signs = "", figure = ""] = /^(b{0,2}|#{0,2})(\d{1,2})$/.exec(plain) ?? [];
  const natural = majorScale[figure];
  if (natural === undefined) return undefined;
  const own = chord.tones.find(
    (tone) =>
      tone.kind !== "avoid" &&
      /^[3567]$/.test(figure) &&
      signs === "" &&
      tone.degree.replace(/^[b#]+/, "") === figure,
  );
  if (own !== undefined) return own.aboveRoot;
  const alteration = signs.startsWith("b") ? -signs.length : signs.length;
  return (natural + alteration + 12) % 12;
}
