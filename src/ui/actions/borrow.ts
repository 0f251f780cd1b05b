import type { Inquiry } from "../../explore/index.ts";
import type { MomentLock } from "../../phrase/index.ts";
import type { SoundingMidi } from "../../base/index.ts";
import type { Borrowed } from "../state/page-state.ts";
import { withInquiry, type Pitches } from "../state/session.ts";
import { page, session } from "../store.ts";
import { announce } from "./announce.ts";
import { showPane } from "./pane.ts";
import { take } from "./steps.ts";

/**
 * Opens a moment of the phrase on the one-chord page.
 * @param borrowed - which moment
 * @param inquiry - the moment as a question
 * @param pitches - its voicing
 */
export function borrow(borrowed: Borrowed, inquiry: Inquiry, pitches: Pitches): void {
  const step = `open ${borrowed.where}`;
  const asked = withInquiry(session(), inquiry, step);
  const made = { by: "kept" as const, pitches, moved: [], from: pitches, title: borrowed.where };
  take({ ...asked, made });
  page.setState({ borrowed });
  showPane("chord");
}

/** Fixes the voicing in view at the moment it came from, and goes back to the phrase. */
export function holdBorrowed(): void {
  const { borrowed, view } = page.getState();
  const now = session();
  if (borrowed === null || view === null || now.phrase === null) return leaveBorrowed();
  const { question } = now.phrase;
  const known = new Set(question.players.map(({ id }) => id));
  const pitches = Object.fromEntries(
    Object.entries(view.pitches).filter(([id]) => known.has(id)),
  ) as Record<string, SoundingMidi>;
  const lock: MomentLock = { momentId: borrowed.momentId, pitches };
  const { moments, notes } = question.locks;
  const others = <T extends { readonly momentId: string }>(all: readonly T[]) =>
    all.filter(({ momentId }) => momentId !== borrowed.momentId);
  const locks = { moments: [...others(moments), lock], notes: others(notes) };
  take({
    ...now,
    phrase: { ...now.phrase, question: { ...question, locks }, alternative: 0 },
    step: `fix ${borrowed.where}`,
  });
  announce(`Fixed at ${borrowed.where}; the rest is found anew.`);
  leaveBorrowed();
}

/** Goes back to the phrase. */
export function leaveBorrowed(): void {
  page.setState({ borrowed: null });
  showPane("phrase");
}
