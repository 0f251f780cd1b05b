import type { PhraseLayout, PhraseStaff } from "../notation/index.ts";

/** Bars of one line of the score, by their index; the last one not included. */
export interface SystemBars {
  readonly from: number;
  readonly to: number;
}

/** Widths in drawing units: 10 is the distance of two staff lines. */
const VALUE_WIDTH = 27;
const BAR_PADDING = 46;
const LEAST_BAR = 110;
/** Clef, key signature; names are kept apart. */
const HEAD_WIDTH = 90;
const STAFF_HEIGHT = 40;
const LEAST_GAP = 34;

/**
 * The least width of a bar, by its busiest staff.
 * @param layout - the phrase
 * @param index - which bar
 * @returns drawing units
 */
export function barWidth({ staves, bars }: PhraseLayout, index: number): number {
  const counts = staves.map(({ bars: own }) => own[index]?.values.length ?? 0);
  const signs = staves.map(
    ({ bars: own }) =>
      own[index]?.values.filter(({ heads }) => heads.some(({ sign }) => sign !== "none")).length ??
      0,
  );
  const width = Math.max(0, ...counts) * VALUE_WIDTH + Math.max(0, ...signs) * 6 + BAR_PADDING;
  return bars[index]?.number === 0 ? width : Math.max(LEAST_BAR, width);
}

/**
 * Breaks a phrase into lines, as many bars in each as have room.
 * @param layout - the phrase
 * @param width - room for the staves, drawing units
 * @returns lines in order; every bar is in exactly one
 */
export function systemsOf(layout: PhraseLayout, width: number): readonly SystemBars[] {
  const systems: { from: number; to: number; used: number }[] = [];
  layout.bars.forEach((_, index) => {
    const own = barWidth(layout, index);
    const last = systems.at(-1);
    if (last && last.used + own <= width) {
      last.to = index + 1;
      last.used += own;
    } else systems.push({ from: index, to: index + 1, used: HEAD_WIDTH + own });
  });
  return systems.map(({ from, to }) => ({ from, to }));
}

const LETTERS = "CDEFGAB";
const BOTTOM = Object.freeze({ treble: 30, bass: 18 });

/** How far notes reach above and below a staff, drawing units. */
function reachOf({ clef, bars }: PhraseStaff, { from, to }: SystemBars) {
  const steps = bars
    .slice(from, to)
    .flatMap(({ values }) => values)
    .flatMap(({ heads }) => heads)
    .map(({ spelled }) => 7 * spelled.octave + LETTERS.indexOf(spelled.letter) - BOTTOM[clef]);
  return {
    above: 5 * Math.max(0, ...steps.map((step) => step - 8)),
    below: 5 * Math.max(0, ...steps.map((step) => -step)),
  };
}

/**
 * Where each staff of a line stands, so that ledger lines and marks have room.
 * @param layout - the phrase
 * @param system - the line
 * @param top - room above the first staff
 * @returns top line of every staff and the whole height, drawing units
 */
export function staffTops(
  layout: PhraseLayout,
  system: SystemBars,
  top: number,
): { readonly tops: readonly number[]; readonly height: number } {
  let y = top;
  const tops = layout.staves.map((staff, index) => {
    const { above, below } = reachOf(staff, system);
    const isNewGroup = index > 0 && layout.staves[index - 1]?.section !== staff.section;
    const own = y + above + (isNewGroup ? 22 : 0);
    y = own + STAFF_HEIGHT + below + LEAST_GAP;
    return own;
  });
  return { tops, height: y };
}
