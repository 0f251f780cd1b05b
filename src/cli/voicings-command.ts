import { reportOn, whyEmpty, type VoicingReport } from "../explore/index.ts";
import { displayDegree, pitchName } from "../theory/index.ts";
import {
  reasonsFor,
  ruleTable,
  techniqueTexts,
  voicingOf,
  type Question,
  type RuleId,
} from "../voicing/index.ts";
import { layerOption, questionOptions, searchIn, sectionsOption } from "./ask.ts";
import { chosenCells } from "./chosen-cells.ts";
import { inColumns } from "./columns.ts";
import type { Answer, Command, Request } from "./option-types.ts";
import { noteData } from "./placed-notes.ts";
import { readQuestion } from "./read-question.ts";

const defaultLimit = 8;

/** `voicings --chord F13 --melody D5 …`: the best voicings of the textures asked for. */
export const voicingsCommand: Command = {
  name: "voicings",
  summary: "Finds the best voicings under a melody note",
  options: [
    ...questionOptions,
    { name: "span", kind: "whole", words: "lowest to highest note, semitones; any unless given" },
    { name: "notes", kind: "whole", words: "distinct notes; any number unless given" },
    { name: "players", kind: "whole", words: "sounding players; as many as can unless given" },
    layerOption,
    sectionsOption,
    { name: "limit", kind: "whole", words: `voicings at most; ${defaultLimit} unless given` },
  ],
  run,
};

function run(request: Request): Answer {
  const asked = readQuestion(request);
  if (!asked.ok) return asked;
  const { question, data } = asked.value;
  const options = searchIn(request);
  const { layer } = options;
  const cells = chosenCells(question, {
    ...numberIn(request, "span"),
    ...numberIn(request, "notes"),
    ...numberIn(request, "players"),
    ...options,
    limit: (request["limit"] ?? defaultLimit) as number,
  });
  if (!cells.ok) return cells;
  const reports = cells.value.map((cell) => reportOn(voicingOf(question, cell), question));
  const isAny = ["span", "notes", "players"].every((name) => !(name in request));
  const emptiedBy = reports.length === 0 && isAny ? whyEmpty(question, layer) : [];
  return {
    ok: true,
    data: {
      question: { ...data, ...options },
      voicings: reports.map((report) => voicingData(report, question)),
      ...(reports.length === 0 ? { emptiedBy } : {}),
    },
    text: () =>
      reports.length === 0
        ? emptyText(emptiedBy, isAny)
        : reports.map((report) => voicingText(report, question)).join("\n"),
  };
}

function numberIn(request: Request, name: "span" | "notes" | "players") {
  const given = request[name];
  return typeof given === "number" ? { [name]: given } : {};
}

function voicingData(report: VoicingReport, { chord }: Question) {
  const { voicing, cell, cost, techniques, measures } = report;
  return {
    cell,
    notes: noteData(voicing, chord),
    techniques,
    isCrossSection: report.isCrossSection,
    cost,
    measures: Object.fromEntries(
      measures.map(({ metric, measured }) => [metric.id, measured.value]),
    ),
  };
}

/** From the top down, as a staff is read: note, degree, who sounds it. */
function voicingText(report: VoicingReport, { chord }: Question): string {
  const { cell, cost, techniques } = report;
  const names = techniques.map((id) => techniqueTexts.get(id)?.label ?? id).join(", ");
  const notes = noteData(report.voicing, chord);
  const rows = [...report.stack].reverse().map((midi) => {
    const here = notes.filter((note) => note.midi === midi);
    const players = here.map(({ player }) => player).join(" ");
    const name = pitchName(midi, chord, { signs: "unicode" });
    return [`  ${name}`, displayDegree(here[0]?.degree ?? ""), players];
  });
  const terms = reasonsFor(cost, null).map(
    ({ value, text }) => `${value > 0 ? "+" : ""}${value} ${text}`,
  );
  return [
    `span ${cell.span}, ${cell.notes} notes, ${cell.players} players`,
    `${names === "" ? "" : `: ${names}`}\n`,
    inColumns([["  note", "degree", "players"], ...rows]),
    `  cost ${cost.total}${terms.length > 0 ? `: ${terms.join("; ")}` : ""}\n`,
  ].join("");
}

function emptyText(emptiedBy: readonly RuleId[], isAny: boolean): string {
  if (!isAny) return "No voicing has such a texture; ask without --span, --notes or --players.\n";
  const names = ruleTable.filter(({ id }) => emptiedBy.includes(id)).map(({ name }) => name);
  return names.length > 0
    ? `No voicing is possible; dropping any one of these rules gives some: ${names.join(", ")}.\n`
    : "No voicing is possible under these rules.\n";
}
