import type { Count, SoundingMidi } from "../base/index.ts";
import type { SectionId } from "../band/index.ts";
import type { Harmony } from "./harmony.ts";
import { sharedInSectionCostOf, sharedNoteCostOf } from "./stack-costs.ts";
import { term } from "./term.ts";
import type { CostTerm, Voicing } from "./voicing-types.ts";
import { countWord, listWords, nameIn } from "./words.ts";

const oneOf: Readonly<Record<SectionId, string>> = {
  trumpets: "trumpet",
  trombones: "trombone",
  saxes: "sax",
  rhythm: "rhythm player",
};

/**
 * What it costs that players share notes, in words: one sentence a note for all its players (N1)
 * and for those of one section (N2).
 * @param voicing - who sounds what
 * @param stack - its pitches, low to high
 * @param harmony - the tones of the question
 * @returns a term for each note with two players or more; its id names the rows that count
 */
export function sharingTerms(
  voicing: Voicing,
  stack: readonly SoundingMidi[],
  harmony: Harmony,
): readonly CostTerm[] {
  return stack.flatMap((midi) => {
    const here = voicing.placements.filter(({ sounding }) => sounding === midi);
    if (here.length < 2) return [];
    const bySection = new Map<SectionId, Count>();
    for (const { player } of here)
      bySection.set(player.section, (bySection.get(player.section) ?? 0) + 1);
    const inAll = sumOf(here.length, (already) => sharedNoteCostOf(midi, already, harmony));
    const inSections = [...bySection.values()].reduce(
      (sum, count) =>
        sum + sumOf(count, (already) => sharedInSectionCostOf(midi, already, harmony.lead)),
      0,
    );
    const id = inSections === 0 ? "N1" : inAll === 0 ? "N2" : "N1+N2";
    const value = inAll + inSections;
    const name = nameIn(midi, harmony.chord);
    if (midi !== harmony.lead) return term(id, value, name, ` is shared by ${whoOf(bySection)}`);
    const predicate = value < 0 ? " is doubled" : ` is shared by ${whoOf(bySection)}`;
    return term(id, value, `the lead, ${name},`, predicate);
  });
}

function sumOf(count: Count, costOfNext: (already: Count) => Count): Count {
  let sum = 0;
  for (let already = 1; already < count; already++) sum += costOfNext(already);
  return sum;
}

/** "two players", "two trumpets", "four players, two of them trombones". */
function whoOf(bySection: ReadonlyMap<SectionId, Count>): string {
  const all = [...bySection.values()].reduce((sum, count) => sum + count, 0);
  const several = [...bySection].filter(([, count]) => count > 1);
  const words = several.map(([section, count]) => countWord(count, oneOf[section]));
  const [only] = several;
  if (only === undefined) return countWord(all, "player");
  if (only[1] === all) return countWord(all, oneOf[only[0]]);
  const [first = "", ...others] = words;
  const of = first.replace(" ", " of them ");
  return `${countWord(all, "player")}, ${listWords([of, ...others])}`;
}
