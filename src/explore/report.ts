import type { SoundingMidi } from "../base/index.ts";
import { measureAll, type Reading } from "../metrics/index.ts";
import {
  brokenRules,
  costOf,
  isCrossSection,
  stackOf,
  techniquesOf,
  type BrokenRule,
  type CellKey,
  type Cost,
  type Question,
  type TechniqueId,
  type Voicing,
} from "../voicing/index.ts";

/** Everything the page and the command line say about one voicing. */
export interface VoicingReport {
  readonly voicing: Voicing;
  readonly cell: CellKey;
  /** Distinct pitches, low to high. */
  readonly stack: readonly SoundingMidi[];
  /** Comparable inside the cell only. */
  readonly cost: Cost;
  readonly broken: readonly BrokenRule[];
  readonly techniques: readonly TechniqueId[];
  readonly isCrossSection: boolean;
  readonly measures: readonly Reading[];
}

/**
 * Says everything about a voicing, whatever it is: found, textbook or hand-made.
 * @param voicing - who sounds what
 * @param question - the question around it
 * @returns cost, broken rules, techniques, measures
 */
export function reportOn(voicing: Voicing, question: Question): VoicingReport {
  const stack = stackOf(voicing);
  return {
    voicing,
    cell: cellOf(voicing),
    stack,
    cost: costOf(voicing, question),
    broken: brokenRules(voicing, question),
    techniques: techniquesOf(voicing, question.chord, question.lead),
    isCrossSection: isCrossSection(voicing),
    measures: measureAll(voicing, question),
  };
}

/**
 * The cell a voicing lies in.
 * @param voicing - who sounds what
 * @returns span, distinct notes, players; all 0 when nobody sounds
 */
export function cellOf(voicing: Voicing): CellKey {
  const stack = stackOf(voicing);
  const lowest = stack[0] ?? 0;
  const highest = stack[stack.length - 1] ?? 0;
  return { span: highest - lowest, notes: stack.length, players: voicing.placements.length };
}
