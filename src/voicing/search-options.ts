import { fail, ok, type Count, type Result } from "../base/index.ts";
import type { SectionId } from "../band/index.ts";
import type { LayerId, Lock, Question } from "./voicing-types.ts";

/** What part of the space is asked for. */
export interface SearchOptions {
  /** All voicings, only those with unbroken sections, or only interlocked ones; all when left out. */
  readonly layer?: LayerId;
  /** Exactly these sections sound, each with at least one player; any when left out. */
  readonly sections?: readonly SectionId[];
  /** Distinct notes at most; as many as players when left out. */
  readonly mostNotes?: Count;
}

/**
 * The question with everyone outside the asked sections resting.
 * @param question - the question
 * @param sections - sections that sound; all when undefined
 * @returns the question, or the problem `section-missing`: a section that is not in the line-up
 */
export function restrictedTo(
  question: Question,
  sections: readonly SectionId[] | undefined,
): Result<Question> {
  if (!sections) return ok(question);
  const outside = question.players.filter((player) => !sections.includes(player.section));
  const missing = sections.find(
    (section) => !question.players.some((player) => player.section === section),
  );
  if (missing) return fail("section-missing", `There are no ${missing} in the line-up.`);
  const locks: Lock[] = outside.map((player) => ({ playerId: player.id, sounding: "rest" }));
  return ok({ ...question, locks: [...question.locks, ...locks] });
}

/**
 * Whether lines belong to what is asked. They have no sections to keep apart: they are part of the
 * free layer and of the layer by section.
 * @param options - what is asked
 * @returns true when they do
 */
export function hasLines(options: SearchOptions): boolean {
  return options.layer !== "crossed" && options.sections === undefined;
}
