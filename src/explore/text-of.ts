import { degreeOf, displayDegree, pitchName } from "../theory/index.ts";
import type { Question } from "../voicing/index.ts";
import type { VoicingReport } from "./report.ts";

/**
 * A voicing as plain text, to be pasted anywhere: the question, the notes from the top down with
 * their players, and the measures.
 * @param report - the voicing
 * @param question - the question around it
 * @returns several lines
 */
export function textOf(report: VoicingReport, question: Question): string {
  const { chord, lead, dynamic } = question;
  const name = (midi: typeof lead): string => pitchName(midi, chord, { signs: "unicode" });
  const rows = [...report.stack].reverse().map((midi) => {
    const players = report.voicing.placements
      .filter((each) => each.sounding === midi)
      .map((each) => each.player.abbreviation);
    const degree = displayDegree(degreeOf(midi, chord));
    return `${degree.padStart(4)}  ${name(midi).padEnd(4)}  ${players.join(", ")}`;
  });
  const measures = report.measures.map(
    ({ metric, measured }) => `${metric.label}: ${measured.text} ${metric.unit}`,
  );
  const broken = report.broken.map((rule) => `Breaks a rule: ${rule.text}.`);
  return [`${chord.display} under ${name(lead)}, ${dynamic}`, ...rows, ...measures, ...broken].join(
    "\n",
  );
}
