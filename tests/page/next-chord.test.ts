import AxeBuilder from "@axe-core/playwright";
import type { Locator, Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { hearOutput, listenIn } from "./listen-in.ts";
import { closeBrowser, openPage, type OpenPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

interface NextChord extends OpenPage {
  readonly dialog: Locator;
  readonly chord: Locator;
  readonly melody: Locator;
  readonly summary: Locator;
  readonly step: (playerId: string) => Locator;
  readonly button: (name: string | RegExp) => Locator;
  readonly radio: (name: string | RegExp) => Locator;
}

/** The sheet, opened from F13 under D5. */
async function nextChord(options?: Parameters<typeof openPage>[0]): Promise<NextChord> {
  const open = await openPage(options);
  const { page } = open;
  await says(partsOf(page).stack, firstStack);
  await listenIn(page);
  await partsOf(page).button("Into the next chord").click();
  const dialog = page.getByRole("dialog", { name: "The next chord" });
  await dialog.locator(".next-staves svg").last().waitFor();
  return {
    ...open,
    dialog,
    chord: dialog.getByRole("textbox", { name: "Chord after" }),
    melody: dialog.getByRole("textbox", { name: "Its melody note" }),
    summary: dialog.getByTestId("step-summary"),
    step: (id) => dialog.locator(`[data-step="${id}"]`),
    button: (name) => dialog.getByRole("button", { name }),
    radio: (name) => dialog.getByRole("radio", { name }),
  };
}

async function faults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).include("[role=dialog]").analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" | ")}`);
}

describe("the next chord", () => {
  it("opens on the chord a fifth below, with every player's step", async () => {
    const { page, chord, melody, step, summary, complaints, close } = await nextChord();
    expect([await chord.inputValue(), await melody.inputValue()]).toEqual(["Bbmaj9", "D5"]);
    // The seventh of F13 falls to the third of B♭: the resolution every textbook begins with.
    await says(step("tbn1"), "E♭4 → D4");
    await says(step("tbn1"), "down 1, a minor second");
    await says(step("tpt1"), "held");
    await says(summary, "2 players move, 11 hold; widest step 1.");
    expect(await faults(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await close();
  });

  it("takes any chord and melody note, typed or picked; says what cannot be read", async () => {
    const { dialog, chord, melody, step, button, complaints, close } = await nextChord();
    await button(/^G♭?m9|^Gm9/).click();
    await says(dialog.locator(".next-titles"), "Gm9");
    await chord.fill("Eb7(#11)");
    await melody.fill("C#5");
    await says(step("tpt1"), "D5 → D♭5");
    await chord.fill("H9");
    await dialog.getByRole("alert").waitFor();
    // The last answer stays.
    await says(step("tpt1"), "D5 → D♭5");
    await chord.fill("Eb7(#11)");
    await dialog.getByRole("alert").waitFor({ state: "detached" });
    await melody.fill("C9");
    await dialog.getByRole("alert").waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  it("says what keeps it from an answer when the voicing in view cannot be played", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.token("bari").focus();
    // Far below the lowest note of a baritone saxophone.
    for (let step = 0; step < 14; step += 1) await page.keyboard.press("Shift+ArrowDown");
    await parts.button("Into the next chord").click();
    const dialog = page.getByRole("dialog", { name: "The next chord" });
    await says(dialog.getByRole("alert"), "outside the player's range");
    await says(dialog, "Nothing to show until that is put right.");
    await close();
  });

  it("offers several ways on, walked by the arrow keys", async () => {
    const { page, radio, summary, close } = await nextChord();
    const first = await summary.innerText();
    await radio(/^Smoothest lines/).focus();
    await page.keyboard.press("ArrowDown");
    await expect.poll(() => radio(/^Wider/).getAttribute("aria-checked")).toBe("true");
    await expect.poll(() => summary.innerText()).not.toBe(first);
    await close();
  });

  it("goes the other way round: out of the chord before", async () => {
    const { dialog, radio, step, close } = await nextChord();
    await radio("Out of the chord before").click();
    const titles = dialog.locator(".next-titles b");
    await expect.poll(() => titles.allInnerTexts()).toEqual(["C13", "F13"]);
    expect(await dialog.getByRole("textbox", { name: "Chord before" }).inputValue()).toBe("C13");
    await says(step("btbn"), "→ F2");
    await close();
  });

  it("is heard one into the other, over and over, and stops", async () => {
    const { page, dialog, button, radio, complaints, close } = await nextChord();
    await button("Hear one into the other").click();
    await hearOutput(page);
    await dialog.locator(".motion-side:nth-of-type(1).motion-sounding").waitFor();
    await dialog.locator(".motion-side:nth-of-type(2).motion-sounding").waitFor();
    await button("Hear one into the other").waitFor();
    await radio("Over and over").click();
    await button("Hear one into the other").click();
    await dialog.locator(".motion-side:nth-of-type(2).motion-sounding").waitFor();
    await dialog.locator(".motion-side:nth-of-type(1).motion-sounding").waitFor();
    await radio(/^Wider/).click();
    await button("Stop").click();
    await button("Hear one into the other").waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  it("remembers the chord asked for, so that another texture moves the same way", async () => {
    const { page, dialog, chord, melody, step, close } = await nextChord();
    await chord.fill("Am7(b5)");
    await melody.fill("C5");
    await says(step("tpt1"), "D5 → C5");
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "detached" });
    await partsOf(page).map.focus();
    await page.keyboard.press("ArrowUp");
    await says(partsOf(page).place, "7 notes");
    await partsOf(page).button("Into the next chord").click();
    await says(step("alto2"), "A4 →");
    expect([await chord.inputValue(), await melody.inputValue()]).toEqual(["Am7(b5)", "C5"]);
    await close();
  });

  it("keeps either voicing with the chord it answers, as a step to undo", async () => {
    const { page, dialog, button, close } = await nextChord();
    await button("Keep the B♭maj9 voicing").click();
    await button("Keep the F13 voicing").click();
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "detached" });
    const kept = page.locator(".kept-item");
    await says(kept.nth(0), "B♭maj9");
    await says(kept.nth(1), "F13");
    expect(await page.getByRole("textbox", { name: "Name of A" }).inputValue()).toBe(
      "Smoothest lines from F13",
    );
    await partsOf(page).button("Show A").click();
    await says(partsOf(page).stack, "F2 A3 C4 D4 G4 D5");
    expect(await partsOf(page).chord.inputValue()).toBe("Bbmaj9");
    await page.keyboard.press("Control+z");
    await says(partsOf(page).stack, firstStack);
    await close();
  });

  it.each([
    { name: "a tablet", viewport: { width: 1024, height: 768 } },
    { name: "large type", viewport: { width: 720, height: 450 } },
    { name: "a phone", viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    { name: "the dark", viewport: { width: 1440, height: 900 }, colorScheme: "dark" as const },
  ])("fits $name", async (options) => {
    const { page, dialog, complaints, close } = await nextChord({ ...options });
    const over = await dialog.evaluate((sheet) => sheet.scrollWidth - sheet.clientWidth);
    expect(over).toBe(0);
    const [motion, aside] = await Promise.all(
      [".motion", ".next-aside"].map((part) => dialog.locator(part).boundingBox()),
    );
    if (!motion || !aside) throw new Error("the step is not on the page");
    const isBeside = motion.x + motion.width <= aside.x;
    expect(isBeside || motion.y + motion.height <= aside.y).toBe(true);
    expect(await faults(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await close();
  });
});
