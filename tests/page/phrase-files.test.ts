import { readFile } from "node:fs/promises";
import tonejs from "@tonejs/midi";
import AxeBuilder from "@axe-core/playwright";
import { afterAll, describe, expect, it } from "vitest";
import { readScoreFile } from "../../src/files/index.ts";
import { notesByMusicXmlIo } from "../files/support/readers.ts";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says, withoutFilePicker } from "./page-parts.ts";

afterAll(closeBrowser);

/** The sheet over the ready shout phrase. */
async function filesSheet() {
  const open = await openPage({ viewport: { width: 1440, height: 900 } });
  const { page } = open;
  const parts = partsOf(page);
  await withoutFilePicker(page);
  await says(parts.stack, firstStack);
  await page.getByRole("radio", { name: "Phrase" }).click();
  await parts.button("Tidemill Shout").click();
  await page.locator('[data-testid="phrase-state"][data-whole="true"]').waitFor();
  await parts.button("Save phrase").press("Enter");
  const dialog = page.getByRole("dialog", { name: "Save phrase" });
  await dialog.waitFor();
  const save = async (what: string) => {
    const download = page.waitForEvent("download");
    await dialog.getByRole("button", { name: `Save as ${what}`, exact: true }).click();
    const file = await download;
    return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
  };
  return { ...open, dialog, outcome: dialog.getByTestId("outcome"), save };
}

describe("a voiced phrase leaves the page", () => {
  it("as a score, plain and compressed, read by us and by another library alike", async () => {
    const { page, save, outcome, complaints, close } = await filesSheet();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    const plain = await save("MusicXML");
    expect(plain.name).toBe("hornweave-Tidemill-Shout.musicxml");
    await says(outcome, "Saved as hornweave-Tidemill-Shout.musicxml.");
    const heard = notesByMusicXmlIo(plain.bytes.toString("utf8"));
    expect(new Set(heard.map(([part]) => part)).size).toBe(15);
    const packed = await save("compressed MusicXML");
    const read = readScoreFile(packed.bytes);
    if (!read.ok) throw new Error(read.problem.message);
    expect(read.value.score.parts.flatMap(({ notes }) => notes)).toHaveLength(heard.length);
    expect(complaints).toEqual([]);
    await close();
  });

  it("as MIDI of everybody, or of one player", async () => {
    const { page, dialog, save, complaints, close } = await filesSheet();
    const all = new tonejs.Midi((await save("MIDI")).bytes);
    expect(all.tracks.map(({ name }) => name).slice(-3)).toEqual(["Piano", "Bass", "Drums"]);
    await dialog.getByRole("button", { name: /Who$/ }).click();
    await page.getByRole("option", { name: "Trumpet 1" }).click();
    const one = await save("MIDI");
    expect(one.name).toBe("hornweave-Tidemill-Shout-tpt1.mid");
    expect(new tonejs.Midi(one.bytes).tracks.map(({ name }) => name)).toEqual(["Trumpet 1"]);
    expect(complaints).toEqual([]);
    await close();
  });

  it("as sound that was heard nowhere before", async () => {
    const { save, outcome, complaints, close } = await filesSheet();
    const { name, bytes } = await save("WAV");
    expect(name).toBe("hornweave-Tidemill-Shout.wav");
    await says(outcome, "Saved as hornweave-Tidemill-Shout.wav.");
    // 33 quarters at 168 a minute, 48,000 frames of 6 bytes a second.
    expect(bytes.length / 288_000).toBeGreaterThan(11.7);
    expect(complaints).toEqual([]);
    await close();
  });
});
