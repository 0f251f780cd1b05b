import type { Count } from "../base/index.ts";
import type { Divisions } from "../theory/index.ts";

/** A point of a curve. Two points at one time make a step: the later one holds from there. */
export interface CurvePoint {
  readonly at: Divisions;
  readonly value: number;
}

/** Straight lines between points in order of time; level before the first and after the last. */
export type Curve = readonly CurvePoint[];

/** What the user draws over the bars. */
export interface TextureCurves {
  /** Highest minus lowest note, semitones. */
  readonly span: Curve;
  /** Distinct notes an octave. */
  readonly density: Curve;
  /** Players sounding. */
  readonly weight: Curve;
}

/** What is asked for, or sounds, at one moment. */
export interface Texture {
  readonly span: number;
  readonly density: number;
  readonly weight: number;
}

/**
 * Value of a curve at a time. Only sums, products and quotients: the same in every engine.
 * @param curve - at least one point
 * @param at - time
 * @returns the value
 * @throws RangeError when the curve has no point
 * @example curveAt([{ at: 0, value: 10 }, { at: 4, value: 30 }], 1) // 15
 */
export function curveAt(curve: Curve, at: Divisions): Count {
  const after = curve.findIndex((point) => point.at > at);
  const before = after < 0 ? curve.at(-1) : curve[after - 1];
  const next = curve[after];
  if (!before && !next) throw new RangeError("a curve needs at least one point, got none");
  if (!before || !next) return (before ?? next)?.value ?? 0;
  return before.value + ((next.value - before.value) * (at - before.at)) / (next.at - before.at);
}

/**
 * What the three curves ask for at a time.
 * @param curves - span, density, weight
 * @param at - time
 * @returns the texture asked for
 */
export function textureAt(curves: TextureCurves, at: Divisions): Texture {
  return {
    span: curveAt(curves.span, at),
    density: curveAt(curves.density, at),
    weight: curveAt(curves.weight, at),
  };
}

/**
 * Density of a stack.
 * @param notes - distinct notes
 * @param span - highest minus lowest, semitones
 * @returns distinct notes an octave; 0 for a single note
 * @example densityOf(5, 24) // 2
 */
export function densityOf(notes: Count, span: Count): Count {
  return notes < 2 || span === 0 ? 0 : (12 * (notes - 1)) / span;
}

/** How much each unit of distance from the curves costs. Judgement. */
const spanStep = 1;
const notesStep = 3;
const playersStep = 3;

/**
 * How far a texture lies from what is asked, as a cost. Density is compared as the number of notes
 * it means at this span, so that a texture whose span is off is not charged twice.
 * @param asked - the texture asked for
 * @param span - semitones
 * @param notes - distinct notes
 * @param players - sounding players
 * @returns whole number, 0 when the texture is what was asked
 * @source judgement: 1 a semitone of span, 3 a note, 3 a player; half units are rounded
 */
export function textureCost(asked: Texture, span: Count, notes: Count, players: Count): Count {
  const notesAsked = 1 + (asked.density * span) / 12;
  return (
    Math.round(spanStep * Math.abs(span - asked.span)) +
    Math.round(notesStep * Math.abs(notes - notesAsked)) +
    Math.round(playersStep * Math.abs(players - asked.weight))
  );
}
