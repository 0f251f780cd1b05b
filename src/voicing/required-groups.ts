import { requiredGroups, type AboveRoot, type Chord } from "../theory/index.ts";

/** The groups of tones that must sound, after the lead has been taken into account. */
export interface GroupsUnderLead {
  /** Semitones above the root; in order of need. Groups that the lead fills are left out. */
  readonly groups: readonly (readonly AboveRoot[])[];
  /** True when the lead is itself in one of the first two groups. */
  readonly leadIsGuide: boolean;
  /** Tones that the answer needs beside the ticked ones, and tones it gives up. */
  readonly added: readonly AboveRoot[];
  readonly removed: readonly AboveRoot[];
  /** What was done about a clash between the lead and the chord, in words; empty when none. */
  readonly remarks: readonly string[];
}

const third = 4;
const fourth = 5;
const sixth = 9;
const majorSeventh = 11;
const ninth = 2;

/** Families whose seventh gives way to sixth and ninth when the melody is the fourth. */
const majorFamilies = new Set(["major", "major-seventh", "sixth"]);

interface Replacement {
  readonly group: readonly number[] | null;
  readonly remark: string;
}

function replacementFor(member: number, lead: number): Replacement {
  if (member === third && lead === fourth)
    return {
      group: [fourth],
      remark:
        "The melody is the fourth, which clashes with the third: voiced as a suspended chord; consider another chord here.",
    };
  if (member === majorSeventh && lead === 0)
    return {
      group: [sixth],
      remark:
        "The melody is the root, a semitone above the major seventh: the sixth sounds in its place.",
    };
  return {
    group: null,
    remark: "A tone a semitone under the melody is left out; consider another chord here.",
  };
}

/**
 * Answers a clash between the melody and a tone the chord needs as the trade answers it.
 * @param chord - the chord as read
 * @param lead - the melody as a tone above the root
 * @returns the groups that remain to be filled, with what changed and why
 * @source lead conflicts: G. Lindsay, Jazz Arranging Techniques (sixth for seventh under the root);
 *   suspended reading: common practice, no single source
 */
export function groupsUnderLead(chord: Chord, lead: AboveRoot): GroupsUnderLead {
  const groups: (readonly number[])[] = [];
  const remarks: string[] = [];
  const added: number[] = [];
  const removed: number[] = [];
  const ordered = requiredGroups(chord);
  for (const group of ordered) {
    if (!group.every((member) => (member + 1) % 12 === lead)) {
      groups.push(group);
      continue;
    }
    const answer = replacementFor(group[0] ?? 0, lead);
    remarks.push(answer.remark);
    if (answer.group) groups.push(answer.group);
    added.push(...(answer.group ?? []));
    removed.push(...group);
  }
  const isSuspendedReading = added.includes(fourth) && removed.includes(third);
  if (isSuspendedReading && majorFamilies.has(chord.family)) {
    const seventh = groups.findIndex((group) => group.includes(majorSeventh));
    if (seventh >= 0) {
      groups[seventh] = [sixth, ninth];
      added.push(sixth, ninth);
      removed.push(majorSeventh);
    }
  }
  const leadIsGuide = groups.slice(0, 2).some((group) => group.includes(lead));
  return {
    groups: groups.filter((group) => !group.includes(lead)),
    leadIsGuide,
    added,
    removed,
    remarks,
  };
}
