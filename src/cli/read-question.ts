import { fail, ok, type Result } from "../base/index.ts";
import {
  lineUpById,
  withLevel,
  type LineUp,
  type Player,
  type PlayerLevel,
} from "../band/index.ts";
import { firstInquiry, readInquiry, type Inquiry, type ToneChoice } from "../explore/index.ts";
import { pitchName, readChord, type Chord, type Colour } from "../theory/index.ts";
import type { Question } from "../voicing/index.ts";
import { bassSoundsIn, dynamicIn } from "./ask.ts";
import type { Request } from "./option-types.ts";
import { toneOfDegree } from "./tone-of-degree.ts";

/** A question that was read, and the same as data for programs. */
export interface Asked {
  readonly question: Question;
  readonly data: Readonly<Record<string, unknown>>;
}

/**
 * Reads a question from flags or batch fields, by the same way as the page does.
 * @param request - what was asked, checked for form
 * @returns the question, or the first problem with it
 */
export function readQuestion(request: Request): Result<Asked> {
  const lineUp = readLineUp(request);
  if (!lineUp.ok) return lineUp;
  const toneChoices = readToneChoices(request);
  if (!toneChoices.ok) return toneChoices;
  const inquiry: Inquiry = {
    ...firstInquiry(),
    chordText: String(request["chord"]),
    melodyText: String(request["melody"]),
    dynamic: dynamicIn(request),
    lineUpName: lineUp.value.name,
    players: lineUp.value.players,
    colour: (request["colour"] ?? "tensions") as Colour,
    toneChoices: toneChoices.value,
    bassSounds: bassSoundsIn(request),
  };
  const reading = readInquiry(inquiry);
  if (!reading.ok) {
    const [problem] = reading.problems;
    if (problem === undefined) throw new RangeError("an unread question must name a problem");
    return { ok: false, problem };
  }
  const { question, strip, remarks } = reading;
  const tones = (...choices: readonly ToneChoice[]) =>
    strip.filter(({ choice }) => choices.includes(choice)).map(({ degree }) => degree);
  const data = {
    chord: question.chord.symbol,
    melody: pitchName(question.lead, question.chord),
    midi: question.lead,
    band: lineUp.value.id,
    level: request["level"] ?? lineUp.value.players[0]?.level,
    dynamic: question.dynamic,
    bass: question.bassSounds ? "root" : "none",
    colour: inquiry.colour,
    tones: tones("on", "required"),
    required: tones("required"),
    players: question.players.map(({ id }) => id),
    remarks,
  };
  return ok({ question, data });
}

/**
 * The line-up asked for, everybody at the level asked for.
 * @param request - what was asked, checked for form
 * @returns the line-up, or the problem
 */
export function readLineUp(request: Request): Result<LineUp> {
  const found = lineUpById(String(request["band"] ?? "big-band"));
  if (!found.ok || request["level"] === undefined) return found;
  const players: Player[] = [];
  for (const player of found.value.players) {
    const changed = withLevel(player, request["level"] as PlayerLevel);
    if (!changed.ok) return changed;
    players.push(changed.value);
  }
  return ok({ ...found.value, players });
}

/** Where two of the lists name one tone, leaving out wins over adding and requiring over both. */
function readToneChoices(request: Request): Result<Inquiry["toneChoices"]> {
  const lists = { tick: "on", untick: "off", require: "required" } as const;
  const asked = Object.entries(lists).flatMap(([name, choice]) =>
    ((request[name] ?? []) as readonly string[]).map((degree) => ({ name, choice, degree })),
  );
  const choices: Partial<Record<number, ToneChoice>> = {};
  if (asked.length === 0) return ok(choices);
  const chord = readChord(String(request["chord"]));
  if (!chord.ok) return chord;
  for (const { name, choice, degree } of asked) {
    const tone = toneOfDegree(degree, chord.value);
    if (tone === undefined) return unknownDegree(name, degree, chord.value);
    choices[tone] = choice;
  }
  return ok(choices);
}

function unknownDegree(name: string, degree: string, chord: Chord): Result<never> {
  return fail(
    "degree-unreadable",
    `--${name} takes degrees of ${chord.symbol} such as 9, b9 or #11, not "${degree}".`,
    { suggestions: chord.tones.slice(0, 3).map((tone) => tone.degree) },
  );
}
