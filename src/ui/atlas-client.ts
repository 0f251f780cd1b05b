import type { AtlasCell, AtlasCounts, CellKey, Question, RuleId } from "../voicing/index.ts";
import type { Unwritten } from "../explore/index.ts";
import type { CellTraits } from "./state/map-filter.ts";
import type { ShownLayer } from "./state/shown-layer.ts";
import type { SearchReply, SearchRequest, Shade } from "./search-messages.ts";

/** What a running search tells. */
export interface SearchListener {
  /** New cells, final; how far the search has come. */
  readonly found: (cells: readonly AtlasCell[], groupsDone: number, groups: number) => void;
  /** The whole map. */
  readonly done: (
    cells: readonly AtlasCell[],
    counts: AtlasCounts,
    emptiedBy: readonly RuleId[],
  ) => void;
  readonly failed: (message: string) => void;
}

/** The page's side of its worker. A new search ends the one before it. */
export interface AtlasClient {
  readonly search: (question: Question, layer: ShownLayer, listener: SearchListener) => void;
  readonly stopSearch: () => void;
  readonly stopShading: () => void;
  readonly shade: (
    question: Question,
    cells: readonly AtlasCell[],
    metricId: string,
    shaded: (from: number, shades: readonly Shade[]) => void,
  ) => void;
  readonly nextFew: (
    question: Question,
    key: CellKey,
    layer: ShownLayer,
    count: number,
  ) => Promise<readonly AtlasCell[]>;
  readonly whyEmpty: (
    question: Question,
    key: CellKey,
    layer: ShownLayer,
  ) => Promise<readonly RuleId[]>;
  readonly unwritten: (
    question: Question,
    cells: readonly AtlasCell[],
    count: number,
  ) => Promise<readonly Unwritten[]>;
  readonly traits: (
    question: Question,
    cells: readonly AtlasCell[],
  ) => Promise<readonly CellTraits[]>;
}

type Heard = (reply: SearchReply) => void;
/** A request before it has its number. */
type Unnumbered = SearchRequest extends infer Each
  ? Each extends { readonly id: number }
    ? Omit<Each, "id">
    : never
  : never;

/** Sends numbered requests and hears their replies. */
interface WorkerLine {
  readonly send: (request: Unnumbered, heard: Heard) => number;
  readonly forget: (id: number) => void;
  /** Ends every request of a kind sent so far. */
  readonly stop: (of: "search" | "shade", ids: Iterable<number>) => void;
}

function openLine(worker: Worker): WorkerLine {
  const hearing = new Map<number, Heard>();
  let lastId = 0;
  worker.addEventListener("message", (event: MessageEvent<SearchReply>) => {
    hearing.get(event.data.id)?.(event.data);
  });
  return {
    send(request, heard) {
      lastId += 1;
      hearing.set(lastId, heard);
      worker.postMessage({ ...request, id: lastId });
      return lastId;
    },
    forget: (id) => hearing.delete(id),
    stop(of, ids) {
      for (const id of ids) hearing.delete(id);
      worker.postMessage({ kind: "stop", of, upTo: lastId } satisfies SearchRequest);
    },
  };
}

/** Asks for one reply. */
function once<T>(
  line: WorkerLine,
  request: Unnumbered,
  read: (reply: SearchReply) => T | undefined,
): Promise<T> {
  return new Promise((resolve, reject) => {
    const id = line.send(request, (reply) => {
      line.forget(id);
      const value = read(reply);
      if (value !== undefined) resolve(value);
      else reject(new Error(reply.kind === "failed" ? reply.message : "unexpected reply"));
    });
  });
}

/**
 * Starts the worker.
 * @returns the client
 */
export function startAtlasClient(): AtlasClient {
  const line = openLine(
    new Worker(new URL("./atlas-worker.ts", import.meta.url), { type: "module" }),
  );
  const running = { search: new Set<number>(), shade: new Set<number>() };
  const stop = (of: "search" | "shade") => {
    if (running[of].size > 0) line.stop(of, running[of]);
    running[of].clear();
  };
  const end = (of: "search" | "shade", id: number) => {
    line.forget(id);
    running[of].delete(id);
  };
  return {
    search(question, layer, listener) {
      stop("search");
      const id = line.send({ kind: "search", question, layer }, (reply) => {
        if (reply.kind === "found")
          return listener.found(reply.cells, reply.groupsDone, reply.groups);
        end("search", id);
        if (reply.kind === "done") listener.done(reply.cells, reply.counts, reply.emptiedBy);
        else if (reply.kind === "failed") listener.failed(reply.message);
      });
      running.search.add(id);
    },
    stopSearch: () => stop("search"),
    stopShading: () => stop("shade"),
    shade(question, cells, metricId, shaded) {
      const id = line.send({ kind: "shade", question, cells, metricId }, (reply) => {
        if (reply.kind !== "shaded") return end("shade", id);
        shaded(reply.from, reply.shades);
        if (reply.from + reply.shades.length === cells.length) end("shade", id);
      });
      running.shade.add(id);
    },
    nextFew: (question, key, layer, count) =>
      once(line, { kind: "next-few", question, key, layer, count }, (reply) =>
        reply.kind === "next-few" ? reply.cells : undefined,
      ),
    whyEmpty: (question, key, layer) =>
      once(line, { kind: "why-empty", question, key, layer }, (reply) =>
        reply.kind === "why-empty" ? reply.rules : undefined,
      ),
    unwritten: (question, cells, count) =>
      once(line, { kind: "unwritten", question, cells, count }, (reply) =>
        reply.kind === "unwritten" ? reply.found : undefined,
      ),
    traits: (question, cells) =>
      once(line, { kind: "traits", question, cells }, (reply) =>
        reply.kind === "traits" ? reply.traits : undefined,
      ),
  };
}
