import { afterAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

describe("the size of the map", () => {
  it("is changed by button, key and wheel; places stay where the pointer finds them", async () => {
    const { page, complaints, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    const zoom = page.getByTestId("zoom");
    const before = (await parts.map.boundingBox())!;
    const draft = page.locator(".lattice .swatch .draft").first();
    const path = await draft.getAttribute("d");
    await page.getByRole("button", { name: "Map larger" }).click();
    await says(zoom, "125 %");
    await parts.map.focus();
    await page.keyboard.press("+");
    await page.keyboard.press("+");
    await says(zoom, "200 %");
    expect((await parts.map.boundingBox())!.height).toBeCloseTo(2 * before.height, 0);
    // Drawn larger, not drawn again.
    expect(await draft.getAttribute("d")).toBe(path);
    await page.keyboard.press("ArrowLeft");
    const here = (await page.locator(".lattice .frame").first().boundingBox())!;
    const window = (await page.locator(".lattice-scroll").boundingBox())!;
    expect(here.x).toBeGreaterThanOrEqual(window.x - 1);
    expect(here.x + here.width).toBeLessThanOrEqual(window.x + window.width + 1);
    const place = await parts.place.innerText();
    await page.mouse.move(here.x + here.width / 2, here.y + here.height / 2);
    await says(parts.place, place);
    await page.keyboard.down("Control");
    await page.mouse.wheel(0, 100);
    await page.keyboard.up("Control");
    await says(zoom, "150 %");
    await page.keyboard.press("0");
    await says(zoom, "100 %");
    expect((await parts.map.boundingBox())!.height).toBeCloseTo(before.height, 0);
    expect(complaints).toEqual([]);
    await close();
  });
});
