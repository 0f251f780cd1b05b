import { afterAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

describe("the map", () => {
  it("is walked by keyboard and speaks where it is, what sounds and how it measures", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.map.focus();
    await page.keyboard.press("ArrowUp");
    await says(parts.place, "7 notes");
    await says(parts.spoken, /2 octaves and a major sixth, 7 notes, 13 players\..*Interleaving/);
    await page.keyboard.press("ArrowLeft");
    await says(parts.place, "2 octaves + M2");
    await page.keyboard.press("PageDown");
    await says(parts.place, "12 players");
    await page.keyboard.press("PageUp");
    await says(parts.place, "13 players");
    await close();
  });

  it("says why an empty place is empty, and lifts the rules that empty it", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    // Between 26 and 33 semitones nothing is possible under F13 with a bass below.
    const hatch = page.locator('rect[fill="url(#hatch)"]').first();
    await hatch.click();
    const words = page.locator(".empty-words");
    await words
      .getByText(/Two rules empty it: .*Lowest note over the bass.*Clear foundation/)
      .waitFor();
    await says(parts.stack, firstStack);
    await words.getByRole("button", { name: "Lift the two rules" }).click();
    await parts.button(/2 of \d+ off/).waitFor();
    await close();
  });

  it("shows a textbook voicing by section with the rules it breaks", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await page.locator('[data-letter="A"]').waitFor();
    await page
      .locator(".legend")
      .getByRole("button", { name: /octave copy/ })
      .first()
      .click();
    await page.locator('[data-metric="interleaving"] b', { hasText: "0.00" }).waitFor();
    await parts.button("Show the best here").or(page.getByTestId("broken")).first().waitFor();
    await close();
  });

  it("shows every layer, by-section voicings without interleaving", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.choice("By section").click();
    await page.locator('[data-metric="interleaving"] b', { hasText: "0.00" }).waitFor();
    await says(parts.reason, "over the best here");
    await parts.choice("Crossed").click();
    await expect
      .poll(() => page.locator('[data-metric="interleaving"] b').innerText())
      .not.toBe("0.00");
    await close();
  });

  it("is shaded by any measure", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await page.locator(".swatch .bar").first().waitFor();
    await parts.button(/Shade by/).click();
    await page.getByRole("option", { name: /^loudness/ }).click();
    await page.locator(".ramp-row", { hasText: "sones" }).waitFor();
    await expect
      .poll(() => page.locator(".swatch.shade-none").count(), { timeout: 20_000 })
      .toBe(0);
    await close();
  });

  it("is equal to a table that sorts and goes to the same places", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.button("As a table").click();
    const table = page.getByRole("table");
    await table.getByRole("button", { name: /^Notes/ }).click();
    await table.getByRole("button", { name: /^Notes/ }).click();
    const first = table.locator("tbody tr").first();
    expect(await first.locator("td").first().innerText()).toBe("13");
    await first.getByRole("button").click();
    await says(parts.place, "13 notes");
    await close();
  });
});
