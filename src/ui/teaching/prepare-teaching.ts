import { page, session } from "../store.ts";
import { freshQuiz, teaching } from "./teaching-store.ts";
import type { TeachingReply, TeachingRequest } from "./teaching-messages.ts";

let worker: Worker | undefined;

/**
 * A whole number nobody can foresee.
 * @returns 0 and up, 32 bits
 */
export function freshSeed(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
}

/** Works out lessons and quiz for the question in view, unless that has been done. */
export function prepareTeaching(): void {
  const { answer, view } = page.getState();
  const asked = answer?.asked ?? null;
  const { asked: before, deck } = teaching.getState();
  if (asked === before && (deck !== null || worker !== undefined)) return;
  leaveTeaching();
  teaching.setState({
    asked,
    parts: null,
    deck: null,
    fault: null,
    moved: {},
    quiz: freshQuiz,
  });
  if (asked === null) return;
  const near = view?.report.cell ?? session().place;
  const { question } = asked;
  worker = new Worker(new URL("./teaching-worker.ts", import.meta.url), { type: "module" });
  worker.addEventListener("message", (event: MessageEvent<TeachingReply>) => heard(event.data));
  worker.postMessage({ question, near, seed: freshSeed() } satisfies TeachingRequest);
}

/** Ends work that is not needed any more. */
export function leaveTeaching(): void {
  worker?.terminate();
  worker = undefined;
}

function heard(reply: TeachingReply): void {
  switch (reply.kind) {
    case "first-parts":
    case "all-parts":
      return teaching.setState({ parts: reply.parts });
    case "deck":
      teaching.setState({ deck: reply.deck });
      return leaveTeaching();
    case "failed":
      teaching.setState({ fault: reply.message });
      return leaveTeaching();
  }
}
