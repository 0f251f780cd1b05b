import { afterEach, describe, expect, it } from "vitest";
import { openProjectStore, type ProjectStore } from "../../src/files/index.ts";
import { indexedShelf } from "../../src/files/shelf.ts";
import { sampleProject } from "../files/support/projects.ts";

const database = "hornweave-storage-test";
const openTab = (): ProjectStore => openProjectStore(indexedShelf(database));
const save = (store: ProjectStore, baseRevision: number, id = "one") =>
  store.save({ id, project: sampleProject, baseRevision, nowMilliseconds: 1 });

afterEach(async () => {
  const store = openTab();
  const listed = await store.list();
  for (const { id } of listed.ok ? listed.value : []) await store.remove(id);
});

describe("projects in the browser's own database", () => {
  it("are there again for a page that is opened anew, undo history included", async () => {
    expect(await save(openTab(), 0)).toMatchObject({ ok: true, value: { revision: 1 } });
    const again = openTab();
    expect(await again.list()).toMatchObject({ value: [{ id: "one", revision: 1 }] });
    expect(await again.load("one")).toMatchObject({ value: { project: sampleProject } });
  });

  it("are saved once when two tabs save on top of the same revision at the same time", async () => {
    const tabs = [openTab(), openTab(), openTab()];
    await save(tabs[0]!, 0);
    const answers = await Promise.all(tabs.map((tab) => save(tab, 1)));
    const codes = answers.map((answer) => (answer.ok ? "saved" : answer.problem.code));
    expect(codes.sort()).toEqual(["project-conflict", "project-conflict", "saved"]);
    expect(await openTab().load("one")).toMatchObject({ value: { entry: { revision: 2 } } });
  });

  it("are left alone by a refused save", async () => {
    const store = openTab();
    await save(store, 0);
    await save(store, 5);
    expect(await store.list()).toMatchObject({ value: [{ revision: 1 }] });
  });
});
