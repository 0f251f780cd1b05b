import type { PhraseHead, PhraseStaff, PhraseValue } from "../../../src/notation/index.ts";

const letters: Readonly<Record<string, string>> = {
  whole: "w",
  half: "h",
  quarter: "q",
  eighth: "e",
  "16th": "s",
};
const signs: Readonly<Record<string, string>> = {
  none: "",
  flat: "b",
  sharp: "#",
  natural: "n",
  "double-flat": "bb",
  "double-sharp": "##",
};

function headText({ spelled, sign, isCourtesy, isTiedOn }: PhraseHead): string {
  const shown = signs[sign] ?? "?";
  const bracketed = isCourtesy ? `(${shown})` : shown;
  return `${bracketed}${spelled.letter}${spelled.octave}${isTiedOn ? "~" : ""}`;
}

function valueText({ value, dots, tuplet, heads, marks, dynamic }: PhraseValue): string {
  const what = heads.length === 0 ? "r" : heads.map(headText).join("+");
  const length = (letters[value] ?? value) + (dots === 1 ? "." : "") + (tuplet?.notes ?? "");
  const more = [...(dynamic ? [dynamic] : []), ...marks].map((word) => `!${word}`).join("");
  return `${length}:${what}${more}`;
}

/** A staff bar by bar: "e:A4 e:#C5~ q:r", "-" for a rest of the whole bar. */
export function staffText({ bars }: PhraseStaff): string {
  return bars
    .map(({ values }) => (values.length === 0 ? "-" : values.map(valueText).join(" ")))
    .join(" | ");
}
