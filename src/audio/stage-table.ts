import type { Ratio } from "../base/index.ts";
import type { SectionId } from "../band/index.ts";

/** Places of one section, first chair first, as the director in front sees them. */
export interface StageRow {
  readonly section: SectionId;
  /** −1 far left to +1 far right, by chair. */
  readonly pans: readonly Ratio[];
  readonly distanceM: Ratio;
}

const row = (section: SectionId, distanceM: Ratio, pans: readonly Ratio[]): StageRow =>
  Object.freeze({ section, distanceM, pans: Object.freeze(pans) });

/**
 * The usual rows: saxes in front (tenor 1, alto 2, alto 1, tenor 2, baritone far from the rhythm
 * section), trombones 2-1-3-bass behind them, trumpets 2-1-3-4 standing behind,
 * leads in one line. Order after published seating guides for directors (E. MacDonald, big band
 * seating page; National Association for Music Education guidance); pans and metres are a design
 * choice from that order. Chairs beyond the table take the free place next to the last.
 */
export const STAGE_ROWS: readonly StageRow[] = Object.freeze([
  row("trumpets", 4.2, [-0.15, -0.45, 0.15, 0.45]),
  row("trombones", 3, [-0.15, -0.45, 0.15, 0.45]),
  row("saxes", 2, [0, -0.3, -0.6, 0.3, 0.6]),
  row("rhythm", 3, [-0.75, -0.6, -0.7]),
]);

/**
 * How far a chair can be moved: from side to side, and from right before the listener to the far
 * wall of the room of room-table.ts, 10 m long with the listener 1 m from the near wall. Judgement.
 */
export const SEAT_LIMITS: {
  readonly pan: readonly [least: Ratio, most: Ratio];
  readonly distanceM: readonly [least: Ratio, most: Ratio];
} = Object.freeze({
  pan: Object.freeze([-1, 1] as const),
  distanceM: Object.freeze([1, 9] as const),
});

/** Where the bass, the piano and the drums of the accompaniment stand: the director's left. */
export const RHYTHM_PLACES: Readonly<Record<string, { pan: Ratio; distanceM: Ratio }>> =
  Object.freeze({
    piano: Object.freeze({ pan: -0.75, distanceM: 2.6 }),
    bass: Object.freeze({ pan: -0.62, distanceM: 3.2 }),
    drums: Object.freeze({ pan: -0.3, distanceM: 3.4 }),
  });
