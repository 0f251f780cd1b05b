import { pitchClass, type Count, type Semitones, type SoundingMidi } from "../base/index.ts";
import { dynamicClass } from "../band/index.ts";
import { roleOf, type AboveRoot, type Chord } from "../theory/index.ts";
import { lowIntervalTolerance } from "./low-interval-table.ts";
import { groupsUnderLead } from "./required-groups.ts";
import type { RoleCode } from "./stack-cost-table.ts";
import type { Question } from "./voicing-types.ts";

/** Everything about tones that costs and rules ask for, worked out once. */
export interface Harmony {
  readonly chord: Chord;
  readonly lead: SoundingMidi;
  /** Tones that may sound. */
  readonly ticked: ReadonlySet<AboveRoot>;
  /** Groups of tones of each of which one must sound, in order of need, the lead's left out. */
  readonly groups: readonly (readonly AboveRoot[])[];
  /** Whether the lead is itself in one of the first two groups. */
  readonly leadIsGuide: boolean;
  /** What was decided about a clash or a tone that is off, in words. */
  readonly remarks: readonly string[];
  /** The tone that a bass player is taken to sound. */
  readonly bass: AboveRoot;
  readonly role: (midi: SoundingMidi) => RoleCode;
  readonly aboveRoot: (midi: SoundingMidi) => AboveRoot;
  /** How far an interval may lie under its low-interval limit at this dynamic. */
  readonly tolerance: Semitones;
}

/**
 * Works out which tones may sound under this lead and what each of them is.
 * @param question - the question
 * @returns ticked tones, groups, roles and remarks
 */
export function harmonyOf(question: Question): Harmony {
  const { chord } = question;
  const aboveRoot = (midi: SoundingMidi): AboveRoot => pitchClass(midi - chord.rootPitchClass);
  const bass = pitchClass(chord.bassPitchClass - chord.rootPitchClass);
  const leadTone = aboveRoot(question.lead);
  const conflict = groupsUnderLead(chord, leadTone);
  const ticked = new Set(question.ticked);
  for (const tone of conflict.removed) if (!question.required.includes(tone)) ticked.delete(tone);
  for (const tone of conflict.added) ticked.add(tone);
  if (chord.hasSlashBass) ticked.add(bass);
  const remarks = [...conflict.remarks];
  const groups = conflict.groups.filter((group) => group.some((tone) => ticked.has(tone)));
  if (groups.length < conflict.groups.length)
    remarks.push("A tone that usually defines this chord is off, so it is not asked for.");
  const replacesThird = conflict.added.includes(5) && conflict.removed.includes(4);
  const replacesSeventh = conflict.added.includes(9) && conflict.removed.includes(11);
  const role = (midi: SoundingMidi): RoleCode => {
    const tone = aboveRoot(midi);
    if (replacesThird && tone === 5) return "3";
    if (replacesSeventh && tone === 9) return "7";
    const known = roleOf(tone, chord);
    if (known !== "X") return known;
    return chord.hasSlashBass && tone === bass ? "R" : ticked.has(tone) ? "T" : "X";
  };
  const tolerance = question.strictLowIntervals
    ? lowIntervalTolerance.strict
    : lowIntervalTolerance[dynamicClass(question.dynamic)];
  return {
    chord,
    lead: question.lead,
    ticked,
    groups,
    leadIsGuide: conflict.leadIsGuide,
    remarks,
    bass,
    role,
    aboveRoot,
    tolerance,
  };
}

/**
 * The sets of tones of which one must sound, for a number of notes (H4 and the user's own).
 * @param question - the question
 * @param harmony - its tones
 * @param notes - distinct notes, 2 or more
 * @returns sets of semitones above the root, the lead's own left out
 */
export function groupsFor(
  question: Question,
  harmony: Harmony,
  notes: Count,
): readonly (readonly AboveRoot[])[] {
  const leadTone = harmony.aboveRoot(question.lead);
  const wished = question.required.filter((tone) => tone !== leadTone).map((tone) => [tone]);
  if (!question.rules.H4) return wished;
  if (!question.bassSounds && harmony.bass !== leadTone) wished.push([harmony.bass]);
  if (notes > 2) return [...harmony.groups.slice(0, notes - 1), ...wished];
  if (harmony.leadIsGuide || harmony.groups.length === 0) return wished;
  return [harmony.groups.slice(0, 2).flat(), ...wished];
}
