import { writeFileSync } from "node:fs";
import { fail, ok, quantity, type Result } from "../base/index.ts";
import type { Manner } from "../audio/index.ts";
import { voicingOf } from "../voicing/index.ts";
import { layerIn, layerOption, notesOption, questionOptions } from "./ask.ts";
import { chosenCells } from "./chosen-cells.ts";
import type { Answer, Command, Request } from "./option-types.ts";
import { readOwnVoicing, type Answered } from "./own-voicing.ts";
import { noteData } from "./placed-notes.ts";
import { readQuestion } from "./read-question.ts";
import { renderVoicing } from "./render-voicing.ts";

/** Manners by the words of the command line. */
const manners: Readonly<Record<string, Manner>> = {
  sustained: "sustained",
  hit: "hit",
  rolled: "rolled-from-bottom",
  crescendo: "crescendo",
  sections: "section-by-section",
};
const defaultSeconds = 3;
const mostSeconds = 60;

/** `render … --out FILE.wav`: sounds a voicing into a file. */
export const renderCommand: Command = {
  name: "render",
  summary: "Sounds a voicing, yours or the best one, into a WAV file",
  options: [
    ...questionOptions.map((option) =>
      option.name === "melody" ? { ...option, isRequired: false } : option,
    ),
    layerOption,
    { ...notesOption, words: `${notesOption.words}; without it the best voicing under --melody` },
    { name: "out", kind: "text", isRequired: true, words: "file to write, ending in .wav" },
    {
      name: "manner",
      kind: "text",
      choices: Object.keys(manners),
      words: "how it is played; sustained unless given",
    },
    {
      name: "seconds",
      kind: "number",
      words: `from the start to the release, up to ${mostSeconds}; ${defaultSeconds} unless given`,
    },
  ],
  run,
};

function run(request: Request): Answer {
  const out = String(request["out"]);
  if (!out.toLowerCase().endsWith(".wav"))
    return fail("file-kind-unknown", `render writes .wav files, and "${out}" is not one.`);
  const seconds = Number(request["seconds"] ?? defaultSeconds);
  if (!(seconds >= 0.1 && seconds <= mostSeconds))
    return fail("seconds-out-of-range", `--seconds is from 0.1 to ${mostSeconds}, not ${seconds}.`);
  const answered = readVoicing(request);
  if (!answered.ok) return answered;
  const { voicing, question } = answered.value;
  const recording = renderVoicing(voicing, {
    dynamic: question.dynamic,
    manner: manners[String(request["manner"] ?? "sustained")] ?? "sustained",
    seconds: quantity(seconds),
    format: "pcm24",
  });
  const { bytes, ...measures } = recording;
  const written = write(out, bytes);
  if (!written.ok) return written;
  const data = { out, ...measures, notes: noteData(voicing, question.chord) };
  return { ok: true, data, text: () => lineOf(out, measures) };
}

function readVoicing(request: Request): Result<Answered> {
  if (request["notes"] !== undefined) return readOwnVoicing(request);
  if (request["melody"] === undefined)
    return fail("option-missing", "render needs --melody for the best voicing, or --notes.");
  const asked = readQuestion(request);
  if (!asked.ok) return asked;
  const { question } = asked.value;
  const cells = chosenCells(question, { layer: layerIn(request), limit: 1 });
  if (!cells.ok) return cells;
  const [best] = cells.value;
  if (best === undefined)
    return fail("voicing-impossible", "No voicing is possible under these rules.");
  return ok({ question, voicing: voicingOf(question, best) });
}

function write(out: string, bytes: Uint8Array): Result<void> {
  try {
    writeFileSync(out, bytes);
    return ok(undefined);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return fail("file-not-written", `${out} could not be written (${reason}).`);
  }
}

interface Measures {
  readonly seconds: number;
  readonly lufs: number | null;
  readonly truePeakDb: number | null;
}

function lineOf(out: string, { seconds, lufs, truePeakDb }: Measures): string {
  const loudness = lufs === null ? "too short for a loudness" : `${lufs} LUFS`;
  return `${out}: ${seconds.toFixed(2)} s, ${loudness}, peak ${truePeakDb ?? "none"} dBTP\n`;
}
