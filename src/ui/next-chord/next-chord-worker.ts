/// <reference lib="webworker" />
import { continuations, readPhrase, stepQuestion } from "../../phrase/index.ts";
import type { NextReply, NextRequest } from "./next-chord-messages.ts";

addEventListener("message", ({ data }: MessageEvent<NextRequest>) => {
  postMessage(answer(data));
});

function answer({ id, request }: NextRequest): NextReply {
  try {
    const phrase = readPhrase(stepQuestion(request));
    if (!phrase.ok) {
      const [problem] = phrase.problems;
      return { id, ok: false, message: withoutPlace(problem?.message ?? "") };
    }
    return { id, ok: true, found: continuations(phrase.value) };
  } catch (fault) {
    const message = fault instanceof Error ? fault.message : String(fault);
    return { id, ok: false, message };
  }
}

/** There are no bars here: "Bar 1, beat 1: Nobody reaches …" loses its place. */
function withoutPlace(message: string): string {
  return message.replace(/^(?:Bar|Beat|The pickup)[^:]*: /i, "");
}
