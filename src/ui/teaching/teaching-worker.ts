/// <reference lib="webworker" />
import {
  lessonParts,
  lessonTextures,
  quizDeck,
  searchSteps,
  type LessonTexture,
} from "../../explore/index.ts";
import type { LayerId, Question } from "../../voicing/index.ts";
import type { TeachingReply, TeachingRequest } from "./teaching-messages.ts";

function tell(reply: TeachingReply): void {
  postMessage(reply);
}

function texturesOf(question: Question, layer: LayerId): readonly LessonTexture[] {
  const search = searchSteps(question, layer);
  let step = search.next();
  while (step.done !== true) step = search.next();
  return lessonTextures(question, layer, step.value.cells);
}

function work({ question, near, seed }: TeachingRequest): void {
  const free = texturesOf(question, "free");
  const first = lessonParts(free, near).filter((part) => part.idea !== "interleaving");
  tell({ kind: "first-parts", parts: first });
  const all = [...free, ...texturesOf(question, "by-section"), ...texturesOf(question, "crossed")];
  tell({ kind: "all-parts", parts: lessonParts(all, near) });
  tell({ kind: "deck", deck: quizDeck(question, all, seed) });
}

addEventListener("message", (event: MessageEvent<TeachingRequest>) => {
  try {
    work(event.data);
  } catch (fault) {
    tell({ kind: "failed", message: fault instanceof Error ? fault.message : String(fault) });
  }
});
