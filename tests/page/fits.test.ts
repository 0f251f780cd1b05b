import { afterAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { cornerOf, firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

describe("what does not fit at the usual size", () => {
  it("leaves a long chord symbol whole in its field", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    for (const symbol of ["Ebmaj9", "F#m7/C#", "Bbmaj7#11", "C7(b9,b13)"]) {
      await parts.chord.fill(symbol);
      const hidden = await parts.chord.evaluate((input) => input.scrollWidth - input.clientWidth);
      expect(hidden, symbol).toBeLessThanOrEqual(0);
    }
    await close();
  });

  it("keeps the list of textbook voicings in view where the map scrolls sideways", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.chord.fill("Ebmaj9");
    await parts.melody.fill("G5");
    await says(parts.stack, /G5$/);
    const scroll = page.locator(".lattice-scroll");
    await page.waitForFunction(() => {
      const room = document.querySelector(".lattice-scroll");
      return room !== null && room.scrollWidth > room.clientWidth;
    });
    const entry = page.locator(".legend button").first();
    await entry.waitFor();
    expect((await cornerOf(entry)).x).toBeGreaterThanOrEqual((await cornerOf(scroll)).x - 40);
    expect((await entry.boundingBox())?.x ?? -1).toBeGreaterThanOrEqual(0);
    const isSeen = await entry.evaluate((element) => {
      const box = element.getBoundingClientRect();
      const over = document.elementFromPoint(box.left + 4, box.top + box.height / 2);
      return over !== null && element.contains(over);
    });
    expect(isSeen).toBe(true);
    await close();
  });
});

describe("the controls beside the staff at a desk", () => {
  it("are all above the ways to hear, nothing to be scrolled for", async () => {
    const { page, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    const below = () =>
      page.evaluate(() => {
        const bar = document.querySelector(".hear")?.getBoundingClientRect().top ?? 0;
        return [...document.querySelectorAll(".roles > *")]
          .filter((role) => role.getBoundingClientRect().bottom > bar + 1)
          .map((role) => role.textContent);
      });
    expect(await page.locator(".roles > .role").count()).toBe(5);
    await expect.poll(below).toEqual([]);
    await close();
  });
});
