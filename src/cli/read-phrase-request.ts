import { fail, ok, quantity, type Problem, type Result } from "../base/index.ts";
import { readMelodyFile } from "../files/index.ts";
import {
  readPhrase,
  texturePlan,
  type Phrase,
  type PhraseQuestion,
  type TexturePresetId,
} from "../phrase/index.ts";
import type { Colour, Divisions, Melody, MelodyProblem, MelodyStyle } from "../theory/index.ts";
import { allRules } from "../voicing/index.ts";
import { bassSoundsIn, dynamicIn } from "./ask.ts";
import { readBytes } from "./files.ts";
import type { Request } from "./option-types.ts";
import { readLineUp } from "./read-question.ts";

/** A phrase that was asked for. */
export interface AskedPhrase {
  readonly question: PhraseQuestion;
  readonly phrase: Phrase;
  /** What was left out of the file or read in another way. */
  readonly remarks: readonly string[];
  readonly bandId: string;
}

/**
 * Reads the melody and what is to be done with it.
 * @param request - what was asked, checked for form
 * @returns the phrase, or the first problem, naming the bar where it is one of the music
 */
export async function readPhraseRequest(request: Request): Promise<Result<AskedPhrase>> {
  const bytes = readBytes(String(request["file"]));
  if (!bytes.ok) return bytes;
  const read = await readMelodyFile(bytes.value);
  if (!read.ok) return firstOf(read.problems);
  const melody = changed(read.value.melody, request);
  if (!melody.ok) return melody;
  const lineUp = readLineUp(request);
  if (!lineUp.ok) return lineUp;
  const { players, id: bandId } = lineUp.value;
  const shape = (request["shape"] ?? "build") as TexturePresetId;
  const question: PhraseQuestion = {
    melody: melody.value,
    players,
    dynamics: [{ at: quantity<Divisions>(0), dynamic: dynamicIn(request) }],
    colour: (request["colour"] ?? "tensions") as Colour,
    bassSounds: bassSoundsIn(request),
    rules: allRules,
    strictLowIntervals: false,
    clusterSetting: false,
    homes: true,
    choices: {},
    ...texturePlan(shape, melody.value, players),
    breaths: request["no-breaths"] !== true,
    locks: { notes: [], moments: [] },
  };
  const phrase = readPhrase(question);
  if (!phrase.ok) return firstOf(phrase.problems);
  return ok({ question, phrase: phrase.value, remarks: read.value.remarks, bandId });
}

/** One sentence; how many more there are stands behind it. */
function firstOf(problems: readonly MelodyProblem[]): Result<never> {
  const [first] = problems;
  if (first === undefined) throw new RangeError("what is refused must name a problem");
  const more = problems.length - 1;
  const others = more === 0 ? "" : ` (and ${more} more ${more === 1 ? "problem" : "problems"})`;
  const problem: Problem = { ...first, message: first.message.replace(/\.$/, `${others}.`) };
  return { ok: false, problem };
}

function changed(melody: Melody, request: Request): Result<Melody> {
  const { style, tempo } = request;
  if (tempo !== undefined && !(Number(tempo) >= 20 && Number(tempo) <= 400))
    return fail("melody-tempo", `--tempo is from 20 to 400 quarter notes a minute, not ${tempo}.`);
  return ok({
    ...melody,
    ...(style === undefined ? {} : { style: style as MelodyStyle }),
    ...(tempo === undefined ? {} : { tempo: quantity<Melody["tempo"]>(Number(tempo)) }),
  });
}
