/** A written note or rest on the staff. Times in divisions, places in CSS pixels. */
export interface PlannedItem {
  /** The melody's note; undefined for a rest. */
  readonly noteId: string | undefined;
  readonly from: number;
  readonly to: number;
  readonly x: number;
  /** Share of a whole note, dots left aside: 4 is a quarter. */
  readonly value: number;
  readonly dots: 0 | 1;
  /** Letter steps above C0; of rests the middle line. */
  readonly steps: number;
  readonly accidental: string | undefined;
  /** Tied to the item after it. */
  readonly isTied: boolean;
  readonly isWholeBar: boolean;
}

/** Notes under one beam, by their index among the items of the line. */
export interface PlannedBeam {
  readonly items: readonly number[];
  readonly isUp: boolean;
}

/** A tuplet's figure. */
export interface PlannedTuplet {
  readonly items: readonly number[];
  readonly figure: number;
}

/** A bar on a line. */
export interface PlannedBar {
  readonly number: number;
  readonly from: number;
  readonly to: number;
  readonly x: number;
  readonly endX: number;
  readonly beginsRepeat: boolean;
  readonly endsRepeat: number | null;
  readonly ending: string | null;
}

/** One line of the melody. */
export interface PlannedLine {
  readonly from: number;
  readonly to: number;
  readonly bars: readonly PlannedBar[];
  readonly items: readonly PlannedItem[];
  readonly beams: readonly PlannedBeam[];
  readonly tuplets: readonly PlannedTuplet[];
  /** Where the music begins, behind clef and key. */
  readonly startX: number;
  readonly endX: number;
  readonly hasMetre: boolean;
}
