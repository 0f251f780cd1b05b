import type { PhraseQuestion } from "../../phrase/index.ts";
import type { PhraseReply } from "./phrase-messages.ts";

type Listener = (reply: PhraseReply) => void;

let worker: Worker | undefined;
let lastId = 0;
let listening: Listener | null = null;

function theWorker(): Worker {
  if (worker !== undefined) return worker;
  worker = new Worker(new URL("./phrase-worker.ts", import.meta.url), { type: "module" });
  worker.addEventListener("message", ({ data }: MessageEvent<PhraseReply>) => {
    if (data.id === lastId) listening?.(data);
  });
  worker.addEventListener("error", ({ message }) =>
    listening?.({ kind: "failed", id: lastId, message: message || "the search could not start" }),
  );
  return worker;
}

/** Calls off whatever the worker does. */
export function stopWorker(): void {
  listening = null;
  if (worker !== undefined) worker.postMessage({ kind: "stop", upTo: lastId });
}

/** Voices a phrase; what was asked before is called off. */
export function askWorker(question: PhraseQuestion, listener: Listener): void {
  begin(listener, (id) => theWorker().postMessage({ kind: "solve", id, question }));
}

/** Looks for so many answers that differ to the ear. */
export function askAlternatives(question: PhraseQuestion, count: number, listener: Listener): void {
  begin(listener, (id) => theWorker().postMessage({ kind: "alternatives", id, question, count }));
}

function begin(listener: Listener, send: (id: number) => void): void {
  stopWorker();
  lastId += 1;
  listening = listener;
  send(lastId);
}
