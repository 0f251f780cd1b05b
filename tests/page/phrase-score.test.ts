import { readFile } from "node:fs/promises";
import AxeBuilder from "@axe-core/playwright";
import { afterAll, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

async function shout(options: Parameters<typeof openPage>[0]) {
  const open = await openPage(options);
  const { page } = open;
  const parts = partsOf(page);
  await says(parts.stack, firstStack);
  await page.getByRole("radio", { name: "Phrase" }).click();
  await parts.button("Tidemill Shout").click();
  await page.locator('[data-testid="phrase-state"][data-whole="true"]').waitFor();
  const score = page.getByTestId("score");
  await score.scrollIntoViewIfNeeded();
  await score.getByRole("img").first().waitFor();
  return { ...open, ...parts, score };
}

it("shows thirteen staves, a staff a section, and one line as its player reads it", async () => {
  const { page, score, choice, complaints, close } = await shout({
    viewport: { width: 1440, height: 900 },
  });
  const first = score.getByRole("img").first();
  expect(await first.getAttribute("aria-label")).toMatch(/pickup to bar \d, 13 staves, concert/);
  await choice("Condensed").click();
  await score
    .getByRole("img", { name: /4 staves/ })
    .first()
    .waitFor();
  await choice("One line").click();
  await choice("Written").click();
  await score
    .getByRole("img", { name: /Trumpet 1, as written/ })
    .first()
    .waitFor();
  const { violations } = await new AxeBuilder({ page }).include(".phrase-score").analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);
  expect(complaints).toEqual([]);
  await close();
});

it("goes to the note that is pressed, and by arrow keys from there", async () => {
  const { page, score, spoken, close } = await shout({ viewport: { width: 1440, height: 900 } });
  const head = score.locator(".vf-notehead").first();
  await head.scrollIntoViewIfNeeded();
  await head.click({ force: true });
  await page.locator(".score-note").first().waitFor();
  await score.focus();
  await page.keyboard.press("ArrowRight");
  await says(spoken, /the pickup|Bar 1/i);
  await close();
});

it("hands the score over as SVG and PNG that need no font", async () => {
  const { page, button, complaints, close } = await shout({
    viewport: { width: 1440, height: 900 },
  });
  for (const [kind, begins] of [
    ["SVG", "<?xml"],
    ["PNG", "\u{fffd}PNG"],
  ] as const) {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      button(`Save as ${kind}`).click(),
    ]);
    const content = await readFile(await download.path(), "utf8");
    expect(content.startsWith(begins)).toBe(true);
    if (kind === "SVG") expect(content).not.toContain("<text");
  }
  expect(complaints).toEqual([]);
  await close();
});

it("plays with a cursor in the score, and Escape ends both", async () => {
  const { page, complaints, close } = await shout({ viewport: { width: 1440, height: 900 } });
  const play = page.getByRole("group", { name: "Hear the phrase" }).getByRole("button").first();
  await play.click();
  await page
    .locator('.score-cursor[style*="visible"]')
    .first()
    .waitFor({ state: "attached", timeout: 8000 });
  await page.keyboard.press("Escape");
  await says(play, "Play");
  expect(await page.locator('.score-cursor[style*="visible"]').count()).toBe(0);
  expect(complaints).toEqual([]);
  await close();
});

it("shows one line at a time on a phone, within its width", async () => {
  const { page, score, close } = await shout({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
  });
  await score
    .getByRole("img", { name: /Trumpet 1/ })
    .first()
    .waitFor();
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBeLessThanOrEqual(390);
  await close();
});
