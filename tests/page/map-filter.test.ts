import AxeBuilder from "@axe-core/playwright";
import { afterAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

describe("showing only some textures of the map", () => {
  it("leaves the others as outlines, says how many fit, and shows all again in one press", async () => {
    const { page, complaints, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    const swatches = page.locator(".lattice .swatch .draft");
    const all = await swatches.count();
    await page.getByRole("button", { name: "Only textures of the effort" }).click();
    await page.getByRole("option", { name: "nobody strained" }).click();
    const fitting = page.getByTestId("fitting");
    await says(fitting, /of \d+ fit/);
    await page.locator(".lattice .unfit").first().waitFor({ state: "attached" });
    const easy = await swatches.count();
    expect(easy).toBeLessThan(all);
    const [fit, places] = (await fitting.innerText()).match(/\d+/g)!.map(Number);
    expect(fit).toBeLessThan(places!);
    expect(await page.locator(".lattice .unfit").count()).toBe(places! - fit!);
    await page.getByRole("button", { name: "Only textures of the technique" }).click();
    await page.getByRole("option", { name: "spread", exact: true }).click();
    await expect.poll(() => swatches.count()).toBeLessThan(easy);
    const { violations } = await new AxeBuilder({ page }).exclude(".lattice").analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    await page.getByRole("button", { name: "Show all" }).click();
    await expect.poll(() => swatches.count()).toBe(all);
    expect(complaints).toEqual([]);
    await close();
  });

  it("is asked by keyboard, and the walk says what does not fit", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await page.getByRole("button", { name: "Only textures of the clarity" }).focus();
    await page.keyboard.press("Enter");
    await page.keyboard.press("End");
    await page.keyboard.press("Enter");
    await says(page.getByTestId("fitting"), /of \d+ fit/);
    await parts.map.focus();
    for (let step = 0; step < 6; step += 1) await page.keyboard.press("ArrowUp");
    await says(parts.spoken, "Not among those you asked to see.");
    await close();
  });
});
