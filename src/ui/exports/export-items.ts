import { readInquiry } from "../../explore/index.ts";
import type { Question, Voicing } from "../../voicing/index.ts";
import type { Kept } from "../state/session.ts";
import { voicingOf } from "../state/view-of.ts";
import { page, session } from "../store.ts";
import { thisOne } from "../actions/sound-piece.ts";

/** What is saved: the voicing in view, the chosen ones, or all that are kept. */
export type ExportScope = "view" | "chosen" | "all";

/** One voicing to be saved. */
export interface ExportItem {
  /** Its letter; "this" for the voicing in view. */
  readonly letter: string;
  readonly name: string;
  readonly note: string;
  readonly voicing: Voicing;
  readonly question: Question;
}

/**
 * Voicings to be saved.
 * @param scope - which
 * @returns in the order of the kept list; empty where there is nothing to save
 */
export function exportItems(scope: ExportScope): readonly ExportItem[] {
  const { kept, compared } = session();
  if (scope === "all") return kept.flatMap(keptItem);
  if (scope === "chosen")
    return kept.filter(({ letter }) => compared.includes(letter)).flatMap(keptItem);
  const { view, answer } = page.getState();
  if (view === null || answer === null) return [];
  const { question } = answer.asked;
  return [{ letter: thisOne, name: "", note: "", voicing: view.voicing, question }];
}

function keptItem({ letter, name, note = "", pitches, inquiry }: Kept): readonly ExportItem[] {
  const reading = readInquiry(inquiry);
  if (!reading.ok) return [];
  const { question } = reading;
  return [{ letter, name, note, voicing: voicingOf(pitches, question), question }];
}

/**
 * What a file's name says of its voicings.
 * @param items - at least one
 * @returns chord and melody of the voicing in view; letter and name of one; letters of several
 */
export function nameWords(items: readonly ExportItem[]): readonly string[] {
  const [first, ...others] = items;
  if (first === undefined) return [];
  if (first.letter === thisOne) {
    const { inquiry } = session();
    return [inquiry.chordText, inquiry.melodyText];
  }
  if (others.length === 0) return [first.letter, first.name, first.question.chord.display];
  const letters = items.map(({ letter }) => letter);
  return ["kept", ...(letters.length > 6 ? [first.letter, "to", letters.at(-1) ?? ""] : letters)];
}
