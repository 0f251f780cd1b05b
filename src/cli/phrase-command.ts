import { fail, ok, type Result } from "../base/index.ts";
import {
  performPhrase,
  searchAlternatives,
  searchPhrase,
  texturePresets,
  type PhraseAnswer,
  type PhraseAlternative,
} from "../phrase/index.ts";
import type { MelodyStyle } from "../theory/index.ts";
import { bandOption, bassOption, colourOption, dynamicOption, levelOption } from "./ask.ts";
import { pitchOption } from "./export-command.ts";
import { beside, kindOf } from "./files.ts";
import type { Answer, Command, Option, Request } from "./option-types.ts";
import { answerData, melodyData, type NamedAnswer } from "./phrase-data.ts";
import { answerText } from "./phrase-text.ts";
import { readPhraseRequest, type AskedPhrase } from "./read-phrase-request.ts";
import { phraseKinds, writePhrase } from "./write-phrase.ts";

const styles: readonly MelodyStyle[] = ["swing", "straight", "ballad", "latin"];
const mostAlternatives = 3;

const options: readonly Option[] = [
  {
    name: "file",
    kind: "text",
    isRequired: true,
    isPlain: true,
    words: "melody with chord symbols: .musicxml, .mxl or .abc",
  },
  {
    name: "out",
    kind: "list",
    words: "files to write, ending in .musicxml, .mxl, .mid or .wav; none unless given",
  },
  bandOption,
  levelOption,
  dynamicOption,
  bassOption,
  colourOption,
  {
    name: "shape",
    kind: "text",
    choices: texturePresets.map(({ id }) => id),
    words: "how the texture goes over the bars; build unless given",
  },
  { name: "style", kind: "text", choices: styles, words: "another style than the file's" },
  {
    name: "tempo",
    kind: "number",
    words: "quarter notes a minute, 20 to 400; the file's unless given",
  },
  { name: "no-breaths", kind: "switch", words: "plans no breaths in long stretches" },
  {
    name: "alternatives",
    kind: "whole",
    words: `answers that differ to the ear, up to ${mostAlternatives}; 1 unless given; files of the second end in -2`,
  },
  pitchOption,
  {
    name: "with",
    kind: "list",
    choices: ["bass", "piano", "drums"],
    words: "who of the rhythm section is written or heard; nobody unless given",
  },
  { name: "straight", kind: "switch", words: "MIDI with even eighths at full length, as written" },
  { name: "stems", kind: "switch", words: "beside a .wav one of each player: NAME-alto1.wav" },
];

/** `phrase FILE …`: voices a melody and writes it for the whole band. */
export const phraseCommand: Command = {
  name: "phrase",
  summary: "Voices a melody with its changes across the band",
  options,
  run,
};

async function run(request: Request): Promise<Answer> {
  const outs = (request["out"] ?? []) as readonly string[];
  const wrong = outs.find((out) => !phraseKinds.some((kind) => kind === kindOf(out)));
  if (wrong !== undefined)
    return fail(
      "file-kind-unknown",
      `phrase writes .musicxml, .mxl, .mid and .wav files, and "${wrong}" is none of these.`,
    );
  const count = Number(request["alternatives"] ?? 1);
  if (!(count >= 1 && count <= mostAlternatives))
    return fail("alternatives-out-of-range", `--alternatives is from 1 to ${mostAlternatives}.`);
  const asked = await readPhraseRequest(request);
  if (!asked.ok) return asked;
  const answers = answersTo(asked.value, count);
  const written = await writeAll(outs, answers, asked.value, request);
  return written.ok ? answerOf(asked.value, answers, written.value) : written;
}

/** The best answer, and others after it where more are wanted. */
function answersTo(
  { phrase, question }: AskedPhrase,
  count: number,
): readonly [NamedAnswer, ...NamedAnswer[]] {
  const named = ({ label, answer }: Pick<PhraseAlternative, "label" | "answer">): NamedAnswer => ({
    label,
    answer,
    performance: performPhrase(phrase, answer),
  });
  if (count === 1)
    return [named({ label: "As drawn", answer: finished<PhraseAnswer>(searchPhrase(phrase)) })];
  const [first, ...others] = finished(searchAlternatives(phrase, question.curves, count));
  if (first === undefined) throw new RangeError("the answer as drawn is always found");
  return [named(first), ...others.map(named)];
}

function finished<T>(search: Generator<unknown, T>): T {
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
  }
}

async function writeAll(
  outs: readonly string[],
  answers: readonly NamedAnswer[],
  { phrase }: AskedPhrase,
  request: Request,
): Promise<Result<readonly string[]>> {
  const paths: string[] = [];
  for (const out of outs)
    for (const [index, { performance }] of answers.entries()) {
      const path = index === 0 ? out : beside(out, String(index + 1));
      const written = await writePhrase(path, { phrase, performance, request });
      if (!written.ok) return written;
      paths.push(...written.value);
    }
  return ok(paths);
}

function answerOf(
  { phrase, remarks, bandId }: AskedPhrase,
  answers: readonly [NamedAnswer, ...NamedAnswer[]],
  written: readonly string[],
): Answer {
  const [first, ...others] = answers;
  return {
    ok: true,
    data: {
      melody: { ...melodyData(phrase), remarks },
      band: bandId,
      players: phrase.players.map(({ id }) => id),
      ...answerData(phrase, first),
      alternatives: others.map((other) => answerData(phrase, other)),
      written,
    },
    text: () =>
      [
        ...remarks.map((remark) => `${remark}\n`),
        ...answers.map((answer) => answerText(phrase, answer)),
        ...written.map((path) => `${path} is written.\n`),
      ].join(""),
  };
}
