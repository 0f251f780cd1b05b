import type {
  AtlasCell,
  AtlasCounts,
  CellKey,
  LayerId,
  Question,
  RuleId,
} from "../voicing/index.ts";
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
  readonly search: (question: Question, layer: LayerId, listener: SearchListener) => void;
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
    layer: LayerId,
    count: number,
  ) => Promise<readonly AtlasCell[]>;
  readonly whyEmpty: (
    question: Question,
    key: CellKey,
    layer: LayerId,
  ) => Promise<readonly RuleId[]>;
}

type Heard = (reply: SearchReply) => void;
/** A request before it has its number. */
type Unnumbered = SearchRequest extends infer Each
  ? Each extends { readonly id: number }
    ? Omit<Each, "id">
    : never
  : never;

/**
 * Starts the worker.
 * @returns the client
 */
export function startAtlasClient(): AtlasClient {
  const worker = new Worker(new URL("./atlas-worker.ts", import.meta.url), { type: "module" });
  const hearing = new Map<number, Heard>();
  const running = { search: new Set<number>(), shade: new Set<number>() };
  let lastId = 0;

  worker.addEventListener("message", (event: MessageEvent<SearchReply>) => {
    hearing.get(event.data.id)?.(event.data);
  });

  const send = (request: Unnumbered, heard: Heard): number => {
    lastId += 1;
    hearing.set(lastId, heard);
    worker.postMessage({ ...request, id: lastId });
    return lastId;
  };
  const stop = (of: "search" | "shade") => {
    if (running[of].size === 0) return;
    for (const id of running[of]) hearing.delete(id);
    running[of].clear();
    worker.postMessage({ kind: "stop", of, upTo: lastId } satisfies SearchRequest);
  };
  const forget = (of: "search" | "shade", id: number) => {
    hearing.delete(id);
    running[of].delete(id);
  };
  const once = <T>(request: Unnumbered, read: (reply: SearchReply) => T | undefined): Promise<T> =>
    new Promise((resolve, reject) => {
      const id = send(request, (reply) => {
        hearing.delete(id);
        const value = read(reply);
        if (value !== undefined) resolve(value);
        else reject(new Error(reply.kind === "failed" ? reply.message : "unexpected reply"));
      });
    });

  return {
    search(question, layer, listener) {
      stop("search");
      const id = send({ kind: "search", question, layer }, (reply) => {
        if (reply.kind === "found")
          return listener.found(reply.cells, reply.groupsDone, reply.groups);
        forget("search", id);
        if (reply.kind === "done") listener.done(reply.cells, reply.counts, reply.emptiedBy);
        else if (reply.kind === "failed") listener.failed(reply.message);
      });
      running.search.add(id);
    },
    stopSearch: () => stop("search"),
    stopShading: () => stop("shade"),
    shade(question, cells, metricId, shaded) {
      const id = send({ kind: "shade", question, cells, metricId }, (reply) => {
        if (reply.kind !== "shaded") return forget("shade", id);
        shaded(reply.from, reply.shades);
        if (reply.from + reply.shades.length === cells.length) forget("shade", id);
      });
      running.shade.add(id);
    },
    nextFew: (question, key, layer, count) =>
      once({ kind: "next-few", question, key, layer, count }, (reply) =>
        reply.kind === "next-few" ? reply.cells : undefined,
      ),
    whyEmpty: (question, key, layer) =>
      once({ kind: "why-empty", question, key, layer }, (reply) =>
        reply.kind === "why-empty" ? reply.rules : undefined,
      ),
  };
}
