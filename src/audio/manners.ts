import type { Seconds } from "../base/index.ts";
import type { Dynamic, SectionId } from "../band/index.ts";
import type { Placement } from "../voicing/index.ts";
import type { Manner } from "./plan-options.ts";
import type { DynamicPoint } from "./sound-plan-types.ts";

/** One player's note in time, before it is an event. */
export interface TimedPlacement {
  readonly placement: Placement;
  readonly onset: Seconds;
  readonly duration: Seconds;
}

/** Longest hit; common practice for a short accented chord, no single source. */
const HIT_SECONDS = 0.25;
/** Time between two notes of a roll, shorter when many notes share little time. */
const ROLL_STEP_SECONDS = 0.16;
const ROLL_SHARE = 0.45;
/** Silence between two sections, as a share of a section's time. */
const GAP_SHARE = 0.15;
/** When a crescendo arrives, as a share of the whole. */
const CRESCENDO_SHARE = 0.85;
const SECTION_ORDER: readonly SectionId[] = Object.freeze([
  "saxes",
  "trombones",
  "trumpets",
  "rhythm",
]);

/**
 * When each player sounds.
 * @param placements - who sounds what
 * @param manner - way of hearing
 * @param seconds - from the start to the common release
 * @returns notes in order of onset; section by section gives a player two
 */
export function timedPlacements(
  placements: readonly Placement[],
  manner: Manner,
  seconds: Seconds,
): readonly TimedPlacement[] {
  if (manner === "rolled-from-bottom") return rolled(placements, seconds, 1);
  if (manner === "rolled-from-top") return rolled(placements, seconds, -1);
  if (manner === "section-by-section") return bySection(placements, seconds);
  const duration = soundingTime(manner, seconds);
  return placements.map((placement) => ({ placement, onset: 0 as Seconds, duration }));
}

/**
 * How long the chord as a whole is held.
 * @param manner - way of hearing
 * @param seconds - time asked for
 * @returns the same, but a hit stays short
 */
export function soundingTime(manner: Manner, seconds: Seconds): Seconds {
  return manner === "hit" ? (Math.min(HIT_SECONDS, seconds) as Seconds) : seconds;
}

/**
 * Dynamics of a note over its length.
 * @param manner - way of hearing
 * @param dynamic - dynamic of everything but a crescendo
 * @param duration - length of the note
 * @returns points in order of time
 */
export function curveOf(
  manner: Manner,
  dynamic: Dynamic,
  duration: Seconds,
): readonly DynamicPoint[] {
  if (manner !== "crescendo") return [{ at: 0 as Seconds, dynamic }];
  return [
    { at: 0 as Seconds, dynamic: "p" },
    { at: (CRESCENDO_SHARE * duration) as Seconds, dynamic: "ff" },
  ];
}

function rolled(
  placements: readonly Placement[],
  seconds: Seconds,
  direction: 1 | -1,
): readonly TimedPlacement[] {
  const pitches = [...new Set(placements.map(({ sounding }) => sounding))].sort(
    (a, b) => direction * (a - b),
  );
  const step = Math.min(
    ROLL_STEP_SECONDS,
    (ROLL_SHARE * seconds) / Math.max(1, pitches.length - 1),
  );
  return pitches.flatMap((pitch, n) =>
    placements
      .filter(({ sounding }) => sounding === pitch)
      .map((placement) => ({
        placement,
        onset: (n * step) as Seconds,
        duration: (seconds - n * step) as Seconds,
      })),
  );
}

/** Each section alone in turn, then all together; one section alone is simply held. */
function bySection(placements: readonly Placement[], seconds: Seconds): readonly TimedPlacement[] {
  const groups = SECTION_ORDER.map((section) =>
    placements.filter(({ player }) => player.section === section),
  ).filter((group) => group.length > 0);
  if (groups.length > 1) groups.push([...placements]);
  const slot = seconds / groups.length;
  return groups.flatMap((group, g) =>
    group.map((placement) => ({
      placement,
      onset: (g * slot) as Seconds,
      duration: (g === groups.length - 1 ? slot : slot * (1 - GAP_SHARE)) as Seconds,
    })),
  );
}
