import AxeBuilder from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { plugIn, release, strike } from "./midi-stand-in.ts";
import { closeBrowser, openPage, type OpenPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

async function connected(answer: "yes" | "refused" | "absent"): Promise<OpenPage> {
  const open = await openPage();
  const { page } = open;
  await plugIn(page, answer);
  await page.reload();
  await says(partsOf(page).stack, firstStack);
  await partsOf(page).button("MIDI keyboard and out").press("Enter");
  await partsOf(page).button("Connect MIDI").press("Enter");
  return open;
}

async function choose(page: Page, list: string, row: string): Promise<void> {
  await page.getByRole("dialog").getByRole("button", { name: list }).click();
  await page.getByRole("option", { name: row }).click();
}

const sent = (page: Page): Promise<readonly (readonly number[])[]> =>
  page.evaluate(() => window.standIn?.sent ?? []);

describe("MIDI", () => {
  it.each([
    ["absent", "MIDI is not available here"],
    ["refused", "MIDI was not allowed"],
  ] as const)(
    "says in a sentence that it is %s, and asks only when pressed",
    async (how, words) => {
      const { page, complaints, close } = await connected(how);
      await says(page.getByRole("alert"), words);
      await partsOf(page).button("Connect MIDI").waitFor();
      expect(complaints).toEqual([]);
      await close();
    },
  );

  it("takes one note as the melody", async () => {
    const { page, close } = await connected("yes");
    await choose(page, "Keyboard", "Test keyboard");
    await strike(page, 72);
    await says(page.getByTestId("played"), "C5 is the melody note now.");
    await page.getByRole("button", { name: "Close", exact: true }).click();
    await expect.poll(() => partsOf(page).melody.inputValue()).toBe("C5");
    await close();
  });

  it("puts a chord on the ladder as hand-made, the highest chairs highest", async () => {
    const { page, close } = await connected("yes");
    await choose(page, "Keyboard", "Test keyboard");
    expect(
      (await new AxeBuilder({ page }).exclude(".lattice").analyze()).violations.map(({ id }) => id),
    ).toEqual([]);
    await strike(page, 41, 51, 57, 67, 74);
    await says(page.getByTestId("played"), "F2, E♭3, A3, G4 and D5 on the ladder");
    await release(page, 41, 51, 57, 67, 74);
    await page.getByRole("button", { name: "Close", exact: true }).click();
    const parts = partsOf(page);
    await says(parts.stack, "F2 E♭3 A3 G4 D5");
    await says(page.locator(".voicing-head"), "as played");
    expect(await parts.token("tpt1").getAttribute("aria-label")).toContain("D5");
    await page.getByRole("button", { name: "Undo: play a voicing" }).click();
    await says(parts.stack, firstStack);
    await close();
  });

  it("sends every player on a channel, and Escape silences the output", async () => {
    const { page, close } = await connected("yes");
    await choose(page, "Send to", "Test output");
    await page.getByRole("button", { name: "Close", exact: true }).click();
    await partsOf(page).button("Sustained").click();
    // MIDI 1.0: 9n is note on, 8n note off, controller 123 ends all notes of a channel.
    const starts = async () => (await sent(page)).filter(([status = 0]) => status >> 4 === 9);
    await expect.poll(async () => (await starts()).length).toBe(13);
    expect(new Set((await starts()).map(([status]) => status)).size).toBe(13);
    await page.keyboard.press("Escape");
    const ends = async () => (await sent(page)).filter(([status = 0]) => status >> 4 === 8);
    await expect.poll(async () => (await ends()).length).toBe(13);
    const ended = (await sent(page)).filter(([, controller]) => controller === 123);
    expect(new Set(ended.map(([status]) => status)).size).toBe(13);
    await close();
  });
});
