import { lineUpById, type Dynamic, type Player } from "../../../src/band/index.ts";
import type { SoundingMidi } from "../../../src/base/index.ts";
import { firstInquiry, readInquiry, type Inquiry } from "../../../src/explore/index.ts";
import { readPitch } from "../../../src/theory/index.ts";
import type { Question } from "../../../src/voicing/index.ts";

/** Players of a line-up by its id. */
export function playersOf(id: string): readonly Player[] {
  const found = lineUpById(id);
  if (!found.ok) throw new Error(found.problem.message);
  return found.value.players;
}

/** A question as the page asks it. */
export function ask(
  chordText: string,
  melodyText: string,
  dynamic: Dynamic,
  more: Partial<Inquiry> = {},
): Question {
  const read = readInquiry({ ...firstInquiry(), chordText, melodyText, dynamic, ...more });
  if (!read.ok) throw new Error(read.problems.map((problem) => problem.message).join(" "));
  return read.question;
}

/** A pitch by its scientific name. */
export function midi(name: string): SoundingMidi {
  const read = readPitch(name);
  if (!read.ok) throw new Error(read.problem.message);
  return read.value.sounding;
}
