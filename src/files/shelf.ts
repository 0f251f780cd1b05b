import { createStore, del, entries, get, update } from "idb-keyval";

/** A plain store of values by key, each step whole or not at all. */
export interface Shelf {
  readonly entries: () => Promise<readonly (readonly [string, unknown])[]>;
  readonly get: (key: string) => Promise<unknown>;
  /** Reads and writes in one step; nothing is written when `change` throws. */
  readonly update: (key: string, change: (before: unknown) => unknown) => Promise<void>;
  readonly remove: (key: string) => Promise<void>;
}

/**
 * A shelf in the browser's database. Nothing is opened before the first use; a browser without a
 * database, or one that refuses it, answers each use with a rejection.
 * @param database - its name
 * @returns the shelf
 */
export function indexedShelf(database = "hornweave"): Shelf {
  const store = createStore(database, "projects");
  return {
    entries: async () => {
      const all = await entries<string, unknown>(store);
      return all.filter(([key]) => typeof key === "string");
    },
    get: async (key) => get<unknown>(key, store),
    update: async (key, change) => update<unknown>(key, change, store),
    remove: async (key) => del(key, store),
  };
}
