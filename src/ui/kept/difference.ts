import type { VoicingReport } from "../../explore/index.ts";
import { inWords, listed } from "../words/counts.ts";

/** What one measure must differ by to be worth a word. */
const leastWeight = 0.05;

/**
 * How one voicing differs from another, in one sentence.
 * @param report - the voicing
 * @param against - the one it is compared with
 * @returns e.g. "10 semitones narrower, two notes more, nine players on other notes, same weight"
 */
export function differenceWords(report: VoicingReport, against: VoicingReport): string {
  const words = [
    amount(report.cell.span - against.cell.span, "semitone", "wider", "narrower", "same span"),
    counted(report.cell.notes - against.cell.notes, "note"),
    counted(report.cell.players - against.cell.players, "player"),
    movedWords(report, against),
    measureWords(report, against, "weight", "heavier", "lighter", "same weight"),
    interleavingWords(report, against),
  ];
  return `${listed(words.filter((word) => word !== ""))}.`;
}

function amount(by: number, unit: string, more: string, less: string, same: string): string {
  if (by === 0) return same;
  const count = Math.abs(by);
  return `${count} ${unit}${count === 1 ? "" : "s"} ${by > 0 ? more : less}`;
}

function counted(by: number, noun: string): string {
  if (by === 0) return "";
  const count = Math.abs(by);
  return `${inWords(count)} ${noun}${count === 1 ? "" : "s"} ${by > 0 ? "more" : "fewer"}`;
}

function movedWords(report: VoicingReport, against: VoicingReport): string {
  const before = new Map(
    against.voicing.placements.map(({ player, sounding }) => [player.id, sounding]),
  );
  const moved = report.voicing.placements.filter(
    ({ player, sounding }) => before.has(player.id) && before.get(player.id) !== sounding,
  ).length;
  if (moved === 0) return "everybody on the same notes";
  return `${inWords(moved)} ${moved === 1 ? "player" : "players"} on ${moved === 1 ? "another note" : "other notes"}`;
}

function valueOf(report: VoicingReport, id: string): number | null {
  return report.measures.find(({ metric }) => metric.id === id)?.measured.value ?? null;
}

function measureWords(
  report: VoicingReport,
  against: VoicingReport,
  id: string,
  more: string,
  less: string,
  same: string,
): string {
  const [value, other] = [valueOf(report, id), valueOf(against, id)];
  if (value === null || other === null) return "";
  const share = (value - other) / Math.max(Math.abs(other), 1e-9);
  if (Math.abs(share) < leastWeight) return same;
  return `${Math.round(Math.abs(100 * share))} % ${share > 0 ? more : less}`;
}

function interleavingWords(report: VoicingReport, against: VoicingReport): string {
  const [value, other] = [valueOf(report, "interleaving"), valueOf(against, "interleaving")];
  if (value === null || other === null) return "";
  if (value === 0 && other > 0) return "no interleaving";
  if (Math.abs(value - other) < 0.05) return "as much interleaved";
  return value > other ? "more interleaved" : "less interleaved";
}
