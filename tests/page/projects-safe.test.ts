import type { BrowserContext, Page } from "playwright-core";
import { afterAll, describe, expect, inject, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";
import { axeFaults, notice, openSheet, press, saved, work } from "./project-parts.ts";

afterAll(closeBrowser);

/** A further tab of the same browser. */
async function secondTab(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(inject("pageAddress"));
  return page;
}

describe("two tabs on one project", () => {
  it("say so, and the one that falls behind chooses the other version", async () => {
    const { page, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    await work(page, "Cm9");
    const other = await secondTab(page.context());
    await says(notice(other), "open in another tab");
    await work(other, "G7");
    await says(notice(page), "changed in another tab");
    await says(page.getByTestId("saved"), "not saved");
    expect(await partsOf(page).chord.inputValue()).toBe("Cm9");
    expect(await axeFaults(page)).toEqual([]);
    await partsOf(page).button("Take the other version").click();
    await saved(page).waitFor();
    expect(await partsOf(page).chord.inputValue()).toBe("G7");
    await close();
  });

  it("or keeps its own as a copy; neither is overwritten", async () => {
    const { page, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    await work(page, "Cm9");
    const other = await secondTab(page.context());
    await says(notice(other), "open in another tab");
    await work(other, "G7");
    await says(notice(page), "changed in another tab");
    await partsOf(page).chord.fill("E7");
    await partsOf(page).button("Keep this as a copy").click();
    await page.getByRole("button", { name: "Projects: Sketch 1, copy" }).waitFor();
    await saved(page).waitFor();
    await page.reload();
    await page.getByRole("button", { name: "Projects: Sketch 1, copy" }).waitFor();
    expect(await partsOf(page).chord.inputValue()).toBe("E7");
    await other.reload();
    await other.getByRole("button", { name: "Projects: Sketch 1", exact: true }).waitFor();
    expect(await partsOf(other).chord.inputValue()).toBe("G7");
    await close();
  });

  it("notice when the project is removed in one of them", async () => {
    const { page, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    await work(page, "Cm9");
    const other = await secondTab(page.context());
    await says(notice(other), "open in another tab");
    await (await openSheet(other)).getByRole("button", { name: "Remove Sketch 1" }).click();
    await says(notice(page), "removed in another tab");
    await partsOf(page).button("Keep this as a copy").click();
    await saved(page).waitFor();
    await close();
  });
});

describe("a store that cannot be used", () => {
  /** Breaks the browser's database before the page sees it. */
  async function brokenPage(how: "missing" | "refused" | "full") {
    const opened = await openPage();
    await opened.page.context().addInitScript((kind) => {
      const fail = (name: string) => () => {
        throw new DOMException("no", name);
      };
      if (kind === "missing") Object.defineProperty(window, "indexedDB", { value: undefined });
      if (kind === "refused") IDBFactory.prototype.open = fail("SecurityError");
      if (kind === "full") IDBObjectStore.prototype.put = fail("QuotaExceededError");
    }, how);
    await opened.page.reload();
    await says(partsOf(opened.page).stack, firstStack);
    return opened;
  }

  it.each([
    ["missing", "does not let this page keep projects"],
    ["refused", "does not let this page keep projects"],
    ["full", "has no room left"],
  ] as const)("because it is %s: said, a file is offered, work goes on", async (how, words) => {
    const { page, complaints, close } = await brokenPage(how);
    const parts = partsOf(page);
    await parts.chord.fill("Cm9");
    await says(notice(page), words);
    await says(page.getByTestId("saved"), "not saved");
    expect(await axeFaults(page)).toEqual([]);
    const download = page.waitForEvent("download");
    await notice(page).getByRole("button", { name: "Save as a file" }).click();
    expect((await download).suggestedFilename()).toMatch(/\.json$/);
    await parts.chord.fill("G7");
    await says(parts.stack, "F");
    await press(page, "Undo").click();
    expect(complaints).toEqual([]);
    await close();
  });

  it("that has room again takes the work", async () => {
    const { page, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    await page.evaluate(() => {
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("no", "QuotaExceededError");
      };
      Object.assign(window, { makeRoom: () => (IDBObjectStore.prototype.put = put) });
    });
    await partsOf(page).chord.fill("Cm9");
    await says(notice(page), "has no room left");
    await page.evaluate(() => void (window as unknown as { makeRoom: () => void }).makeRoom());
    await partsOf(page).button("Try again").click();
    await saved(page).waitFor();
    expect(await notice(page).count()).toBe(0);
    await close();
  });
});
