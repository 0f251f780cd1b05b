import { fail, ok, type Result } from "../base/index.ts";
import { voicingOf } from "../voicing/index.ts";
import { searchIn } from "./ask.ts";
import { chosenCells } from "./chosen-cells.ts";
import type { Request } from "./option-types.ts";
import { readOwnVoicing, type Answered } from "./own-voicing.ts";
import { readQuestion } from "./read-question.ts";

/**
 * The voicings asked for, in turn: those given note by note, or the best one under the melody note.
 * @param request - what was asked, checked for form
 * @returns at least one, all answers to one chord; or the first problem
 */
export function readVoicings(request: Request): Result<readonly Answered[]> {
  const given = request["notes"] as readonly string[] | undefined;
  if (given === undefined) {
    const best = readBest(request);
    return best.ok ? ok([best.value]) : best;
  }
  const answered: Answered[] = [];
  for (const turn of given.join(",").split(";")) {
    const notes = turn
      .split(",")
      .map((note) => note.trim())
      .filter((note) => note !== "");
    const own = readOwnVoicing({ ...request, notes });
    if (!own.ok) return own;
    answered.push(own.value);
  }
  return ok(answered);
}

function readBest(request: Request): Result<Answered> {
  if (request["melody"] === undefined)
    return fail(
      "option-missing",
      "Give --melody for the best voicing, or --notes for one of your own.",
    );
  const asked = readQuestion(request);
  if (!asked.ok) return asked;
  const { question } = asked.value;
  const cells = chosenCells(question, { ...searchIn(request), limit: 1 });
  if (!cells.ok) return cells;
  const [best] = cells.value;
  if (best === undefined)
    return fail("voicing-impossible", "No voicing is possible under these rules.");
  return ok({ question, voicing: voicingOf(question, best) });
}
