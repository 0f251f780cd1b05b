/// <reference lib="webworker" />
import { metrics } from "../metrics/index.ts";
import {
  bestOfCell,
  referencePoints,
  searchSteps,
  unwritten,
  voicingOfCell,
} from "../explore/index.ts";
import type { AtlasCell, Question } from "../voicing/index.ts";
import { traitsOf, type CellTraits } from "./state/map-filter.ts";
import type { ShownLayer } from "./state/shown-layer.ts";
import { rulesThatEmpty } from "./state/rules-that-empty.ts";
import type { SearchReply, SearchRequest, Shade } from "./search-messages.ts";

/** How long the worker works before it listens for the next message, ms. */
const turnMs = 12;

/** A running search reports so often at most: the page draws what it is told, ms. */
const reportMs = 150;

/** Searches and shadings numbered so or lower have been called off. */
const calledOff = { search: 0, shade: 0 };
const bell = new MessageChannel();
const waiting: (() => void)[] = [];
bell.port1.onmessage = () => waiting.shift()?.();

/** Lets waiting messages in: a message to ourselves queues behind them, without a timer's delay. */
function listen(): Promise<void> {
  return new Promise((heard) => {
    waiting.push(heard);
    bell.port2.postMessage(0);
  });
}

function tell(reply: SearchReply): void {
  postMessage(reply);
}

/** Options of the search for the sections of a layer. */
function within({ sections }: ShownLayer) {
  return sections === null ? {} : { sections };
}

async function search(id: number, question: Question, layer: ShownLayer): Promise<void> {
  if (id <= calledOff.search) return;
  const steps = searchSteps(question, layer.layer, within(layer));
  let found: AtlasCell[] = [];
  let nextReport = 0;
  for (;;) {
    const step = steps.next();
    if (step.done === true) {
      const { cells, counts, emptiedBy } = step.value;
      return tell({ kind: "done", id, cells, counts, emptiedBy });
    }
    const { cells, groupsDone, groups } = step.value;
    found.push(...cells);
    if (performance.now() >= nextReport) {
      tell({ kind: "found", id, cells: found, groupsDone, groups });
      found = [];
      nextReport = performance.now() + reportMs;
    }
    await listen();
    if (id <= calledOff.search) return;
  }
}

async function shade(request: Extract<SearchRequest, { kind: "shade" }>): Promise<void> {
  const { id, question, cells, metricId } = request;
  const metric = metrics.find((candidate) => candidate.id === metricId);
  if (metric === undefined) throw new RangeError(`no measure is called "${metricId}"`);
  const { chord, lead, dynamic, bassSounds } = question;
  const situation = { chord, lead, dynamic, bassSounds };
  let from = 0;
  while (from < cells.length) {
    const shades: Shade[] = [];
    const end = performance.now() + turnMs;
    while (from + shades.length < cells.length && performance.now() < end) {
      const cell = cells[from + shades.length];
      if (cell === undefined) break;
      const { value, text } = metric.measure(voicingOfCell(question, cell), situation);
      shades.push({ value, text });
    }
    tell({ kind: "shaded", id, from, shades });
    from += shades.length;
    await listen();
    if (id <= calledOff.shade) return;
  }
}

/** Works out what textures are like, letting other requests in between. */
async function traits(id: number, question: Question, cells: readonly AtlasCell[]): Promise<void> {
  const found: CellTraits[] = [];
  while (found.length < cells.length) {
    const end = performance.now() + turnMs;
    while (found.length < cells.length && performance.now() < end)
      found.push(traitsOf(question, cells[found.length]!));
    await listen();
  }
  tell({ kind: "traits", id, traits: found });
}

async function answer(request: SearchRequest): Promise<void> {
  switch (request.kind) {
    case "search":
      return search(request.id, request.question, request.layer);
    case "shade":
      return shade(request);
    case "next-few": {
      const { id, question, key, layer, count } = request;
      const cells = bestOfCell(question, key, layer.layer, count, within(layer));
      return tell({ kind: "next-few", id, cells });
    }
    case "why-empty": {
      const { id, question, key, layer } = request;
      const isOpen = (asked: Question) =>
        bestOfCell(asked, key, layer.layer, 1, within(layer)).length > 0;
      return tell({ kind: "why-empty", id, rules: rulesThatEmpty(question, isOpen) });
    }
    case "unwritten": {
      const { id, question, cells, count } = request;
      const found = unwritten(question, cells, referencePoints(question), count);
      return tell({ kind: "unwritten", id, found });
    }
    case "traits":
      return traits(request.id, request.question, request.cells);
    case "stop":
      calledOff[request.of] = request.upTo;
  }
}

addEventListener("message", (event: MessageEvent<SearchRequest>) => {
  const request = event.data;
  answer(request).catch((fault: unknown) => {
    const id = request.kind === "stop" ? 0 : request.id;
    tell({ kind: "failed", id, message: fault instanceof Error ? fault.message : String(fault) });
  });
});
