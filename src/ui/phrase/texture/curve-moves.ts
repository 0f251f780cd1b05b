import { quantity } from "../../../base/index.ts";
import { curveAt, type Curve, type TextureCurves } from "../../../phrase/index.ts";
import type { Divisions } from "../../../theory/index.ts";
import { session } from "../../store.ts";
import { askPhrase } from "../phrase-actions.ts";

/** Takes a curve as drawn. */
export function askCurve(id: keyof TextureCurves, curve: Curve, step: string): void {
  const { phrase } = session();
  if (phrase === null) return;
  askPhrase({ curves: { ...phrase.question.curves, [id]: curve } }, step);
}

/**
 * A curve with one point elsewhere; it never passes its neighbours.
 * @param curve - the curve
 * @param index - which point
 * @param at - its new time
 * @param value - its new value
 * @param length - end of the phrase
 * @returns the curve
 */
export function withPoint(
  curve: Curve,
  index: number,
  at: number,
  value: number,
  length: number,
): Curve {
  const low = curve[index - 1]?.at ?? 0;
  const high = curve[index + 1]?.at ?? length;
  const time = quantity<Divisions>(Math.round(Math.max(low, Math.min(high, at))));
  return curve.map((point, each) =>
    each === index ? { at: time, value: Math.round(value * 100) / 100 } : point,
  );
}

/**
 * A curve with a point more, where the curve is at that time.
 * @param curve - the curve
 * @param at - time of the point
 * @returns the curve, and which point is new
 */
export function withNewPoint(
  curve: Curve,
  at: number,
): { readonly curve: Curve; readonly index: number } {
  const time = quantity<Divisions>(Math.round(at));
  const after = curve.findIndex((point) => point.at > time);
  const index = after < 0 ? curve.length : after;
  const point = { at: time, value: curveAt(curve, time) };
  return { curve: [...curve.slice(0, index), point, ...curve.slice(index)], index };
}

/** A curve without a point; the last one stays. */
export function withoutPoint(curve: Curve, index: number): Curve {
  return curve.length < 2 ? curve : curve.filter((_, each) => each !== index);
}
