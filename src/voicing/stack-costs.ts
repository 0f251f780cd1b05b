import { pitchClass } from "../base/index.ts";
import { clusterFrom, gapCosts } from "./gap-cost-table.ts";
import type { Harmony } from "./harmony.ts";
import { lowIntervalLimits } from "./low-interval-table.ts";
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
import { marginalCost, sharedInSection, sharedNote } from "./sharing-cost-table.ts";

/**
 * Semitones by which an interval lies under its low-interval limit.
 * @param lower - MIDI note of the lower note
 * @param interval - semitones
 * @returns 0 or more; 0 for unison, octave and anything wider than a tenth
 */
export function underLimit(lower: number, interval: number): number {
  const limit = lowIntervalLimits.limits[interval] ?? 0;
  return Math.max(0, limit - lower);
}

/** S1 for neighbours. */
export function gapCost(lower: number, gap: number, clusterSetting: boolean): number {
  if (clusterSetting && gap === 1 && lower >= clusterFrom) return 0;
  const row = gapCosts.find((each) => lower >= each.low && lower <= each.high);
  return row?.costs[Math.min(gap, row.costs.length - 1)] ?? 0;
}

/** S3 for the pair at the top. */
export function toneUnderLeadCost(lead: number, shortNote: boolean): number {
  if (shortNote) return 0;
  const steps = Math.floor((lead - toneUnderLead.from) / toneUnderLead.semitonesPerStep);
  return toneUnderLead.base + Math.max(0, steps);
}

/** S6 for a tension; 0 for every other tone. */
export function lowTensionCost(midi: number, role: RoleCode): number {
  if ((role !== "T" && role !== "A") || midi >= lowTension.below) return 0;
  return Math.ceil((lowTension.below - midi) / lowTension.semitonesPerStep);
}

/** S5 for an inner note. */
export function tenorZoneCost(midi: number, role: RoleCode): number {
  return midi >= tenorZone.low && midi <= tenorZone.high ? tenorZone.byRole[role] : 0;
}

/** S7 for an inner note. */
export function rootInsideCost(midi: number, harmony: Harmony): number {
  const isRoot = harmony.role(midi) === "R";
  return isRoot && midi >= rootInside.from && harmony.role(harmony.lead) !== "R"
    ? rootInside.cost
    : 0;
}

/** Highest note of the assumed bass's pitch class below a note. */
export function assumedBassUnder(midi: number, harmony: Harmony): number {
  const down = pitchClass(harmony.aboveRoot(midi) - harmony.bass);
  return midi - (down === 0 ? 12 : down);
}

/** S8: what it costs to have this note at the bottom. */
export function bottomCostOf(midi: number, harmony: Harmony): number {
  const tone = harmony.aboveRoot(midi);
  if (tone === harmony.bass) return bottomNote.bass;
  const role = harmony.role(midi);
  const assumed = assumedBassUnder(midi, harmony);
  const under = bottomNote.perSemitoneUnderLimit * underLimit(assumed, midi - assumed);
  return under + bottomBase(midi, role);
}

function bottomBase(midi: number, role: RoleCode): number {
  if (role === "5") return bottomNote.fifth;
  if (role === "3" || role === "7") return bottomNote.guide;
  if (role === "R") return bottomNote.rootUnderSlash;
  return midi >= bottomNote.highFrom ? bottomNote.highTension : bottomNote.tension;
}

/** S4: cost of each further pitch of this tone's class. */
export function copyCostOf(midi: number, harmony: Harmony): number {
  const role = harmony.role(midi);
  if (pitchClass(midi - harmony.lead) === 0)
    return role === "A" || role === "X" ? octaveCopy.leadClassForeign : octaveCopy.leadClass;
  const isSlashThird =
    harmony.chord.hasSlashBass && role === "3" && harmony.aboveRoot(midi) === harmony.bass;
  return isSlashThird ? octaveCopy.slashThird : octaveCopy.byRole[role];
}

/** N1: cost of one more player on a note. */
export function sharedNoteCostOf(midi: number, already: number, harmony: Harmony): number {
  const role = harmony.role(midi);
  if (already === 0) return 0;
  if (midi === harmony.lead)
    return marginalCost(sharedNote.lead, already) + (role === "X" ? sharedNote.foreignLead : 0);
  if (midi < sharedNote.lowBelow) return marginalCost(sharedNote.low, already);
  const more = role === "R" || role === "A" ? sharedNote.rootOrAltered : 0;
  return marginalCost(sharedNote.other, already) + more;
}

/** N2: the same within one section. */
export function sharedInSectionCostOf(midi: number, already: number, lead: number): number {
  return marginalCost(midi === lead ? sharedInSection.lead : sharedInSection.other, already);
}

/** Costs of a note that do not depend on where in the stack it is: S6, S9. */
export function anywhereCostOf(midi: number, harmony: Harmony): number {
  if (midi === harmony.lead) return 0;
  const ninth = harmony.lead - midi === doubleMinorNinth.semitones ? doubleMinorNinth.cost : 0;
  return lowTensionCost(midi, harmony.role(midi)) + ninth;
}
