import { afterAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

describe("choices of the map", () => {
  it("shows the textures of exactly the sections picked", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.button(/any sections/).click();
    await page.getByRole("option", { name: "trombones and saxes", exact: true }).click();
    await says(parts.place, "9 players");
    for (const id of ["tpt1", "tpt2", "tpt3", "tpt4"])
      expect(await parts.token(id).getAttribute("aria-label")).toMatch(/rest/i);
    await close();
  });

  it("walks to textures one would not have written, says why, and each time another", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.button("Show me something I would not have written").click();
    const again = parts.button("Another I would not have written");
    await again.waitFor();
    await says(page.locator(".unwritten p"), /^Its sections interlock/);
    const first = await parts.stack.textContent();
    await again.click();
    await page.waitForFunction(
      (before) => document.querySelector(".stack-words")?.textContent !== before,
      first,
    );
    await says(page.locator(".unwritten p"), /^Its sections interlock/);
    await close();
  });
});
