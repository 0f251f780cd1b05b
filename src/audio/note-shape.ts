import type { Ratio, Seconds } from "../base/index.ts";
import type { Articulation } from "../band/index.ts";
import type { DynamicPosition } from "./dynamic-steps.ts";

/** How many dynamic steps darker than its steady sound a note begins and ends. */
const DARKER_STEPS = 2;
/** Brightness settles later than level: time of settling against the rise of the level. */
const BRIGHTNESS_LAG = 1.4;
/** The bite is 70 dB down, and over, after so many times the rise. */
const BITE_OVER = 4;
/** Points at which the rise is followed to find its 10 and 90 % marks. */
const RISE_POINTS = 280;

/** The rise and fall of one note's level and brightness, apart from its written dynamic. */
export interface NoteShape {
  /** Level factor at a time after onset, 0 to 1. */
  readonly gainAt: (time: Seconds) => Ratio;
  /** Dynamic steps the sound is darker than written, 0 once settled. */
  readonly darkerAt: (time: Seconds) => Ratio;
  /** Noise of the tongue or the bow's bite, 0 to 1, gone when the note has settled. */
  readonly biteAt: (time: Seconds) => Ratio;
  /** From onset to silence. */
  readonly length: Seconds;
}

/**
 * Shape of a blown or bowed note whose heard level takes exactly the stated attack time from 10
 * to 90 % of its steady value, although its brightness grows at the same time.
 * @param articulation - attack and release of the note
 * @param duration - seconds from onset to release
 * @param levelOf - rms amplitude of the steady sound at a place on the row of dynamics
 * @param steady - the dynamic the note settles at first
 * @returns level, brightness and bite over time
 */
export function noteShape(
  articulation: Pick<Articulation, "attackSeconds" | "releaseSeconds">,
  duration: Seconds,
  levelOf: (position: DynamicPosition) => number,
  steady: DynamicPosition,
): NoteShape {
  const rise = articulation.attackSeconds / riseShare(levelOf, steady);
  const release = articulation.releaseSeconds;
  const fallAt = (time: number): number => Math.min(1, Math.max(0, (time - duration) / release));
  return {
    length: (duration + release) as Seconds,
    gainAt: (time) => rising(time / rise) * (1 - rising(fallAt(time))),
    darkerAt: (time) =>
      DARKER_STEPS * (1 - rising(time / (BRIGHTNESS_LAG * rise)) + rising(fallAt(time))),
    biteAt: (time) => biteOf(time / rise) * (1 - rising(fallAt(time))),
  };
}

/** 0 to 1 along half a sine, level at both ends, so that it starts and stops without a corner. */
function rising(share: number): number {
  if (share <= 0) return 0;
  if (share >= 1) return 1;
  const sine = Math.sin(0.5 * Math.PI * share);
  return sine * sine;
}

function biteOf(share: number): number {
  if (share > BITE_OVER) return 0;
  return rising(share / 0.4) * Math.exp(-2.5 * Math.max(0, share - 0.4));
}

/** Share of the rise that lies between 10 and 90 % of the steady level. */
function riseShare(
  levelOf: (position: DynamicPosition) => number,
  steady: DynamicPosition,
): number {
  const settled = levelOf(steady);
  const at = (share: number): number => {
    const darker = DARKER_STEPS * (1 - rising(share / BRIGHTNESS_LAG));
    const position = Math.max(0, steady - darker) as DynamicPosition;
    return (rising(share) * levelOf(position)) / settled;
  };
  let low = 0;
  for (let i = 1; i <= RISE_POINTS; i++) {
    const share = (BRIGHTNESS_LAG * i) / RISE_POINTS;
    const level = at(share);
    if (level <= 0.1) low = share;
    if (level >= 0.9) return share - low;
  }
  return BRIGHTNESS_LAG - low;
}
