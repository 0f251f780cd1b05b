import type { PhraseReply } from "./phrase-messages.ts";
import { phraseStore } from "./phrase-store.ts";

/** Progress and trouble, the same for every search. */
export function hearOfSearch(reply: PhraseReply): void {
  if (reply.kind === "progress")
    phraseStore.setState({ searching: { done: reply.done, all: reply.all } });
  if (reply.kind === "wrong") phraseStore.setState({ problems: reply.problems, searching: null });
  if (reply.kind === "failed") phraseStore.setState({ fault: reply.message, searching: null });
}
