/// <reference lib="webworker" />
import {
  readPhrase,
  searchAlternatives,
  searchPhrase,
  type Phrase,
  type PhraseQuestion,
} from "../../phrase/index.ts";
import type { PhraseReply, PhraseRequest } from "./phrase-messages.ts";

/** Requests numbered so or lower have been called off. */
let calledOff = 0;
const bell = new MessageChannel();
const waiting: (() => void)[] = [];
bell.port1.onmessage = () => waiting.shift()?.();

/** Lets waiting messages in, without a timer's delay. */
function listen(): Promise<void> {
  return new Promise((heard) => {
    waiting.push(heard);
    bell.port2.postMessage(0);
  });
}

function tell(reply: PhraseReply): void {
  postMessage(reply);
}

/** The phrase of a question, or nothing once the page was told what is wrong with it. */
function read(id: number, question: PhraseQuestion): Phrase | undefined {
  const phrase = readPhrase(question);
  if (phrase.ok) return phrase.value;
  tell({ kind: "wrong", id, problems: phrase.problems });
  return undefined;
}

async function solve(id: number, question: PhraseQuestion): Promise<void> {
  // Whoever types asks often: only the last question is worth beginning.
  await listen();
  if (id <= calledOff) return;
  const phrase = read(id, question);
  if (phrase === undefined) return;
  tell({ kind: "read", id, phrase });
  const search = searchPhrase(phrase);
  for (let step = search.next(); ; step = search.next()) {
    if (step.done === true) return;
    const { stage, momentsDone, moments, answer } = step.value;
    if (answer === undefined) tell({ kind: "progress", id, done: momentsDone, all: moments });
    else tell({ kind: "answer", id, answer, isWhole: stage === "full" });
    await listen();
    if (id <= calledOff) return;
  }
}

/** Searches that alternatives may take: each is told as a share of the whole. */
const likelySearches = 4;

async function alternatives(id: number, question: PhraseQuestion, count: number): Promise<void> {
  const phrase = read(id, question);
  if (phrase === undefined) return;
  const search = searchAlternatives(phrase, question.curves, count);
  let searches = 0;
  let current = "";
  for (let step = search.next(); ; step = search.next()) {
    if (step.done === true) return tell({ kind: "alternatives", id, alternatives: step.value });
    const { id: row, progress } = step.value;
    if (row !== current) searches += 1;
    current = row;
    const all = progress.moments * Math.max(searches, likelySearches);
    const before = (searches - 1) * progress.moments;
    const inThis = progress.stage === "full" ? progress.momentsDone : 0;
    tell({ kind: "progress", id, done: before + inThis, all });
    await listen();
    if (id <= calledOff) return;
  }
}

addEventListener("message", ({ data }: MessageEvent<PhraseRequest>) => {
  if (data.kind === "stop") {
    calledOff = data.upTo;
    return;
  }
  const { id, question } = data;
  const work = data.kind === "solve" ? solve(id, question) : alternatives(id, question, data.count);
  work.catch((fault: unknown) =>
    tell({ kind: "failed", id, message: fault instanceof Error ? fault.message : String(fault) }),
  );
});
