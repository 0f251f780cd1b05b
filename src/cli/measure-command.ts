import { partialsOf, TIMBRE_DISTANCE_METRES } from "../band/index.ts";
import { reportOn, type VoicingReport } from "../explore/index.ts";
import type { Reading } from "../metrics/index.ts";
import { techniqueTexts, type Question, type Voicing } from "../voicing/index.ts";
import { bassOption, chordOption, dynamicOption, levelOption, notesOption } from "./ask.ts";
import { inColumns } from "./columns.ts";
import type { Answer, Command, Request } from "./option-types.ts";
import { noteData, noteRows } from "./placed-notes.ts";
import { readOwnVoicing } from "./own-voicing.ts";

/** `measure --chord F13 --notes tpt1=D5,…`: every measure of a voicing of one's own. */
export const measureCommand: Command = {
  name: "measure",
  summary: "Measures a voicing of your own",
  options: [
    chordOption,
    { ...notesOption, isRequired: true },
    dynamicOption,
    bassOption,
    levelOption,
    { name: "partials", kind: "switch", words: "add each player's partials, [hz, dB SPL]" },
  ],
  run,
};

function run(request: Request): Answer {
  const read = readOwnVoicing(request);
  if (!read.ok) return read;
  const { voicing, question } = read.value;
  const report = reportOn(voicing, question);
  const partials = request["partials"] === true ? partialData(voicing, question) : undefined;
  return {
    ok: true,
    data: {
      chord: question.chord.symbol,
      dynamic: question.dynamic,
      bass: question.bassSounds ? "root" : "none",
      cell: report.cell,
      notes: noteData(voicing, question.chord),
      techniques: report.techniques,
      isCrossSection: report.isCrossSection,
      broken: report.broken.map(({ rule, text, playerIds }) => ({ rule, text, playerIds })),
      measures: Object.fromEntries(report.measures.map(measureData)),
      ...(partials === undefined ? {} : { partialsAtMetres: TIMBRE_DISTANCE_METRES, partials }),
    },
    text: () => measureText(report, question, partials),
  };
}

const measureData = ({ metric, measured }: Reading) => [
  metric.id,
  { value: measured.value, unit: metric.unit, text: measured.text, label: metric.label },
];

type Partials = Readonly<Record<string, readonly (readonly [hz: number, dbSpl: number])[]>>;

/** The partials that ear and sound use, by player. */
function partialData(voicing: Voicing, { dynamic }: Question): Partials {
  return Object.fromEntries(
    voicing.placements.map(({ player, sounding }) => {
      const request = { instrument: player.instrument, sounding, dynamic, mute: player.mute };
      return [player.id, partialsOf(request).map(({ hz, dbSpl }) => [hz, dbSpl] as const)];
    }),
  );
}

function measureText(
  report: VoicingReport,
  { chord }: Question,
  partials: Partials | undefined,
): string {
  const names = report.techniques.map((id) => techniqueTexts.get(id)?.label ?? id);
  const measures = report.measures.map(({ metric, measured }) => [
    metric.label,
    measured.text,
    metric.unit,
    measured.detail,
  ]);
  return [
    `${chord.display}${names.length > 0 ? `: ${names.join(", ")}` : ""}\n\n`,
    inColumns([["player", "sounds", "degree", "reads"], ...noteRows(report.voicing, chord)]),
    "\n",
    inColumns([["measure", "value", "unit", ""], ...measures]),
    ...report.broken.map(({ rule, text }) => `Breaks ${rule}: ${text}.\n`),
    ...(partials === undefined ? [] : [`\n${partialText(partials)}`]),
  ].join("");
}

function partialText(partials: Partials): string {
  const rows = Object.entries(partials).flatMap(([player, list]) =>
    list.map(([hz, dbSpl], index) => [index === 0 ? player : "", hz.toFixed(1), dbSpl.toFixed(1)]),
  );
  return inColumns([["player", "Hz", `dB SPL at ${TIMBRE_DISTANCE_METRES} m`], ...rows]);
}
