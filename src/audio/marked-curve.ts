import { quantity, type Seconds } from "../base/index.ts";
import { dynamics, type Dynamic } from "../band/index.ts";
import type { ArticulationMark } from "../phrase/index.ts";
import type { DynamicPoint } from "./sound-plan-types.ts";

/** An accent is over after so long, or after this share of a short note. Source: judgement. */
const ACCENT_SECONDS = 0.18;
const ACCENT_SHARE = 0.6;
/** A fall takes the last of the note: this long, or this share of a short one. Source: judgement. */
const FALL_SECONDS = 0.35;
const FALL_SHARE = 0.6;
const FALL_STEPS = 3;
/** A scoop begins this much softer and has arrived after so long. Source: judgement. */
const SCOOP_STEPS = 2;
const SCOOP_SECONDS = 0.14;

/**
 * Loudness of a note over its length as its mark wants it: an accent bites and settles, a fall dies
 * away, a scoop swells into the note. Length is the performance's business.
 * @param dynamic - dynamic at which the mark is played, an accent's own step included
 * @param marks - marks of the note
 * @param duration - sounding length
 * @returns points in order of time, at least one
 * @source judgement
 */
export function markedCurve(
  dynamic: Dynamic,
  marks: readonly ArticulationMark[],
  duration: Seconds,
): readonly DynamicPoint[] {
  const from = { at: 0 as Seconds, dynamic };
  const at = (seconds: number, step: number): DynamicPoint => ({
    at: quantity<Seconds>(Math.round(1000 * seconds) / 1000),
    dynamic: stepped(dynamic, step),
  });
  if (marks.includes("fall")) {
    const begin = duration - Math.min(FALL_SECONDS, FALL_SHARE * duration);
    return [from, at(begin, 0), at(duration, -FALL_STEPS)];
  }
  if (marks.includes("scoop")) {
    const arrived = Math.min(SCOOP_SECONDS, duration / 2);
    return [{ at: 0 as Seconds, dynamic: stepped(dynamic, -SCOOP_STEPS) }, at(arrived, 0)];
  }
  if (marks.includes("accent") || marks.includes("marcato"))
    return [from, at(Math.min(ACCENT_SECONDS, ACCENT_SHARE * duration), -1)];
  return [from];
}

function stepped(dynamic: Dynamic, steps: number): Dynamic {
  const place = dynamics.indexOf(dynamic) + steps;
  return dynamics[Math.max(0, Math.min(place, dynamics.length - 1))] ?? dynamic;
}
