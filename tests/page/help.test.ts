import { afterAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

describe("help", () => {
  it("opens at a question mark with every key, and not while a text is typed", async () => {
    const { page, complaints, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.map.focus();
    await page.keyboard.press("?");
    await page.getByRole("dialog", { name: "Help" }).waitFor();
    await page.getByText("On a token: S").waitFor();
    await page.keyboard.press("Escape");
    await page.getByRole("dialog").waitFor({ state: "detached" });
    await parts.button("Type a voicing").click();
    await page.keyboard.type("?");
    expect(await page.getByRole("dialog").count()).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("a token whose player is buried", () => {
  it("says so in words, and by whom", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    expect(await parts.token("alto1").getAttribute("aria-label")).toContain(
      "not heard, buried by Tpt 1",
    );
    await close();
  });
});
