import type { Staff } from "../notation/index.ts";
import { STAFF_SPACE } from "./music-staff.ts";
import { signReach } from "./sign-columns.ts";

const HALF_SPACE = STAFF_SPACE / 2;
/** Clefs reach beyond the staff: the treble clef above and below, the bass clef not. */
const CLEF_REACH = { treble: { above: 14, below: 14 }, bass: { above: 0, below: 0 } } as const;

/** How far a staff's notes and clef reach beyond its top and bottom line, drawing units. */
export interface StaffExtent {
  readonly above: number;
  readonly below: number;
}

/**
 * Room a staff needs above its top line and below its bottom line.
 * @param staff - the staff
 * @returns drawing units, 0 or more
 */
export function staffExtent(staff: Staff): StaffExtent {
  const reach = CLEF_REACH[staff.clef];
  const tops = staff.notes.map(({ step, sign }) => step - 8 + Math.max(1, signReach(sign).up));
  const bottoms = staff.notes.map(({ step, sign }) => Math.max(1, signReach(sign).down) - step);
  return {
    above: Math.max(reach.above, ...tops.map((top) => top * HALF_SPACE)),
    below: Math.max(reach.below, ...bottoms.map((bottom) => bottom * HALF_SPACE)),
  };
}
