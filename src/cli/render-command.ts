import { fail, ok, quantity, type Result } from "../base/index.ts";
import type { Manner } from "../audio/index.ts";
import type { Voicing } from "../voicing/index.ts";
import { voicingOptions } from "./ask.ts";
import { writeFile } from "./files.ts";
import type { Answer, Command, Request } from "./option-types.ts";
import { noteData } from "./placed-notes.ts";
import { readVoicings } from "./read-voicings.ts";
import { renderVoicings, type Hearing } from "./render-voicing.ts";

/** Manners by the words of the command line. */
const manners: Readonly<Record<string, Manner>> = {
  sustained: "sustained",
  hit: "hit",
  rolled: "rolled-from-bottom",
  "rolled-down": "rolled-from-top",
  crescendo: "crescendo",
  sections: "section-by-section",
};
const company = ["bass", "piano", "drums"];
const defaultSeconds = 3;
const mostSeconds = 60;

/** `render … --out FILE.wav`: sounds a voicing, or several in turn, into a file. */
export const renderCommand: Command = {
  name: "render",
  summary: "Sounds a voicing, yours or the best one, into a WAV file",
  options: [
    ...voicingOptions,
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
    {
      name: "with",
      kind: "list",
      choices: company,
      words: `who plays along: ${company.join(", ")}; nobody unless given`,
    },
    {
      name: "front",
      kind: "list",
      words: "players who stand out, such as alto1,bari; the others 12 dB under",
    },
    { name: "only", kind: "switch", words: "leaves out everybody but those who stand out" },
    {
      name: "matched",
      kind: "switch",
      words: "brings each voicing to one loudness; as played unless given",
    },
  ],
  run,
};

function run(request: Request): Answer {
  const out = String(request["out"]);
  if (!out.toLowerCase().endsWith(".wav"))
    return fail("file-kind-unknown", `render writes .wav files, and "${out}" is not one.`);
  const answered = readVoicings(request);
  if (!answered.ok) return answered;
  const voicings = answered.value.map(({ voicing }) => voicing);
  const { chord, dynamic } = answered.value[0]!.question;
  const hearing = readHearing(request, voicings);
  if (!hearing.ok) return hearing;
  const recording = renderVoicings(voicings, { ...hearing.value, chord, dynamic });
  const { bytes, ...measures } = recording;
  const written = writeFile(out, bytes);
  if (!written.ok) return written;
  const notes = voicings.map((voicing) => noteData(voicing, chord));
  const data = {
    out,
    ...measures,
    ...(notes.length === 1 ? { notes: notes[0] } : { turns: notes }),
  };
  return { ok: true, data, text: () => lineOf(out, measures) };
}

function readHearing(
  request: Request,
  voicings: readonly Voicing[],
): Result<Omit<Hearing, "chord" | "dynamic">> {
  const seconds = Number(request["seconds"] ?? defaultSeconds);
  if (!(seconds >= 0.1 && seconds <= mostSeconds))
    return fail("seconds-out-of-range", `--seconds is from 0.1 to ${mostSeconds}, not ${seconds}.`);
  const along = (request["with"] ?? []) as readonly string[];
  const front = (request["front"] ?? []) as readonly string[];
  const absent = front.find(
    (id) => !voicings.some(({ placements }) => placements.some(({ player }) => player.id === id)),
  );
  if (absent !== undefined)
    return fail("player-unknown", `--front names "${absent}", who does not play here.`);
  return ok({
    manner: manners[String(request["manner"] ?? "sustained")] ?? "sustained",
    seconds: quantity(seconds),
    format: "pcm24",
    withBass: along.includes("bass"),
    withPiano: along.includes("piano"),
    withDrums: along.includes("drums"),
    soloPlayerIds: front,
    ...(request["only"] === true && front.length > 0 ? { othersDb: "silent" as const } : {}),
    isMatched: request["matched"] === true,
  });
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
