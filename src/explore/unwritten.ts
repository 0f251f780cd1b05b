import type { Count } from "../base/index.ts";
import { metrics, type Metric } from "../metrics/index.ts";
import {
  costOf,
  voicingOf,
  type AtlasCell,
  type Cost,
  type Question,
  type Voicing,
} from "../voicing/index.ts";
import type { ReferencePoint } from "./reference-points.ts";

/** A good texture that a writer who thinks by section would hardly find. */
export interface Unwritten {
  readonly cell: AtlasCell;
  /** Why it is worth hearing, in one sentence. */
  readonly reason: string;
}

/** Most players buried, and most mud, for a texture to count as good. */
const mostBuriedShare = 0.16;
const mostMud = 0.8;
/** Most register cost a player, on average. */
const mostEffort = 0.5;
/** Fewest players and notes for sections to interlock at all. */
const fewestPlayers = 5;
const fewestNotes = 4;
/** A texture this near to one already chosen says nothing new. */
const apart = 5;

interface Judged {
  readonly cell: AtlasCell;
  readonly interleaving: number;
  readonly buried: number;
  readonly nearest: ReferencePoint | undefined;
  /** How far from the nearest textbook answer: semitones of span, notes, and interlocking. */
  readonly away: number;
}

function metricOf(id: string): Metric {
  const found = metrics.find((metric) => metric.id === id);
  if (!found) throw new RangeError(`there is no measure "${id}"`);
  return found;
}

function valueOf(id: string, voicing: Voicing, question: Question): number | null {
  return metricOf(id).measure(voicing, question).value;
}

/** Distance of two textures on the map: a note counts as two semitones of span. */
function distance(a: AtlasCell["key"], b: AtlasCell["key"]): number {
  return (
    Math.abs(a.span - b.span) + 2 * Math.abs(a.notes - b.notes) + Math.abs(a.players - b.players)
  );
}

/** The worst single thing about it may cost this much: more needs a reason. */
const worstTerm = 4;

/** What the players' registers cost: unlike the whole cost it can be compared between textures. */
function effortOf({ terms }: Cost): number {
  return terms.filter((term) => term.id.startsWith("C")).reduce((sum, term) => sum + term.value, 0);
}

function nearestTo(
  cell: AtlasCell,
  references: readonly ReferencePoint[],
): ReferencePoint | undefined {
  return [...references].sort(
    (a, b) => distance(cell.key, a.report.cell) - distance(cell.key, b.report.cell),
  )[0];
}

function judge(
  cell: AtlasCell,
  question: Question,
  references: readonly ReferencePoint[],
): Judged | null {
  const { notes, players } = cell.key;
  if (cell.family === "line" || notes < fewestNotes || players < fewestPlayers) return null;
  const voicing = voicingOf(question, cell);
  const interleaving = valueOf("interleaving", voicing, question) ?? 0;
  if (interleaving === 0) return null;
  if ((valueOf("mud", voicing, question) ?? 0) > mostMud) return null;
  const heard = valueOf("heard", voicing, question) ?? players;
  if (players - heard > mostBuriedShare * players) return null;
  const cost = costOf(voicing, question);
  const effort = effortOf(cost);
  if (cost.terms.some((term) => term.value > worstTerm)) return null;
  if (effort > mostEffort * players) return null;
  const nearest = nearestTo(cell, references);
  const far = nearest ? distance(cell.key, nearest.report.cell) : 0;
  return {
    cell,
    interleaving,
    buried: players - heard,
    nearest,
    away: far + Math.round(20 * interleaving) - effort,
  };
}

function reasonFor(judged: Judged, question: Question): string {
  const { cell, nearest, interleaving, buried } = judged;
  const parts = [`its sections interlock (${interleaving.toFixed(2)})`];
  if (nearest) {
    const book = valueOf("interleaving", nearest.report.voicing, question) ?? 0;
    const span = cell.key.span - nearest.report.cell.span;
    const notes = cell.key.notes - nearest.report.cell.notes;
    parts[0] += ` where ${nearest.label.toLowerCase()} has ${book.toFixed(2)}`;
    if (span !== 0)
      parts.push(`${Math.abs(span)} semitones ${span > 0 ? "wider" : "narrower"} than that`);
    if (notes !== 0)
      parts.push(
        `${Math.abs(notes)} ${notes > 0 ? "more" : "fewer"} ${Math.abs(notes) === 1 ? "note" : "notes"}`,
      );
  }
  parts.push(buried === 0 ? "nobody buried, nothing muddy" : "nothing muddy");
  const text = parts.join("; ");
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

/**
 * Good textures far from what each section would get by the textbook: interlocked, not muddy,
 * hardly anyone buried, easy to play, nothing odd about their spacing, and apart from one another.
 * @param question - the question
 * @param cells - its atlas
 * @param references - the by-section textbook answers
 * @param count - how many at most
 * @returns in the order to walk them, each with its reason; empty when there are none
 */
export function unwritten(
  question: Question,
  cells: readonly AtlasCell[],
  references: readonly ReferencePoint[],
  count: Count,
): readonly Unwritten[] {
  const judged = cells
    .map((cell) => judge(cell, question, references))
    .filter((each) => each !== null)
    .sort((a, b) => b.away - a.away || distance(a.cell.key, b.cell.key));
  const chosen: Judged[] = [];
  for (const each of judged) {
    if (chosen.length === count) break;
    if (chosen.every((other) => distance(other.cell.key, each.cell.key) >= apart))
      chosen.push(each);
  }
  return chosen.map((each) => ({ cell: each.cell, reason: reasonFor(each, question) }));
}
