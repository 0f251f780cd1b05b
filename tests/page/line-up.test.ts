import { afterAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

/** The page with the players' sheet open. */
async function players() {
  const open = await openPage();
  const parts = partsOf(open.page);
  await says(parts.stack, firstStack);
  await open.page.getByRole("button", { name: "Edit the players of the line-up" }).click();
  const dialog = open.page.getByRole("dialog", { name: "Players" });
  const pick = async (label: string, option: string | RegExp) => {
    await dialog.getByRole("button", { name: label }).click();
    await open.page.getByRole("option", { name: option }).click();
  };
  return { ...open, parts, dialog, pick };
}

describe("the players of the line-up", () => {
  it("double: trumpet 4 takes the flugelhorn, is searched and saved with it, and goes back by undo", async () => {
    const { page, parts, dialog, pick, complaints, close } = await players();
    await pick("Instrument of Trumpet 4", "flugelhorn");
    await dialog.getByRole("button", { name: "Instrument of Flugelhorn (Trumpet 4)" }).waitFor();
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "detached" });
    await page.locator('[data-player="tpt4"]', { hasText: /Flg/ }).first().waitFor();
    await page.getByText("saved", { exact: true }).waitFor();
    await page.reload();
    await page.locator('[data-player="tpt4"]', { hasText: /Flg/ }).first().waitFor();
    await parts.button("Undo").first().click();
    await page.locator('[data-player="tpt4"]', { hasText: "Tpt 4" }).first().waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  it("keep within limits of their own: a lead trumpet that tops out below the melody leaves it to others", async () => {
    const { page, parts, dialog, close } = await players();
    const top = dialog.getByRole("textbox", { name: "Highest note of Trumpet 1" });
    await top.fill("A4");
    await top.press("Enter");
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "detached" });
    const tpt1 = parts.token("tpt1").first();
    await expect
      .poll(async () => (await tpt1.getAttribute("aria-label")) ?? "")
      .not.toContain("D5");
    await close();
  });
});
