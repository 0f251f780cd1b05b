import { afterAll, describe, expect, it } from "vitest";
import { hearOutput, listenIn, outputPeak } from "./listen-in.ts";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

describe("hearing", () => {
  it.each(["Hit", "Sustained", "Rolled", "Section by section"])(
    "%s sounds on a real press, does not clip, and stops on Escape",
    async (way) => {
      const { page, complaints, close } = await openPage();
      await listenIn(page);
      const parts = partsOf(page);
      await says(parts.stack, firstStack);
      expect(await page.evaluate(() => window.listening?.contexts.length)).toBe(0);
      await parts.button(new RegExp(`^${way}`)).click();
      await hearOutput(page);
      expect(await outputPeak(page)).toBeLessThanOrEqual(1);
      await page.keyboard.press("Escape");
      await parts.button("Stop").waitFor({ state: "detached" });
      expect(complaints).toEqual([]);
      await close();
    },
  );

  it("thickens the threads of the notes that sound, for as long as they sound", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.button("Sustained").click();
    await page.locator(".rung-sounding").first().waitFor({ state: "attached" });
    expect(await page.locator(".rung-sounding").count()).toBe(6);
    await page.locator(".rung-sounding").first().waitFor({ state: "detached" });
    await close();
  });

  it("sounds a place of the map by a click on it", async () => {
    const { page, close } = await openPage();
    await listenIn(page);
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await page.locator(".swatch").first().click({ force: true });
    await hearOutput(page);
    await close();
  });

  it("plays kept voicings and this one in turn, equally loud", async () => {
    const { page, close } = await openPage();
    await listenIn(page);
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.button("Keep this one").click();
    await parts.choice("Level-matched").click();
    await parts.button("A, then this").click();
    await page.getByText("Now A").waitFor();
    await hearOutput(page);
    await page.getByText("Now this").waitFor();
    await page.getByText(/^[+−]?\d+\.\d LU$/).waitFor();
    await page.getByText("Space: again").waitFor();
    await close();
  });

  it("says in place when there is no sound to be had, and reading goes on", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    // A machine without audio output, as the page sees it.
    await page.evaluate(() => {
      Object.defineProperty(window, "AudioContext", {
        value: class {
          constructor() {
            throw new Error("no output");
          }
        },
      });
    });
    await parts.button("Hit").click();
    await page
      .locator(".hear")
      .getByText(/no audio output/)
      .waitFor();
    expect(await page.locator(".way-silent").count()).toBe(4);
    await parts.map.focus();
    await page.keyboard.press("ArrowUp");
    await says(parts.place, "7 notes");
    await close();
  });
});
