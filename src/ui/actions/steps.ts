import { record, redo, undo, type History } from "../../explore/index.ts";
import { page, session } from "../store.ts";
import type { Session } from "../state/session.ts";
import { answerLayer, answerQuestion, refreshView } from "./answer.ts";
import { announce } from "./announce.ts";

/**
 * Takes a step: the next session becomes the present, the one before it can be called back.
 * @param next - the session after the step
 * @param typing - field being typed in; keystrokes in one field are one step
 */
export function take(next: Session, typing: string | null = null): void {
  const { history, typing: before } = page.getState();
  const isSameField = typing !== null && typing === before;
  const changed = isSameField ? { ...history, present: next, future: [] } : record(history, next);
  arrive(history.present, () =>
    page.setState({ history: changed, typing, drag: null, swapping: null, emptyPlace: null }),
  );
}

/**
 * Changes the session without a step of its own: walking the map is not something to take back.
 * @param next - the session
 */
export function wander(next: Session): void {
  const { history } = page.getState();
  arrive(history.present, () => page.setState({ history: { ...history, present: next } }));
}

/** Ends the run of keystrokes that make one step. */
export function endTyping(): void {
  page.setState({ typing: null });
}

/** Takes the last step back. */
export function takeBack(): void {
  const { history } = page.getState();
  if (history.past.length === 0) return;
  announce(`Undone: ${history.present.step}.`);
  arrive(history.present, () =>
    page.setState({ history: undo(history), typing: null, drag: null }),
  );
}

/** Takes the step again that was taken back last. */
export function takeAgain(): void {
  const { history } = page.getState();
  if (history.future.length === 0) return;
  const next = redo(history);
  announce(`Done again: ${next.present.step}.`);
  arrive(history.present, () => page.setState({ history: next, typing: null, drag: null }));
}

/**
 * Puts other work on the page: a project that was opened, with its own undo steps.
 * @param history - the work
 */
export function openWork(history: History<Session>): void {
  page.setState({
    history,
    typing: null,
    drag: null,
    emptyPlace: null,
    nextFew: null,
    unwritten: null,
    hovered: null,
    selectedPlayer: null,
    pointed: null,
    comparedWith: null,
  });
  answerQuestion();
}

/** Changes the session and works out again what depends on what changed. */
function arrive(before: Session, change: () => void): void {
  change();
  const after = session();
  if (after.inquiry !== before.inquiry) answerQuestion();
  else if (after.layer !== before.layer || after.sections !== before.sections) answerLayer();
  else refreshView();
}
