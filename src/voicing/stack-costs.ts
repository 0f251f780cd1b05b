import {
  pitchClass,
  quantity,
  type Count,
  type Semitones,
  type SoundingMidi,
} from "../base/index.ts";
import { clusterFrom, gapCosts } from "./gap-cost-table.ts";
import type { Harmony } from "./harmony.ts";
import { lowIntervalLimits } from "./low-interval-table.ts";
import { marginalCost, sharedInSection, sharedNote } from "./sharing-cost-table.ts";
import {
  bottomNote,
  doubleMinorNinth,
  lowTension,
  octaveCopy,
  rootInside,
  tenorZone,
  toneUnderLead,
  type RoleCode,
} from "./stack-cost-table.ts";
import { gapBetween } from "./stack.ts";

/**
 * How far an interval lies under its low-interval limit.
 * @param lower - the lower note
 * @param interval - how far the upper note lies above it
 * @returns semitones, 0 or more; 0 for unison, octave and anything wider than a tenth
 * @example underLimit(50, 3) // 0
 * @example underLimit(45, 3) // 3
 */
export function underLimit(lower: SoundingMidi, interval: Semitones): Semitones {
  const limit = lowIntervalLimits.limits[interval] ?? 0;
  return quantity(Math.max(0, limit - lower));
}

/**
 * S1: cost of two neighbouring notes of the stack.
 * @param lower - the lower of the two
 * @param gap - how far they lie apart
 * @param clusterSetting - true: semitones cost nothing from G3 up
 * @returns 0 or more
 * @example gapCost(60, 4, false) // 0
 * @example gapCost(48, 1, false) // 7
 */
export function gapCost(lower: SoundingMidi, gap: Semitones, clusterSetting: boolean): Count {
  if (clusterSetting && gap === 1 && lower >= clusterFrom) return 0;
  const row = gapCosts.find((each) => lower >= each.low && lower <= each.high);
  return row?.costs[Math.min(gap, row.costs.length - 1)] ?? 0;
}

/**
 * S3: cost of a whole tone directly under the lead.
 * @param lead - the melody note
 * @param shortNote - true when it passes too quickly to matter
 * @returns 0 or more, rising with the lead
 * @example toneUnderLeadCost(78, false) // 4
 */
export function toneUnderLeadCost(lead: SoundingMidi, shortNote: boolean): Count {
  if (shortNote) return 0;
  const steps = Math.floor((lead - toneUnderLead.from) / toneUnderLead.semitonesPerStep);
  return toneUnderLead.base + Math.max(0, steps);
}

/**
 * S6: cost of a tension that lies low.
 * @param midi - the note
 * @param role - what it is in the chord
 * @returns 0 or more; 0 for every tone that is no tension
 * @example lowTensionCost(55, "T") // 2
 */
export function lowTensionCost(midi: SoundingMidi, role: RoleCode): Count {
  if ((role !== "T" && role !== "A") || midi >= lowTension.below) return 0;
  return Math.ceil((lowTension.below - midi) / lowTension.semitonesPerStep);
}

/**
 * S5: cost of an inner note in the tenor zone, C3 to D♭4.
 * @param midi - the note
 * @param role - what it is in the chord
 * @returns 0 or more; 0 outside the zone and for thirds and sevenths
 * @example tenorZoneCost(50, "R") // 2
 */
export function tenorZoneCost(midi: SoundingMidi, role: RoleCode): Count {
  return midi >= tenorZone.low && midi <= tenorZone.high ? tenorZone.byRole[role] : 0;
}

/**
 * S7: cost of the root inside the chord, high up, when the lead is another tone.
 * @param midi - an inner note
 * @param harmony - the tones of the question
 * @returns 0 or more
 */
export function rootInsideCost(midi: SoundingMidi, harmony: Harmony): Count {
  const isRoot = harmony.role(midi) === "R";
  return isRoot && midi >= rootInside.from && harmony.role(harmony.lead) !== "R"
    ? rootInside.cost
    : 0;
}

/**
 * The note on which a bass player is taken to sound under a note.
 * @param midi - the note
 * @param harmony - the tones of the question
 * @returns highest note of the bass tone below it, 1 to 12 semitones
 */
export function assumedBassUnder(midi: SoundingMidi, harmony: Harmony): SoundingMidi {
  const down = pitchClass(harmony.aboveRoot(midi) - harmony.bass);
  return quantity(midi - (down === 0 ? 12 : down));
}

/**
 * S8: cost of a note at the bottom.
 * @param midi - the lowest note
 * @param harmony - the tones of the question
 * @returns 0 or more; 0 for the bass tone itself
 */
export function bottomCostOf(midi: SoundingMidi, harmony: Harmony): Count {
  if (harmony.aboveRoot(midi) === harmony.bass) return bottomNote.bass;
  const assumed = assumedBassUnder(midi, harmony);
  const under = underLimit(assumed, gapBetween(assumed, midi));
  return bottomNote.perSemitoneUnderLimit * under + bottomBase(midi, harmony.role(midi));
}

function bottomBase(midi: SoundingMidi, role: RoleCode): Count {
  if (role === "5") return bottomNote.fifth;
  if (role === "3" || role === "7") return bottomNote.guide;
  if (role === "R") return bottomNote.rootUnderSlash;
  return midi >= bottomNote.highFrom ? bottomNote.highTension : bottomNote.tension;
}

/**
 * S4: cost of each further pitch of a tone that sounds already.
 * @param midi - a pitch of that tone
 * @param harmony - the tones of the question
 * @returns 0 or more; 0 for copies of the lead, unless it is altered or foreign
 */
export function copyCostOf(midi: SoundingMidi, harmony: Harmony): Count {
  const role = harmony.role(midi);
  if (pitchClass(midi - harmony.lead) === 0)
    return role === "A" || role === "X" ? octaveCopy.leadClassForeign : octaveCopy.leadClass;
  const isSlashThird =
    harmony.chord.hasSlashBass && role === "3" && harmony.aboveRoot(midi) === harmony.bass;
  return isSlashThird ? octaveCopy.slashThird : octaveCopy.byRole[role];
}

/**
 * N1: cost of one more player on a note.
 * @param midi - the note
 * @param already - players on it
 * @param harmony - the tones of the question
 * @returns 0 for the first; −1 for the second on the lead, else 0 or more
 */
export function sharedNoteCostOf(midi: SoundingMidi, already: Count, harmony: Harmony): Count {
  const role = harmony.role(midi);
  if (already === 0) return 0;
  if (midi === harmony.lead)
    return marginalCost(sharedNote.lead, already) + (role === "X" ? sharedNote.foreignLead : 0);
  if (midi < sharedNote.lowBelow) return marginalCost(sharedNote.low, already);
  const more = role === "R" || role === "A" ? sharedNote.rootOrAltered : 0;
  return marginalCost(sharedNote.other, already) + more;
}

/**
 * N2: cost of one more player of a section on a note.
 * @param midi - the note
 * @param already - players of the section on it
 * @param lead - the melody note
 * @returns 0 for the first, then 1 or more
 */
export function sharedInSectionCostOf(
  midi: SoundingMidi,
  already: Count,
  lead: SoundingMidi,
): Count {
  return marginalCost(midi === lead ? sharedInSection.lead : sharedInSection.other, already);
}

/**
 * S9: cost of a note two octaves and a semitone under the lead.
 * @param midi - the note
 * @param lead - the melody note
 * @returns 0 or more
 */
export function doubleNinthCost(midi: SoundingMidi, lead: SoundingMidi): Count {
  return lead - midi === doubleMinorNinth.semitones ? doubleMinorNinth.cost : 0;
}

/**
 * S6 and S9: costs of a note that do not depend on where in the stack it is.
 * @param midi - the note
 * @param harmony - the tones of the question
 * @returns 0 or more; 0 for the lead
 */
export function anywhereCostOf(midi: SoundingMidi, harmony: Harmony): Count {
  if (midi === harmony.lead) return 0;
  return lowTensionCost(midi, harmony.role(midi)) + doubleNinthCost(midi, harmony.lead);
}
