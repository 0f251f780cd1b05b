import { afterAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { cornerOf, firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

describe("the voicing", () => {
  it("changes by hand with the arrow keys, measured at once, and back by undo", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.token("tbn1").focus();
    await page.keyboard.press("ArrowUp");
    // The next ticked note above E flat 4 is F4.
    await says(parts.stack, "F2 A3 C4 E♭4 F4 G4 D5");
    await says(parts.reason, "over the best here");
    await says(parts.spoken, "Tbn 1 to F4");
    await parts.button("Undo: Tbn 1 to F4").click();
    await says(parts.stack, firstStack);
    await page.keyboard.press("Control+Shift+z");
    await says(parts.stack, "F2 A3 C4 E♭4 F4 G4 D5");
    await close();
  });

  it("adds its terms up to the number it states", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.token("tbn1").focus();
    await page.keyboard.press("ArrowUp");
    await says(parts.reason, "over the best here");
    const more = parts.reason.getByRole("button", { name: /more/ });
    if ((await more.count()) > 0) await more.click();
    const text = await parts.reason.innerText();
    const stated = Number(/^([+−]\d+)/.exec(text)?.[1]?.replace("−", "-"));
    const terms = [...text.matchAll(/\(([+−]?\d+)\)/g)].map((match) =>
      Number((match[1] ?? "").replace("−", "-")),
    );
    expect(terms.reduce((sum, term) => sum + term, 0)).toBe(stated);
    await close();
  });

  it("follows a token that is dragged, and names the rule it breaks", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    const start = await cornerOf(parts.token("tpt3"));
    await page.mouse.move(start.x + 20, start.y + 12);
    await page.mouse.down();
    await page.mouse.move(start.x + 20, start.y + 2, { steps: 3 });
    await page.mouse.move(start.x + 20, start.y + 1, { steps: 2 });
    await expect.poll(() => parts.stack.innerText()).not.toBe(firstStack);
    // To a tone that is not ticked: a rule, in words.
    await page.mouse.up();
    await parts.button(/^Undo: Tpt 3 to/).waitFor();
    await page.getByTestId("broken").waitFor();
    await close();
  });

  it("follows a token under a finger, without scrolling the page", async () => {
    const { page, close } = await openPage({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.token("tbn1").evaluate((token) => token.scrollIntoView({ block: "center" }));
    const start = await cornerOf(parts.token("tbn1"));
    const before = await cornerOf(page.getByTestId("ladder"));
    const touch = await page.context().newCDPSession(page);
    const finger = (type: "touchStart" | "touchMove" | "touchEnd", y: number) =>
      touch.send("Input.dispatchTouchEvent", {
        type,
        touchPoints: type === "touchEnd" ? [] : [{ x: start.x + 20, y }],
      });
    await finger("touchStart", start.y + 12);
    for (let step = 1; step <= 8; step += 1) await finger("touchMove", start.y + 12 - 5 * step);
    await finger("touchEnd", 0);
    await parts.button(/^Undo: Tbn 1 to/).waitFor();
    // Forty pixels up with the finger; what appears above the ladder may nudge it a little.
    const after = await cornerOf(page.getByTestId("ladder"));
    expect(Math.abs(after.y - before.y)).toBeLessThan(20);
    await close();
  });

  it("fixes what was moved and finds the rest", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.token("tbn1").focus();
    await page.keyboard.press("ArrowUp");
    await parts.button("Fix what I moved, find the rest").click();
    await says(parts.reason, "The best here");
    expect(await parts.token("tbn1").getAttribute("aria-label")).toMatch(/^Trombone 1, F4.*fixed/);
    await parts.button("Fixed: Tbn 1").click();
    await page.getByRole("menuitem", { name: "Free everybody" }).click();
    await says(parts.stack, firstStack);
    await close();
  });

  it("lets a section rest and gives the lead to one player", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.button("Sections that rest").click();
    await page.getByRole("menuitemcheckbox", { name: "trumpets rest" }).click();
    await says(parts.place, "9 players");
    expect(await parts.token("tpt1").getAttribute("aria-label")).toContain("resting");
    await page.keyboard.press("Escape");
    await parts.button(/^(anyone Lead|Lead anyone)$/).click();
    await page.getByRole("option", { name: "Tenor 1" }).click();
    await expect
      .poll(() => parts.token("tenor1").getAttribute("aria-label"))
      .toMatch(/^Tenor 1, D5/);
    await close();
  });

  it("offers the best voicings of other notes in the same texture", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.button("The next few").click();
    await page
      .getByText(/^\+\d+ over the best here$/)
      .first()
      .waitFor();
    await page.getByRole("menuitem").nth(1).click();
    await expect.poll(() => parts.stack.innerText()).not.toBe(firstStack);
    await says(parts.place, "6 notes, 13 players");
    await parts.button("Show the best here").click();
    await says(parts.stack, firstStack);
    await close();
  });

  it("stands on a grand staff beside the ladder and on a staff for each player", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await page.getByTestId("staff").locator("svg").waitFor();
    expect(await page.locator(".thread").count()).toBe(6);
    await parts.choice("Staves").click();
    await page.getByTestId("parts").locator("svg").waitFor();
    await parts.choice("Written").click();
    await page.locator('[data-testid="parts"] svg[aria-label*="written"]').waitFor();
    await close();
  });

  it("is kept, compared in a sentence, renamed and shown again", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.button("Keep this one").click();
    await parts.map.focus();
    await page.keyboard.press("ArrowUp");
    await says(parts.place, "7 notes");
    await parts.button("Keep this one").click();
    await says(page.getByTestId("difference"), "B against A: same span, one note more");
    await page.getByRole("textbox", { name: "Name of A" }).fill("Six wide");
    await page.keyboard.press("Enter");
    await parts.button("Show A").click();
    await says(parts.stack, firstStack);
    await parts.button("Let B go").click();
    await page.getByTestId("difference").waitFor({ state: "detached" });
    await close();
  });
});
