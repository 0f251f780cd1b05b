import { quantity, type Count, type Seconds } from "../base/index.ts";
import type { Clock } from "../phrase/index.ts";
import type { Divisions } from "../theory/index.ts";

/** A time of the music and when it sounds, counted from the start of a pass. */
export interface TimelinePoint {
  readonly seconds: Seconds;
  readonly at: Divisions;
}

/** Where in the music a plan stands at a time. */
export interface PhraseTimeline {
  /** Length of the count-in: the music begins here. */
  readonly leadSeconds: Seconds;
  /** Length of one pass. */
  readonly passSeconds: Seconds;
  readonly passes: Count;
  /** In order, from the first time played to the last; time runs evenly between two. */
  readonly points: readonly TimelinePoint[];
}

/**
 * The line of time through a stretch of music.
 * @param clock - musical time to seconds
 * @param stretch - first and last time, and the step at which the swing bends it, divisions
 * @returns points in order of time, those of both ends among them
 */
export function timelinePoints(
  clock: Clock,
  stretch: { readonly from: Divisions; readonly to: Divisions; readonly step: Count },
): readonly TimelinePoint[] {
  const { from, to, step } = stretch;
  const start = clock.rhythm(from);
  const times: number[] = [from];
  for (let at = (Math.floor(from / step) + 1) * step; at < to; at += step) times.push(at);
  times.push(to);
  return times.map((time) => {
    const at = quantity<Divisions>(time);
    return { at, seconds: quantity<Seconds>(clock.rhythm(at) - start) };
  });
}

/** Where the music stands. */
export interface PhrasePosition {
  /** Null while the count-in goes on. */
  readonly at: Divisions | null;
  /** From 0. */
  readonly pass: Count;
}

/**
 * Where in the music a plan stands.
 * @param timeline - from planPhrase
 * @param seconds - from the start of the plan
 * @returns the place; after the end, the end
 */
export function positionIn(timeline: PhraseTimeline, seconds: Seconds): PhrasePosition {
  const { leadSeconds, passSeconds, passes, points } = timeline;
  const since = seconds - leadSeconds;
  if (since < 0) return { at: null, pass: 0 };
  const pass = Math.min(passes - 1, Math.floor(since / passSeconds));
  const within = since - pass * passSeconds;
  const next = points.findIndex((point) => point.seconds > within);
  const before = next < 0 ? points.at(-1) : points[Math.max(0, next - 1)];
  const after = next < 0 ? undefined : points[next];
  if (!before) return { at: null, pass };
  if (!after || after === before) return { at: before.at, pass };
  const share = (within - before.seconds) / (after.seconds - before.seconds);
  return { at: quantity<Divisions>(before.at + share * (after.at - before.at)), pass };
}
