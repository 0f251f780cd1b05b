import { readFile } from "node:fs/promises";
import AxeBuilder from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { hearOutput, listenIn } from "./listen-in.ts";
import { closeBrowser, openPage, type OpenPage } from "./open-page.ts";
import { firstStack, partsOf, says, withoutFilePicker } from "./page-parts.ts";

afterAll(closeBrowser);

async function opened(): Promise<OpenPage> {
  const open = await openPage();
  await withoutFilePicker(open.page);
  await listenIn(open.page);
  await says(partsOf(open.page).stack, firstStack);
  return open;
}

/** Picks a row of the menu by keyboard alone. */
async function pick(page: Page, row: string | RegExp): Promise<void> {
  await page.getByRole("button", { name: "More ways" }).press("Enter");
  const item = page.locator("[role^=menuitem]").filter({ hasText: row });
  await item.waitFor();
  for (let step = 0; step < 20; step += 1) {
    if (await item.evaluate((one) => one === document.activeElement)) break;
    await page.keyboard.press("ArrowDown");
  }
  await page.keyboard.press("Enter");
  await page.getByRole("menu").waitFor({ state: "detached" });
}

async function faults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).exclude(".lattice").analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" | ")}`);
}

describe("more ways to hear", () => {
  it.each(["Crescendo, p to ff", "Rolled from the top"])(
    "%s sounds from the menu, and Space sounds it again",
    async (way) => {
      const { page, complaints, close } = await opened();
      await page.getByRole("button", { name: "More ways" }).click();
      await page.getByRole("menuitem", { name: way }).click();
      await hearOutput(page);
      await page.keyboard.press("Escape");
      await page.getByText("Space: again").waitFor();
      await page.evaluate(() => {
        if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      });
      await page.keyboard.press("Space");
      await page.getByRole("button", { name: "Stop" }).waitFor();
      expect(complaints).toEqual([]);
      await close();
    },
  );

  it("hears one section alone over bass and piano, by keyboard, and says so", async () => {
    const { page, close } = await opened();
    await pick(page, "With bass and piano");
    await pick(page, "Trumpets alone");
    await says(page.getByTestId("setting"), "Trumpets alone, with bass and piano.");
    await page.getByRole("button", { name: "Sustained" }).press("Enter");
    await hearOutput(page);
    // Trumpets have D5, G4 and C4 of the six notes.
    await expect.poll(() => page.locator(".rung-sounding").count()).toBe(3);
    await page.keyboard.press("Escape");
    await pick(page, "Everybody");
    await says(page.getByTestId("setting"), /^With bass and piano\.$/);
    await close();
  });

  it("hears any players chosen against the rest", async () => {
    const { page, close } = await opened();
    await pick(page, "Players of your choice");
    const sheet = page.getByRole("dialog", { name: "Who is heard" });
    await sheet.getByText("Baritone").click();
    await sheet.getByText("Tenor 2").click();
    await sheet.getByRole("button", { name: "Hear them" }).click();
    await hearOutput(page);
    await sheet.getByRole("radio", { name: "12 dB softer" }).click();
    expect(await faults(page)).toEqual([]);
    await sheet.getByRole("button", { name: "Close" }).click();
    await says(page.getByTestId("setting"), "2 players against the rest.");
    await close();
  });

  it("hears the player of a token alone, and against the rest with Shift", async () => {
    const { page, close } = await opened();
    const alto = partsOf(page).token("alto2");
    await alto.press("Enter");
    await expect.poll(() => page.locator(".rung-sounding").count()).toBe(1);
    await alto.press("Shift+Enter");
    await expect.poll(() => page.locator(".rung-sounding").count()).toBe(6);
    await page.getByRole("button", { name: "Stand out against the rest" }).waitFor();
    await close();
  });
});

describe("comparing", () => {
  it("switches the level while it sounds, and tells the loudness units", async () => {
    const { page, complaints, close } = await opened();
    const parts = partsOf(page);
    await parts.button("Section by section").click();
    await hearOutput(page);
    await parts.choice("Level-matched").click();
    await page.getByText(/^[+−]?\d+\.\d LU$/).waitFor();
    await parts.button("Stop").waitFor();
    await parts.choice("As played").click();
    await page.getByText(/ LU$/).waitFor({ state: "detached" });
    await parts.button("Stop").waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  it("plays all kept voicings in turn, not only the two compared", async () => {
    const { page, close } = await opened();
    const parts = partsOf(page);
    for (let kept = 0; kept < 3; kept += 1) await parts.button("Keep this one").click();
    await parts.button("Hear all 3 in turn").click();
    for (const letter of ["A", "B", "C"]) await page.getByText(`Now ${letter}`).waitFor();
    await parts.button("Stop").waitFor({ state: "detached" });
    await close();
  });
});

describe("saving the sound", () => {
  it("saves the voicing in view as a WAV file with a name that tells what it is", async () => {
    const { page, complaints, close } = await opened();
    const download = page.waitForEvent("download");
    await pick(page, "Save the sound");
    const file = await download;
    expect(file.suggestedFilename()).toBe("hornweave-F13-D5-hit.wav");
    const bytes = await readFile(await file.path());
    // RIFF WAVE, two channels at 48 kHz, some of it not silence.
    expect(bytes.toString("latin1", 0, 4) + bytes.toString("latin1", 8, 12)).toBe("RIFFWAVE");
    expect([bytes.readUInt16LE(22), bytes.readUInt32LE(24)]).toEqual([2, 48_000]);
    expect(bytes.subarray(44).some((byte) => byte !== 0)).toBe(true);
    await says(partsOf(page).spoken, "Saved as hornweave-F13-D5-hit.wav.");
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("caution", () => {
  const words = "mind the volume on headphones";

  it("is given until the first sound, and not at the next visit", async () => {
    const { page, close } = await opened();
    await page.getByText(words).waitFor();
    await partsOf(page).button("Hit").click();
    await says(partsOf(page).spoken, words);
    await page.getByText("Space: again").waitFor();
    await page.reload();
    await page.getByText("Space: again").waitFor();
    expect(await page.getByText(words).count()).toBe(0);
    await close();
  });

  it("is given again where the browser remembers nothing", async () => {
    const { page, complaints, close } = await openPage();
    await page.addInitScript(() => {
      Object.defineProperty(window, "localStorage", {
        get() {
          throw new DOMException("refused", "SecurityError");
        },
      });
    });
    await page.reload();
    await page.getByText(words).waitFor();
    await partsOf(page).button("Hit").click();
    await page.getByText("Space: again").waitFor();
    await page.reload();
    await page.getByText(words).waitFor();
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("seats", () => {
  it("moves a chair within the stage, and back by undo", async () => {
    const { page, close } = await opened();
    const parts = partsOf(page);
    await parts.button("Edit the players of the line-up").click();
    const sheet = page.getByRole("dialog", { name: "Players" });
    const side = sheet.getByRole("slider", { name: "Left to right" });
    const distance = sheet.getByRole("slider", { name: "Distance" });
    expect(await side.getAttribute("aria-valuetext")).toBe("15 % left");
    await side.press("End");
    expect(await side.getAttribute("aria-valuetext")).toBe("far right");
    await distance.press("End");
    expect(await distance.getAttribute("aria-valuetext")).toBe("9.0 m");
    expect(await faults(page)).toEqual([]);
    await sheet.getByRole("button", { name: "Close" }).click();
    await parts.button("Hit").click();
    await hearOutput(page);
    await parts.button("Undo").first().click();
    await parts.button("Undo").first().click();
    await parts.button("Edit the players of the line-up").click();
    expect(await side.getAttribute("aria-valuetext")).toBe("15 % left");
    expect(await distance.getAttribute("aria-valuetext")).toBe("4.2 m");
    await close();
  });
});
