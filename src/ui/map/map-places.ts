import type { ReferencePoint } from "../../explore/index.ts";
import type { AtlasCell, Question } from "../../voicing/index.ts";

/** A place that has textures, but none with as many players as are looked at. */
export interface OtherCount {
  readonly span: number;
  readonly notes: number;
  /** In words for the place: "≤11", "≥7", "8–11". */
  readonly text: string;
}

/** What the map draws for one number of players. */
export interface PlacesAround {
  readonly cells: readonly AtlasCell[];
  readonly others: readonly OtherCount[];
}

/**
 * Sorts a map's cells by whether they have so many players.
 * @param cells - all cells of the map
 * @param players - number of players looked at
 * @returns the cells to draw, lines that share a place with harmony left out, and the places that
 *   only other numbers of players reach
 */
export function placesAround(cells: readonly AtlasCell[], players: number): PlacesAround {
  const counts = new Map<string, { span: number; notes: number; players: number[] }>();
  for (const { key } of cells) {
    const place = `${key.span}/${key.notes}`;
    const row = counts.get(place) ?? { span: key.span, notes: key.notes, players: [] };
    row.players.push(key.players);
    counts.set(place, row);
  }
  const here = cells.filter((cell) => cell.key.players === players);
  const harmonies = new Set(
    here
      .filter((cell) => cell.family === "harmony")
      .map((cell) => `${cell.key.span}/${cell.key.notes}`),
  );
  return {
    cells: here.filter(
      (cell) => cell.family === "harmony" || !harmonies.has(`${cell.key.span}/${cell.key.notes}`),
    ),
    others: [...counts.values()]
      .filter((row) => !row.players.includes(players))
      .map(({ span, notes, players: found }) => ({ span, notes, text: countText(found, players) })),
  };
}

function countText(found: readonly number[], players: number): string {
  const least = Math.min(...found);
  const most = Math.max(...found);
  if (most < players) return `≤${most}`;
  return least > players ? `≥${least}` : `${least}–${most}`;
}

/** A textbook voicing at its place; several at one place stand side by side. */
export interface PlacedReference {
  readonly point: ReferencePoint;
  /** 0 for the first at its place, 1 for the next. */
  readonly order: number;
}

/**
 * Numbers the textbook voicings that share a place.
 * @param references - all of them
 * @returns each with its order at its place
 */
export function referencePlaces(references: readonly ReferencePoint[]): readonly PlacedReference[] {
  const counts = new Map<string, number>();
  return references.map((point) => {
    const { span, notes } = point.report.cell;
    const place = `${span}/${notes}`;
    const order = counts.get(place) ?? 0;
    counts.set(place, order + 1);
    return { point, order };
  });
}

/**
 * Spans of a gap whose lowest note is a ticked tone: the only ones that need a reason.
 * @param gap - lowest and highest span of the gap, semitones
 * @param question - chord, lead and ticked tones
 * @returns the spans, rising
 */
export function tickedSpans(
  gap: { readonly from: number; readonly to: number },
  question: Pick<Question, "chord" | "lead" | "ticked">,
): readonly number[] {
  const { chord, lead, ticked } = question;
  const spans = Array.from({ length: gap.to - gap.from + 1 }, (_, index) => gap.from + index);
  return spans.filter((span) =>
    ticked.includes((((lead - span - chord.rootPitchClass) % 12) + 12) % 12),
  );
}
