import type { Reading } from "../metrics/index.ts";
import { reportOn } from "../explore/index.ts";
import type { Answered } from "./own-voicing.ts";
import { noteData } from "./placed-notes.ts";
import type { Recording } from "./render-voicing.ts";
import type { SamplePair } from "./sample-table.ts";

/** A listening example with all that is told about it. */
export interface Sample {
  readonly name: string;
  readonly answered: Answered;
  readonly measures: readonly Reading[];
  readonly recording: Recording;
}

/** Measures told of every pair, beside those that the pair is about; in the order of the page. */
const ALWAYS = [
  "span",
  "notes",
  "players",
  "weight",
  "loudness",
  "heard",
  "roughness",
  "chord-clarity",
];

const HEAD = `# Where these recordings come from

A made-up rehearsal tries one long chord in twelve ways, two by two. Each recording is a voicing that this project found by its own atlas and measures, sounded by its own synthesis (\`src/audio\`) from the partials of \`src/band\`. Nothing here was recorded from instruments, and nothing is by others. \`npm run samples\` finds, measures and renders them again, to the same bytes on the same machine, and writes this page; what is looked for stands in \`src/cli/sample-table.ts\`. 48 kHz, 16 bit, stereo. Licence: MIT, as the project.

All are brought to one loudness, −20 LUFS by ITU-R BS.1770 on the three-second sustained sound, so that louder does not win by being louder: what was changed for that is told. Loudness in sones is as played. Mind the volume, on headphones above all.
`;

/**
 * The measures of a voicing, as the page gives them.
 * @param answered - the voicing and its question
 * @returns one reading a measure
 */
export const measuresOf = ({ voicing, question }: Answered): readonly Reading[] =>
  reportOn(voicing, question).measures;

/**
 * What makes a pair unfit: something that ought to be equal is not, or the difference is too small.
 * @param pair - what is claimed
 * @param samples - both, measured
 * @returns sentences; empty when all is as claimed
 */
export function unmetClaims(
  { equal, differs }: SamplePair,
  samples: readonly [Pick<Sample, "name" | "measures">, Pick<Sample, "name" | "measures">],
): readonly string[] {
  const [first, second] = samples;
  const names = `${first.name} and ${second.name}`;
  const both = (id: string): readonly [number, number] => [valueOf(first, id), valueOf(second, id)];
  const unequal = equal.filter((id) => both(id)[0] !== both(id)[1]);
  const [one, other] = both(differs.id);
  const isApart = Math.abs(one - other) >= differs.atLeast;
  return [
    ...unequal.map((id) => `${names} ought to have one ${id}, and have ${both(id).join(" and ")}`),
    ...(isApart ? [] : [`${names} hardly differ in ${differs.id}: ${one} and ${other}`]),
  ];
}

const valueOf = ({ measures }: Pick<Sample, "measures">, id: string): number =>
  readingOf(measures, id).measured.value ?? NaN;

function readingOf(measures: readonly Reading[], id: string): Reading {
  const found = measures.find(({ metric }) => metric.id === id);
  if (found === undefined) throw new RangeError(`there is no measure "${id}"`);
  return found;
}

/**
 * The page that says where the recordings come from.
 * @param pairs - every pair with its two samples
 * @returns text in Markdown, laid out as the project's formatter does
 */
export function sourcesPage(
  pairs: readonly { readonly pair: SamplePair; readonly samples: readonly [Sample, Sample] }[],
): string {
  return [HEAD, ...pairs.map(({ pair, samples }) => pairSection(pair, samples))].join("\n");
}

function pairSection(pair: SamplePair, samples: readonly [Sample, Sample]): string {
  const { foundBy, equal, differs, dynamic } = pair;
  const [first] = samples;
  const isTold = (id: string): boolean =>
    ALWAYS.includes(id) || equal.includes(id) || id === differs.id;
  const rows = first.measures
    .filter(({ metric }) => isTold(metric.id))
    .map(({ metric }) => [
      `${metric.label}, ${metric.unit}`,
      ...samples.map(({ measures }) => cell(readingOf(measures, metric.id), differs.id)),
    ]);
  const changed = samples.map(({ recording }) => signed(recording.gainsDb[0] ?? 0));
  return [
    `## ${samples.map(({ name }) => `[${name}](${name}.wav)`).join(" and ")}`,
    "",
    `${capital(foundBy)}. At _${dynamic}_.`,
    "",
    ...samples.map(noteLine),
    "",
    ...table([
      ["", ...samples.map(({ name }) => name)],
      ...rows,
      ["Level change to match, dB", ...changed],
    ]),
    "",
  ].join("\n");
}

/** The value; of the measure that tells the two apart, what is said about it as well. */
const cell = ({ metric, measured: { text, detail } }: Reading, told: string): string =>
  metric.id === told ? `${text}; ${detail.replace(/\.$/, "")}` : text;

function noteLine({ name, answered: { voicing, question } }: Sample): string {
  const notes = noteData(voicing, question.chord).map(
    ({ player, name: note }) => `${player}=${note}`,
  );
  return `- ${name}: ${question.chord.symbol}, \`${notes.join(",")}\``;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const signed = (value: number): string =>
  `${value < 0 ? "−" : value > 0 ? "+" : ""}${Math.abs(value).toFixed(1)}`;

/** Rows of a table, columns padded to one width; the first row is the head. */
function table(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = rows[0]!.map((_, column) =>
    Math.max(3, ...rows.map((row) => row[column]!.length)),
  );
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell, column) => cell.padEnd(widths[column]!)).join(" | ")} |`;
  const [head, ...body] = rows;
  return [line(head!), line(widths.map((width) => "-".repeat(width))), ...body.map(line)];
}
