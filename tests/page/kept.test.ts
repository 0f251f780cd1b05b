import type { Locator, Page } from "playwright-core";
import AxeBuilder from "@axe-core/playwright";
import { afterAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage, type OpenPage } from "./open-page.ts";
import { cornerOf, firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

/** The page with some voicings kept: A wide and of six notes, the others walked to from there. */
async function withKept(
  count: number,
  options?: Parameters<typeof openPage>[0],
): Promise<OpenPage> {
  const open = await openPage(options);
  const { page } = open;
  const parts = partsOf(page);
  await says(parts.stack, firstStack);
  for (let kept = 0; kept < count; kept += 1) {
    if (kept > 0) {
      await parts.map.focus();
      const place = await parts.place.innerText();
      await page.keyboard.press(kept % 2 === 1 ? "ArrowUp" : "ArrowLeft");
      await expect.poll(() => parts.place.innerText()).not.toBe(place);
    }
    await parts.button("Keep this one").click();
  }
  return open;
}

function letters(page: Page): Promise<string> {
  return page
    .locator(".kept-item .letter")
    .allInnerTexts()
    .then((all) => all.join(""));
}

async function faults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).exclude('[data-testid="map"]').analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" | ")}`);
}

describe("kept voicings", () => {
  it("are put in another order by dragging, and put back by undo", async () => {
    const { page, complaints, close } = await withKept(3);
    const [handle, target] = await Promise.all(
      [/^Move C/, /^Move A/].map((name) => partsOf(page).button(name).boundingBox()),
    );
    if (!handle || !target) throw new Error("the handles are not on the page");
    await page.mouse.move(handle.x + 12, handle.y + 12);
    await page.mouse.down();
    await page.mouse.move(target.x - 20, target.y + 12, { steps: 4 });
    await page.locator('[data-drop="before"]').filter({ hasText: "A" }).waitFor();
    await page.mouse.up();
    await expect.poll(() => letters(page)).toBe("CAB");
    await says(partsOf(page).spoken, "C is now 1st of 3.");
    await page.keyboard.press("Control+z");
    await expect.poll(() => letters(page)).toBe("ABC");
    expect(complaints).toEqual([]);
    await close();
  });

  it("are put in another order under a finger, without scrolling the page", async () => {
    const { page, close } = await withKept(2, {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    const handle = partsOf(page).button(/^Move B/);
    await handle.evaluate((grip) => grip.scrollIntoView({ block: "center" }));
    const [start, target] = await Promise.all([
      cornerOf(handle),
      cornerOf(partsOf(page).button(/^Move A/)),
    ]);
    const scrolled = await page.evaluate(() => scrollY);
    const touch = await page.context().newCDPSession(page);
    const finger = (type: "touchStart" | "touchMove" | "touchEnd", share: number) =>
      touch.send("Input.dispatchTouchEvent", {
        type,
        touchPoints:
          type === "touchEnd"
            ? []
            : [
                {
                  x: start.x + 20 + share * (target.x - start.x),
                  y: start.y + 20 + share * (target.y - start.y),
                },
              ],
      });
    await finger("touchStart", 0);
    for (let step = 1; step <= 8; step += 1) await finger("touchMove", step / 8);
    await finger("touchEnd", 1);
    await expect.poll(() => letters(page)).toBe("BA");
    expect(await page.evaluate(() => scrollY)).toBe(scrolled);
    await close();
  });

  it("are put in another order by keys, the handle keeping the focus", async () => {
    const { page, close } = await withKept(3);
    await partsOf(page)
      .button(/^Move A/)
      .focus();
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => letters(page)).toBe("BAC");
    await page.keyboard.press("End");
    await expect.poll(() => letters(page)).toBe("BCA");
    await page.keyboard.press("ArrowLeft");
    await expect.poll(() => letters(page)).toBe("BAC");
    await close();
  });

  it("take a note, which is undone as one step", async () => {
    const { page, close } = await withKept(1);
    const note = page.getByRole("textbox", { name: "Note beside A" });
    await note.click();
    await page.keyboard.type("for the last chorus");
    await page.keyboard.press("Enter");
    await partsOf(page).map.focus();
    await page.keyboard.press("Control+z");
    await expect.poll(() => note.inputValue()).toBe("");
    await page.keyboard.press("Control+Shift+z");
    await expect.poll(() => note.inputValue()).toBe("for the last chorus");
    await close();
  });

  it("are chosen in any number, and axe finds nothing", async () => {
    const { page, close } = await withKept(4);
    const parts = partsOf(page);
    await page.getByText("C and D chosen").waitFor();
    await parts.button(/^Choose A/).click();
    await page.getByText("C, D and A chosen").waitFor();
    await says(page.getByTestId("difference"), "A against C:");
    await parts.button("C, then D, then A, then this").waitFor();
    expect(await faults(page)).toEqual([]);
    await close();
  });
});

/** Chooses every kept voicing and opens the sheet. */
async function sideBySide(page: Page): Promise<Locator> {
  for (const button of await page.getByRole("button", { name: /^Choose / }).all())
    if ((await button.getAttribute("aria-pressed")) === "false") await button.click();
  await page.getByRole("button", { name: "Side by side" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.locator(".still-staff svg").last().waitFor();
  return dialog;
}

/** The cell of a row of the comparison. */
function cell(dialog: Locator, row: RegExp, letter: string): Locator {
  return dialog
    .getByRole("row")
    .filter({ has: dialog.page().getByRole("rowheader", { name: row }) })
    .locator(`[data-letter="${letter}"]`);
}

describe("the chosen ones side by side", () => {
  it("show what differs, in figures and in words, against any of them", async () => {
    const { page, complaints, close } = await withKept(3);
    const dialog = await sideBySide(page);
    // B has one note more than A; the players who move are named with their steps.
    expect(await cell(dialog, /^Notes/, "A").innerText()).toBe("6");
    expect(await cell(dialog, /^Notes/, "B").innerText()).toMatch(/^7\s*\+1$/);
    await says(cell(dialog, /^Difference/, "B"), "same span, one note more");
    await says(cell(dialog, /^Players/, "B"), "Tpt 2 D5 to G4, 7 semitones down");
    await dialog.getByRole("radio", { name: "B", exact: true }).click();
    expect(await cell(dialog, /^Notes/, "A").innerText()).toMatch(/^6\s*−1$/);
    await says(cell(dialog, /^Players/, "A"), "Tpt 2 G4 to D5, 7 semitones up");
    expect(await faults(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await close();
  });

  it("are heard one by one and in turn, and stop", async () => {
    const { page, complaints, close } = await withKept(2);
    const dialog = await sideBySide(page);
    await dialog.getByRole("button", { name: "Hear B" }).click();
    await dialog.locator(".letter-now").filter({ hasText: "B" }).waitFor();
    await dialog.getByRole("button", { name: "Stop" }).waitFor();
    await dialog.getByRole("button", { name: "Stop" }).waitFor({ state: "detached" });
    await dialog.getByRole("radio", { name: "Level-matched" }).click();
    await dialog.getByRole("button", { name: "Hear A, then B" }).click();
    await dialog.locator(".letter-now").filter({ hasText: "A" }).waitFor();
    await dialog.locator(".letter-now").filter({ hasText: "B" }).waitFor();
    await dialog.getByRole("button", { name: "Stop" }).click();
    await dialog.getByRole("button", { name: "Stop" }).waitFor({ state: "detached" });
    expect(complaints).toEqual([]);
    await close();
  });

  it("open, are named and left by keys, which go back to where they were", async () => {
    const { page, close } = await withKept(2);
    const door = partsOf(page).button("Side by side");
    await door.focus();
    await page.keyboard.press("Enter");
    const dialog = page.getByRole("dialog");
    await dialog.getByRole("textbox", { name: "Name of A" }).fill("Wide");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "detached" });
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent))
      .toBe("Side by side");
    expect(await page.getByRole("textbox", { name: "Name of A" }).inputValue()).toBe("Wide");
    await close();
  });

  it.each([
    { name: "a tablet", viewport: { width: 1024, height: 768 } },
    { name: "a phone", viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    { name: "the dark", viewport: { width: 1440, height: 900 }, colorScheme: "dark" as const },
  ])("fit $name, the page itself never wider than the window", async (options) => {
    const { page, complaints, close } = await withKept(4, { ...options });
    await sideBySide(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
    expect(await faults(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await close();
  });
});
