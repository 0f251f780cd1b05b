import { describe, expect, it } from "vitest";
import type { Shelf } from "../../src/files/shelf.ts";
import { openProjectStore, type ProjectStore } from "../../src/files/storage.ts";
import { sampleProject } from "./support/projects.ts";

/** A shelf in memory; the one in a browser is tried in a browser. */
function memoryShelf(values = new Map<string, unknown>()): Shelf {
  return {
    entries: async () => [...values],
    get: async (key) => values.get(key),
    update: async (key, change) => void values.set(key, change(values.get(key))),
    remove: async (key) => void values.delete(key),
  };
}

const refusing = (name: string): Shelf => {
  const refuse = async () => {
    throw new DOMException("no", name);
  };
  return { entries: refuse, get: refuse, update: refuse, remove: refuse };
};

const save = (store: ProjectStore, baseRevision: number, id = "one", nowMilliseconds = 1) =>
  store.save({ id, project: sampleProject, baseRevision, nowMilliseconds });

describe("stored projects", () => {
  it("come back with their history", async () => {
    const store = openProjectStore(memoryShelf());
    const entry = { id: "one", name: sampleProject.name, savedAtMilliseconds: 1, revision: 1 };
    expect(await save(store, 0)).toEqual({ ok: true, value: { ...entry, stepsLeftOut: 0 } });
    expect(await store.load("one")).toMatchObject({
      ok: true,
      value: { project: sampleProject, entry },
    });
  });

  it("are listed, the latest first; what is no project is passed over", async () => {
    const values = new Map<string, unknown>([["junk", 5]]);
    const store = openProjectStore(memoryShelf(values));
    await save(store, 0, "old", 10);
    await save(store, 0, "new", 20);
    const listed = await store.list();
    expect(listed.ok && listed.value.map(({ id }) => id)).toEqual(["new", "old"]);
  });

  it("are not overwritten by a tab that began from an older revision", async () => {
    const shelf = memoryShelf();
    const [here, there] = [openProjectStore(shelf), openProjectStore(shelf)];
    await save(here, 0);
    expect(await save(there, 1)).toMatchObject({ ok: true, value: { revision: 2 } });
    expect(await save(here, 1)).toMatchObject({ problem: { code: "project-conflict" } });
    expect(await save(here, 0)).toMatchObject({ problem: { code: "project-conflict" } });
    expect(await here.load("one")).toMatchObject({ value: { entry: { revision: 2 } } });
  });

  it("that another tab removed are not brought back silently", async () => {
    const store = openProjectStore(memoryShelf());
    await save(store, 0);
    expect(await store.remove("one")).toEqual({ ok: true, value: null });
    expect(await save(store, 1)).toMatchObject({ problem: { code: "project-gone" } });
    expect(await store.load("one")).toMatchObject({ problem: { code: "project-gone" } });
  });

  it("that were damaged on disk are refused like a damaged file", async () => {
    const values = new Map<string, unknown>();
    const store = openProjectStore(memoryShelf(values));
    await save(store, 0);
    values.set("one", { ...(values.get("one") as object), text: '{"format":1}' });
    expect(await store.load("one")).toMatchObject({ problem: { code: "project-damaged" } });
  });
});

describe("a store that cannot be used", () => {
  it("says that it is full", async () => {
    const store = openProjectStore(refusing("QuotaExceededError"));
    expect(await save(store, 0)).toMatchObject({ problem: { code: "storage-full" } });
  });

  it("says that the browser refuses it, for every use", async () => {
    const store = openProjectStore(refusing("SecurityError"));
    const refused = { ok: false, problem: { code: "storage-refused", message: /as a file/ } };
    expect(await save(store, 0)).toMatchObject(refused);
    expect(await store.list()).toMatchObject(refused);
    expect(await store.load("one")).toMatchObject(refused);
    expect(await store.remove("one")).toMatchObject(refused);
  });

  it("is said to be refused where there is no database at all", async () => {
    expect(await openProjectStore().list()).toMatchObject({
      problem: { code: "storage-refused" },
    });
  });
});
