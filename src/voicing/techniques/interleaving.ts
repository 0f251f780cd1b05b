import type { Count, Ratio, SoundingMidi } from "../../base/index.ts";
import { stackOf } from "../stack.ts";
import type { Voicing } from "../voicing-types.ts";

/** How far the sections of a voicing interlock, as the two whole numbers it is made of. */
export interface Interleaving {
  /** Notes of the stack that lie inside a section and that this section does not sound; summed. */
  readonly skipped: Count;
  /** Notes that each section of two notes or more leaves to others; summed. */
  readonly left: Count;
  /** `skipped` by `left`, 0 to 1; null with fewer than two sections or nothing left to others. */
  readonly value: Ratio | null;
}

/** Distinct pitches of each sounding section. */
function pitchesBySection(voicing: Voicing): readonly ReadonlySet<SoundingMidi>[] {
  const bySection = new Map<string, Set<SoundingMidi>>();
  for (const { player, sounding } of voicing.placements)
    bySection.set(
      player.section,
      (bySection.get(player.section) ?? new Set<SoundingMidi>()).add(sounding),
    );
  return [...bySection.values()];
}

/**
 * How far the sections interlock in pitch. 0 exactly when every section is an unbroken run of the
 * stack; doubling and overlap do not count.
 * @param voicing - who sounds what
 * @returns the two whole numbers and their quotient
 * @source definition of this project
 */
export function interleavingOf(voicing: Voicing): Interleaving {
  const stack = stackOf(voicing);
  const sections = pitchesBySection(voicing);
  let skipped = 0;
  let left = 0;
  for (const own of sections.filter((pitches) => pitches.size >= 2)) {
    const low = Math.min(...own);
    const high = Math.max(...own);
    skipped += stack.filter((pitch) => pitch > low && pitch < high && !own.has(pitch)).length;
    left += stack.length - own.size;
  }
  const value = sections.length < 2 || left === 0 ? null : skipped / left;
  return { skipped, left, value };
}

/**
 * Tells whether a voicing goes across the sections.
 * @param voicing - who sounds what
 * @returns true when two sections or more sound and at least one of them is broken by a note of
 *   another
 */
export function isCrossSection(voicing: Voicing): boolean {
  return (interleavingOf(voicing).value ?? 0) > 0;
}
