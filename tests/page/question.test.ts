import { afterAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

describe("the question strip", () => {
  it("answers another chord and melody with another map and another voicing", async () => {
    const { page, complaints, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.chord.fill("Cm9");
    await parts.melody.fill("Bb4");
    // The lead of the question is the top note of whatever is answered.
    await says(parts.stack, /B♭4$/);
    expect(await parts.map.getAttribute("aria-label")).toContain("B flat 4");
    expect(await page.locator(".swatch").count()).toBeGreaterThan(20);
    expect(complaints).toEqual([]);
    await close();
  });

  it("keeps the last answer and says what is wrong when a chord cannot be read", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.chord.fill("F13b");
    await says(parts.problems, "A flat needs a number after it.");
    await says(parts.stack, firstStack);
    expect(await parts.chord.getAttribute("aria-invalid")).toBe("true");
    expect(await parts.chord.inputValue()).toBe("F13b");
    await parts.problems.getByRole("button", { name: "F13", exact: true }).click();
    await parts.problems.waitFor({ state: "detached" });
    expect(await parts.chord.inputValue()).toBe("F13");
    await close();
  });

  it("keeps the last answer when no player reaches the melody note", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.melody.fill("D8");
    await parts.problems
      .getByText(/D8|reach|range/i)
      .first()
      .waitFor();
    await says(parts.stack, firstStack);
    await close();
  });

  it("offers ready questions when it is cleared, and answers the one chosen", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.chord.fill("");
    await parts.melody.fill("");
    await page.getByText("A chord and the note above it.").waitFor();
    expect(await parts.problems.count()).toBe(0);
    await parts.button("Cm9 under B♭4").click();
    await says(parts.stack, /B♭4$/);
    await close();
  });

  it("leaves a tone out when it is switched off, and brings it back by undo", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    // On, required, off: two presses switch the ninth (G) off.
    const ninth = page.getByRole("button", { name: /^9, G/ });
    await ninth.click();
    await ninth.click();
    await page.getByRole("button", { name: "9, G: off" }).waitFor();
    await page.locator(".stack-words", { hasNotText: "G" }).waitFor();
    await page.keyboard.press("Control+z");
    await page.keyboard.press("Control+z");
    await says(parts.stack, firstStack);
    await close();
  });

  it("steps the melody with the arrow keys and takes it from the keyboard picker", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.melody.focus();
    await page.keyboard.press("ArrowUp");
    await says(parts.stack, /E♭5$/);
    await parts.button(/Pick the melody note/).click();
    const keys = page.getByRole("slider", { name: "Melody note" });
    await keys.focus();
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("ArrowLeft");
    expect(await keys.getAttribute("aria-valuetext")).toBe("D flat 5");
    await close();
  });

  it("switches a rule off in words and widens the map", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    const before = await page.locator(".swatch").count();
    await parts.button(/^Rules: all/).click();
    const dialog = page.getByRole("dialog");
    await dialog.getByRole("switch", { name: /Clear foundation/ }).press("Space");
    await dialog.getByRole("switch", { name: /Lowest note over the bass/ }).press("Space");
    await dialog.getByRole("button", { name: "Close" }).click();
    await parts.button(/2 of \d+ off/).waitFor();
    await expect.poll(() => page.locator(".swatch").count()).toBeGreaterThan(before);
    await close();
  });

  it("takes a smaller line-up, and a player out of it", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts
      .button(/Line-up/)
      .first()
      .click();
    await page.getByRole("option", { name: "Four horns" }).click();
    await says(parts.place, "4 players");
    await parts.button("Edit the players of the line-up").click();
    await page.getByRole("switch", { name: "Tenor 1" }).press("Space");
    await page.getByRole("dialog").getByRole("button", { name: "Close" }).click();
    await says(parts.place, "3 players");
    await close();
  });
});
