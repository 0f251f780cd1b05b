import type { Count } from "../base/index.ts";
import type { Metre } from "../theory/index.ts";

/** Shape of a bar that is to be written. */
export interface BarShape {
  readonly metre: Metre;
  /** Parts of a quarter note. */
  readonly division: Count;
  /** Where the bar begins in a full bar: above 0 in a pickup. */
  readonly offset: Count;
}

/** A stretch of a bar that one note or one rest fills; times from the start of the bar. */
export interface Stretch {
  readonly from: Count;
  readonly to: Count;
  readonly isRest: boolean;
}
