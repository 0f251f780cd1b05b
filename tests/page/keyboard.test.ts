import type { Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";
import { hearOutput, listenIn, outputPeak } from "./listen-in.ts";

afterAll(closeBrowser);

/** Presses Tab until something answers to a test, and says how many presses it took. */
async function tabTo(page: Page, isThere: () => Promise<boolean>): Promise<number> {
  for (let presses = 1; presses <= 40; presses += 1) {
    await page.keyboard.press("Tab");
    if (await isThere()) return presses;
  }
  throw new Error("forty presses of Tab did not get there");
}

const focused = (page: Page, selector: string) => () =>
  page.evaluate((css) => document.activeElement?.matches(css) ?? false, selector);

describe("by keyboard alone", () => {
  it("goes from loading the page to hearing another texture", async () => {
    const { page, complaints, close } = await openPage();
    await listenIn(page);
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await tabTo(page, focused(page, "input[placeholder='F13']"));
    await page.keyboard.press("Control+a");
    await page.keyboard.type("Cm9");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Control+a");
    await page.keyboard.type("Bb4");
    await says(parts.stack, /B♭4$/);
    await tabTo(page, focused(page, "[data-testid='map']"));
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("Enter");
    await hearOutput(page);
    expect(await outputPeak(page)).toBeLessThanOrEqual(1);
    await page.keyboard.press("Escape");
    expect(complaints).toEqual([]);
    await close();
  });

  it("has one tab stop each for tones, layer, players, map, tokens and ways to hear", async () => {
    const { page, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    const stops = await page.evaluate(() =>
      [
        ".tones button",
        ".map-layer .choice button",
        ".players-bar",
        "[data-testid='map']",
        ".token",
        ".way",
      ].map(
        (css) =>
          [...document.querySelectorAll(css)].filter((one) => (one as HTMLElement).tabIndex === 0)
            .length,
      ),
    );
    expect(stops).toEqual([1, 1, 1, 1, 1, 1]);
    await close();
  });

  it("moves inside each group with the arrow keys", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.token("tpt1").focus();
    await page.keyboard.press("ArrowRight");
    expect(await focused(page, "[data-player='tpt2']")()).toBe(true);
    await parts.choice("Free").focus();
    await page.keyboard.press("ArrowRight");
    expect(await focused(page, "[role='radio']")()).toBe(true);
    expect(await parts.choice("By section").getAttribute("aria-checked")).toBe("true");
    await page.locator(".tone").first().focus();
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "flat 9, G flat: on" }).waitFor();
    await close();
  });
});
