import type { ChordDraft, ChordMark } from "./chord-draft-types.ts";
import { displayDegree } from "./degree.ts";
import type { SignStyle } from "./signs.ts";

/**
 * What stands behind the root, in this project's one spelling: words for major and diminished, m
 * for minor, all alterations, additions and omissions in one bracket in printed order.
 * @param draft - the symbol taken apart
 * @param style - `ascii` ("m7(b5)", "dim7"), or `unicode` for people ("ø7", "°7", ♭, ♯)
 * @returns the suffix, "" for a major triad
 * @source no suffix for a major triad, alterations behind it in brackets: C. Brandt & C. Roemer,
 *   Standardized Chord Symbol Notation, 1976
 */
export function chordSuffix(draft: ChordDraft, style: SignStyle): string {
  const marks = draft.marks.map((mark) => markText(mark, style));
  if (draft.quality === "half-diminished" && style === "ascii") marks.unshift("b5");
  const suspension = draft.suspension === 0 ? "" : `sus${draft.suspension}`;
  const bracket = marks.length === 0 ? "" : `(${marks.join(",")})`;
  return basicText(draft, style) + suspension + bracket;
}

const hasSeventh = ({ extension }: ChordDraft) => extension >= 7 && extension !== 69;

function basicText(draft: ChordDraft, style: SignStyle): string {
  const number = draft.extension === 0 ? "" : `${draft.extension}`;
  if (draft.isAlt) return "7alt";
  const isMajor = draft.isMajorSeventh && hasSeventh(draft);
  const isPlain = style === "ascii";
  switch (draft.quality) {
    case "major":
      return isMajor ? `maj${number}` : number;
    case "minor":
      return isMajor ? `m(maj${number})` : `m${number}`;
    case "diminished": {
      const word = isPlain ? "dim" : "°";
      return isMajor ? `${word}(maj${number})` : word + number;
    }
    case "half-diminished":
      return (isPlain ? "m" : "ø") + number;
    case "augmented":
      return "+";
  }
}

function markText({ kind, degree }: ChordMark, style: SignStyle): string {
  const label = style === "ascii" ? degree : displayDegree(degree);
  if (kind === "omit") return `no${label}`;
  if (kind === "add") return degree === "7" ? "addmaj7" : `add${label}`;
  return label;
}
