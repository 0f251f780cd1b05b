import { ok, type Result } from "../base/index.ts";
import type { PlayerLevel } from "../band/index.ts";
import { firstInquiry } from "../explore/index.ts";
import { readChord, tickedTones } from "../theory/index.ts";
import { stackOf, type Question, type Voicing } from "../voicing/index.ts";
import { bassSoundsIn, dynamicIn } from "./ask.ts";
import type { Request } from "./option-types.ts";
import { readPlacedNotes } from "./placed-notes.ts";

/** A voicing with the question it answers. */
export interface Answered {
  readonly voicing: Voicing;
  readonly question: Question;
}

/**
 * Reads a voicing given note by note. What lies on top is taken as the melody, and the players who
 * sound as the whole line-up.
 * @param request - chord and notes, checked for form
 * @returns the voicing and the question around it, or the first problem
 */
export function readOwnVoicing(request: Request): Result<Answered> {
  const chord = readChord(String(request["chord"]));
  if (!chord.ok) return chord;
  const level = request["level"] as PlayerLevel | undefined;
  const voicing = readPlacedNotes(request["notes"] as readonly string[], chord.value, level);
  if (!voicing.ok) return voicing;
  const lead = stackOf(voicing.value).at(-1);
  if (lead === undefined) throw new RangeError("a voicing that was read has a top note");
  const question: Question = {
    ...firstInquiry(),
    locks: [],
    chord: chord.value,
    lead,
    players: voicing.value.placements.map(({ player }) => player),
    dynamic: dynamicIn(request),
    ticked: tickedTones(chord.value, "tensions"),
    required: [],
    bassSounds: bassSoundsIn(request),
  };
  return ok({ voicing: voicing.value, question });
}
