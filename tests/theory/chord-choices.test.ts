import { describe, expect, it } from "vitest";
import { CHOICE_SENTENCES } from "../../src/theory/chord-choice-table.ts";
import { choiceSentences } from "../../src/theory/chord-choices.ts";
import { chordTones } from "../../src/theory/chord-tones.ts";
import { draftOf, emptyWork } from "../../src/theory/chord-work.ts";
import { chord } from "./support/chords.ts";

const hasChoice = (symbol: string, id: keyof typeof CHOICE_SENTENCES) =>
  chord(symbol).choices.includes(CHOICE_SENTENCES[id]);

describe("choices", () => {
  const known: readonly (readonly [string, keyof typeof CHOICE_SENTENCES])[] = [
    ["C", "triad-stays"],
    ["Cm", "minor-triad-stays"],
    ["Cdim", "diminished-triad"],
    ["C7alt", "altered"],
    ["Cm13", "minor-thirteenth"],
    ["Cm7", "minor-thirteenth-avoided"],
    ["Cm7b5", "half-diminished-ninth"],
    ["C7b9#9", "two-ninths"],
    ["C7b5#5", "two-fifths"],
    ["C11", "eleven"],
    ["Cmaj11", "major-eleven"],
    ["C13", "thirteen-without-eleventh"],
    ["C2", "two"],
    ["Csus", "suspended"],
    ["C13sus", "thirteen-suspended"],
    ["Cmaj7", "sixth-for-seventh"],
    ["C7b13", "flat-thirteenth"],
    ["C7#11", "sharp-eleventh"],
    ["C7b9", "thirteenth-open"],
    ["C7(b5,#11)", "one-note"],
    ["CΔ", "triangle"],
    ["Cø", "half-diminished-word"],
    ["C7-9", "dash-flat"],
    ["C-5", "dash-five"],
    ["C+9", "plus-nine"],
    ["Bbb9", "double-flat-root"],
    ["B##7", "respelled"],
  ];

  it.each(known)("of %s say %s", (symbol, id) => {
    expect(hasChoice(symbol, id)).toBe(true);
  });

  it("cover every row of the table", () => {
    expect(known.map(([, id]) => id).sort()).toEqual(Object.keys(CHOICE_SENTENCES).sort());
  });

  it("are silent where nothing was chosen", () => {
    for (const symbol of ["C7", "C9", "C6", "Cm6", "C7sus4", "C13b9", "N.C."])
      expect(chord(symbol).choices.filter((one) => !one.includes("eleventh is left"))).toEqual([]);
    expect(hasChoice("Cm9b5b13", "half-diminished-ninth")).toBe(true);
    expect(hasChoice("Cm7b5b9", "half-diminished-ninth")).toBe(false);
  });

  it("are plain sentences", () => {
    for (const sentence of Object.values(CHOICE_SENTENCES)) expect(sentence).toMatch(/^\S.+[.]$/);
  });

  it("are never said twice", () => {
    const draft = { ...draftOf(emptyWork("C")), choices: ["two", "two"] as const };
    const found = chordTones(draft, { letter: "C", alteration: 0 });
    expect(choiceSentences(draft, found)).toEqual([
      CHOICE_SENTENCES.two,
      CHOICE_SENTENCES["triad-stays"],
    ]);
  });
});
