import { fail } from "../base/index.ts";
import {
  midiOf,
  musicXmlOf,
  writeMxl,
  type ScoredVoicing,
  type VoicingScoreOptions,
} from "../files/index.ts";
import type { QuartersPerMinute } from "../theory/index.ts";
import { voicingOptions } from "./ask.ts";
import { kindOf, writeFile } from "./files.ts";
import type { Answer, Command, Option, Request } from "./option-types.ts";
import type { Answered } from "./own-voicing.ts";
import { noteData } from "./placed-notes.ts";
import { readVoicings } from "./read-voicings.ts";
import { renderCommand } from "./render-command.ts";

const manners = ["sustained", "hit", "rolled"] as const;
const mostSeconds = 60;

/** Pitch of a score. */
export const pitchOption: Option = {
  name: "pitch",
  kind: "text",
  choices: ["written", "concert"],
  words: "transposed parts or a concert score; written unless given",
};

/** `export … --out FILE`: writes a voicing, or several one bar each, as a score, MIDI or sound. */
export const exportCommand: Command = {
  name: "export",
  summary: "Writes a voicing, yours or the best one, as MusicXML, MIDI or WAV",
  options: [
    ...voicingOptions,
    {
      name: "out",
      kind: "text",
      isRequired: true,
      words: "file to write, ending in .musicxml, .mxl, .mid or .wav",
    },
    {
      name: "manner",
      kind: "text",
      choices: manners,
      words: "how it is played; sustained unless given",
    },
    {
      name: "seconds",
      kind: "number",
      words: `how long a bar lasts, up to ${mostSeconds}; 2 unless given, 3 for sound`,
    },
    { name: "title", kind: "text", words: "title of the score" },
    pitchOption,
  ],
  run,
};

function run(request: Request): Answer | Promise<Answer> {
  const out = String(request["out"]);
  const kind = kindOf(out);
  if (kind === "wav") return sound(request);
  const writer = writers[kind];
  if (writer === undefined)
    return fail(
      "file-kind-unknown",
      `export writes .musicxml, .mxl, .mid and .wav files, and "${out}" is none of these.`,
    );
  const seconds = Number(request["seconds"] ?? 2);
  if (!(seconds >= 0.6 && seconds <= mostSeconds))
    return fail(
      "seconds-out-of-range",
      `--seconds is from 0.6 to ${mostSeconds} for a bar of a score, not ${seconds}.`,
    );
  const answered = readVoicings(request);
  if (!answered.ok) return answered;
  const written = writeFile(
    out,
    writer(answered.value.map(scored), scoreOptions(request, seconds)),
  );
  if (!written.ok) return written;
  const notes = answered.value.map(({ voicing, question }) => noteData(voicing, question.chord));
  const bars = notes.length;
  return {
    ok: true,
    data: { out, bars, voicings: notes },
    text: () => `${out}: ${bars} ${bars === 1 ? "bar" : "bars"}\n`,
  };
}

/** What only a score has is no word of `render`. */
function sound({ title: _title, pitch: _pitch, ...request }: Request): Answer | Promise<Answer> {
  return renderCommand.run(request);
}

const scored = ({ voicing, question }: Answered): ScoredVoicing => ({
  voicing,
  chord: question.chord,
  dynamic: question.dynamic,
});

interface ScoreOptions extends VoicingScoreOptions {
  readonly pitch: "written" | "concert";
}

/** A bar of four beats lasts as long as was asked. */
function scoreOptions(request: Request, seconds: number): ScoreOptions {
  const { title, manner = "sustained", pitch } = request;
  return {
    ...(title === undefined ? {} : { title: String(title) }),
    tempo: Math.round(240 / seconds) as QuartersPerMinute,
    manner: manner as (typeof manners)[number],
    pitch: pitch === "concert" ? "concert" : "written",
  };
}

type Writer = (voicings: readonly ScoredVoicing[], options: ScoreOptions) => Uint8Array | string;

const writers: Readonly<Record<string, Writer | undefined>> = {
  musicxml: musicXmlOf,
  mxl: (voicings, options) => writeMxl(musicXmlOf(voicings, options)),
  mid: midiOf,
};
