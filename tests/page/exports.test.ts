import { readFile } from "node:fs/promises";
import tonejs from "@tonejs/midi";
import AxeBuilder from "@axe-core/playwright";
import type { Locator, Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { LoudnessMeter, MATCH_TARGET_LUFS } from "../../src/audio/index.ts";
import type { Hertz } from "../../src/base/index.ts";
import { readMusicXml } from "../../src/files/index.ts";
import { notesByMusicXmlIo } from "../files/support/readers.ts";
import { closeBrowser, openPage, type OpenPage } from "./open-page.ts";
import { firstStack, partsOf, says, withoutFilePicker } from "./page-parts.ts";

afterAll(closeBrowser);

/** F13 under D5 in six notes over 33 semitones, and one note more: A and B as kept below. */
const firstPitches = [41, 57, 60, 63, 67, 74];
const secondPitches = [41, 57, 60, 63, 67, 69, 74];

interface Exports extends OpenPage {
  readonly dialog: Locator;
  readonly outcome: Locator;
  readonly save: (what: string) => Promise<{ readonly name: string; readonly bytes: Buffer }>;
}

/** The sheet, with A and B kept and chosen. */
async function exportsSheet(options?: Parameters<typeof openPage>[0]): Promise<Exports> {
  const open = await openPage(options);
  const { page } = open;
  const parts = partsOf(page);
  await withoutFilePicker(page);
  await says(parts.stack, firstStack);
  await parts.button("Keep this one").click();
  await page.getByRole("textbox", { name: "Name of A" }).fill("Größe: 6/7?");
  await page.keyboard.press("Enter");
  await parts.map.focus();
  await page.keyboard.press("ArrowUp");
  await says(parts.place, "7 notes");
  await parts.button("Keep this one").click();
  await parts.button("Save or copy").click();
  const dialog = page.getByRole("dialog", { name: "Save or copy" });
  await dialog.waitFor();
  const save = async (what: string) => {
    const download = page.waitForEvent("download");
    await dialog.getByRole("button", { name: `Save as ${what}` }).click();
    const file = await download;
    return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
  };
  return { ...open, dialog, outcome: dialog.getByTestId("outcome"), save };
}

/** Distinct pitches that begin at a time, low to high. */
function pitchesAt(notes: readonly (readonly [number, number])[], onset: number): number[] {
  const own = notes.filter(([at]) => at === onset).map(([, midi]) => midi);
  return [...new Set(own)].sort((a, b) => a - b);
}

/** Samples of a WAV file of two channels and 24 bits, −1 to 1. */
function samplesOf(bytes: Buffer): readonly [Float32Array, Float32Array] {
  const data = bytes.indexOf("data") + 8;
  const frames = Math.floor((bytes.length - data) / 6);
  const channel = (offset: number) =>
    Float32Array.from(
      { length: frames },
      (_, frame) => bytes.readIntLE(data + 6 * frame + offset, 3) / 2 ** 23,
    );
  return [channel(0), channel(3)];
}

describe("files of the chosen voicings", () => {
  it("are MusicXML with a bar each, read again by us and by another library", async () => {
    const { save, outcome, complaints, close } = await exportsSheet();
    const { name, bytes } = await save("MusicXML");
    expect(name).toBe("hornweave-kept-A-B.musicxml");
    await says(outcome, "Saved as hornweave-kept-A-B.musicxml.");
    const text = bytes.toString("utf8");
    const read = readMusicXml(text);
    if (!read.ok) throw new Error(read.problem.message);
    const { bars, harmonies, parts } = read.value.score;
    expect(bars.map(({ rehearsal, words }) => [rehearsal, words])).toEqual([
      ["A", "Größe: 6/7?"],
      ["B", "Best here"],
    ]);
    expect(harmonies.map(({ symbol }) => symbol)).toEqual(["F13", "F13"]);
    expect(parts).toHaveLength(13);
    const notes = notesByMusicXmlIo(text).map(([, onset, , midi]) => [onset, midi] as const);
    expect(pitchesAt(notes, 0)).toEqual(firstPitches);
    expect(pitchesAt(notes, 4)).toEqual(secondPitches);
    expect(complaints).toEqual([]);
    await close();
  });

  it("are MIDI with a track for each player", async () => {
    const { save, close } = await exportsSheet();
    const { name, bytes } = await save("MIDI");
    expect(name).toBe("hornweave-kept-A-B.mid");
    const { tracks } = new tonejs.Midi(bytes);
    const sounding = tracks.filter((track) => track.notes.length > 0);
    expect(sounding).toHaveLength(13);
    const notes = sounding.flatMap((track) =>
      track.notes.map(({ time, midi }) => [time, midi] as const),
    );
    // 120 quarters a minute: the second bar begins after two seconds.
    expect(pitchesAt(notes, 0)).toEqual(firstPitches);
    expect(pitchesAt(notes, 2)).toEqual(secondPitches);
    await close();
  });

  it("are pictures without a font, and the same in pixels at twice the size", async () => {
    const { save, page, complaints, close } = await exportsSheet();
    const svg = (await save("SVG")).bytes.toString("utf8");
    const seen = await page.evaluate((text) => {
      const drawing = new DOMParser().parseFromString(text, "image/svg+xml");
      const root = drawing.documentElement;
      return {
        name: root.localName,
        title: root.querySelector("title")?.textContent,
        width: root.getAttribute("width"),
        height: root.getAttribute("height"),
        texts: root.querySelectorAll("text").length,
        heads: root.querySelectorAll(".vf-notehead path").length,
        variables: text.includes("var("),
      };
    }, svg);
    expect(seen).toMatchObject({ name: "svg", title: "A Größe: 6/7?, B Best here" });
    // Two voicings, 6 and 7 heads and one flat each.
    expect([seen.texts, seen.heads, seen.variables]).toEqual([0, 15, false]);
    const { bytes } = await save("PNG");
    expect(bytes.subarray(1, 4).toString()).toBe("PNG");
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([
      2 * Number(seen.width),
      2 * Number(seen.height),
    ]);
    expect(complaints).toEqual([]);
    await close();
  });

  it("are pictures of a staff for each player, too", async () => {
    const { dialog, save, close } = await exportsSheet();
    await dialog.getByRole("radio", { name: "Players, written" }).click();
    const svg = (await save("SVG")).bytes.toString("utf8");
    expect(svg).not.toContain("<text");
    // A clef for each player and voicing; on the grand staff there are two a voicing.
    const clefs = svg.match(/class="vf-clef"/g) ?? [];
    expect(clefs.length).toBeGreaterThan(2 * 4);
    await close();
  });

  it("are named after the voicing when there is one, safe on every system", async () => {
    const { page, dialog, close } = await exportsSheet();
    await page.keyboard.press("Escape");
    await partsOf(page)
      .button(/^Choose B/)
      .click();
    await partsOf(page).button("Save or copy").click();
    await dialog.getByRole("radio", { name: "Chosen: A" }).click();
    const download = page.waitForEvent("download");
    await dialog.getByRole("button", { name: "Save as MIDI" }).click();
    expect((await download).suggestedFilename()).toBe("hornweave-A-Größe-6-over-7-F13.mid");
    await close();
  });
});

describe("the sound of the chosen voicings", () => {
  it("is a WAV file in turn, level-matched to the loudness of all", async () => {
    const { dialog, save, outcome, complaints, close } = await exportsSheet();
    await dialog.getByRole("radio", { name: "In view" }).click();
    await dialog.getByRole("radio", { name: "Sustained" }).click();
    await dialog.getByRole("radio", { name: "Level-matched" }).click();
    const { name, bytes } = await save("WAV");
    expect(name).toBe("hornweave-F13-D5-sustained.wav");
    await says(outcome, "Saved as");
    expect(bytes.toString("latin1", 0, 4) + bytes.toString("latin1", 8, 12)).toBe("RIFFWAVE");
    expect(bytes.readUInt32LE(4)).toBe(bytes.length - 8);
    const [left, right] = samplesOf(bytes);
    const meter = new LoudnessMeter(48_000 as Hertz, 2);
    meter.push([left, right]);
    // ITU-R BS.1770 integrated loudness; half a unit for the limiter.
    expect(Math.abs(meter.integrated() - MATCH_TARGET_LUFS)).toBeLessThan(0.5);
    expect(complaints).toEqual([]);
    await close();
  });

  it("is written where the user says while it is made, and left out when cancelled", async () => {
    const { page, dialog, outcome, close } = await exportsSheet();
    await pickInto(page, "kept.wav");
    await dialog.getByRole("radio", { name: "Sections" }).click();
    const save = dialog.getByRole("button", { name: "Save as WAV" });
    await save.click();
    await dialog.getByRole("progressbar").waitFor();
    await dialog.getByRole("button", { name: "Cancel" }).press("Enter");
    await says(outcome, "Nothing was saved.");
    expect(await sizeOf(page, "kept.wav")).toBe(0);
    await save.click();
    await says(outcome, "Saved as hornweave-kept-A-B-section-by-section.wav.");
    // Twice six seconds and a gap, 2 channels of 24 bits.
    expect(await sizeOf(page, "kept.wav")).toBeGreaterThan(12.5 * 48_000 * 6);
    await close();
  });

  it.each([
    { reason: "AbortError", words: "Nothing was saved." },
    { reason: "QuotaExceededError", words: "There is no room left for the file" },
    { reason: "NotFoundError", words: "The file could not be written: save it to another place." },
  ])("says so in a sentence when it meets $reason", async ({ reason, words }) => {
    const { page, dialog, outcome, close } = await exportsSheet();
    await page.evaluate((name) => {
      const fault = () => Promise.reject(new DOMException("no", name));
      const nothing = () => Promise.resolve();
      const file = { write: fault, close: nothing, abort: nothing };
      const handle = { createWritable: () => Promise.resolve(file) };
      Reflect.set(window, "showSaveFilePicker", () =>
        name === "AbortError" ? fault() : Promise.resolve(handle),
      );
    }, reason);
    await dialog.getByRole("button", { name: "Save as WAV" }).click();
    await says(outcome, words);
    await close();
  });
});

/** Stands in for the user's answer to where the file goes: a file of the browser's own. */
async function pickInto(page: Page, name: string): Promise<void> {
  await page.evaluate((own) => {
    Reflect.set(window, "showSaveFilePicker", async () => {
      const folder = await navigator.storage.getDirectory();
      return folder.getFileHandle(own, { create: true });
    });
  }, name);
}

function sizeOf(page: Page, name: string): Promise<number> {
  return page.evaluate(async (own) => {
    const folder = await navigator.storage.getDirectory();
    return (await (await folder.getFileHandle(own)).getFile()).size;
  }, name);
}

describe("text and the sheet itself", () => {
  it("copies all that are chosen, with their names", async () => {
    const { page, dialog, outcome, close } = await exportsSheet({
      viewport: { width: 1440, height: 900 },
      permissions: ["clipboard-read", "clipboard-write"],
    });
    await dialog.getByRole("button", { name: "Copy as text" }).click();
    await says(outcome, "Copied 2 voicings as text.");
    const text = await page.evaluate(() => navigator.clipboard.readText());
    expect(text).toMatch(/^A: Größe: 6\/7\?\nF13 under D5, f\n/);
    expect(text).toMatch(/\n\nB: Best here\nF13 under D5, f\n/);
    await close();
  });

  it("says that the browser refused the clipboard, and what to do", async () => {
    const { page, dialog, outcome, close } = await exportsSheet();
    await page.evaluate(() => {
      const refuse = () => Promise.reject(new DOMException("no", "NotAllowedError"));
      Reflect.defineProperty(navigator, "clipboard", { value: { writeText: refuse } });
    });
    await dialog.getByRole("button", { name: "Copy as text" }).click();
    await says(outcome, "The browser refused the clipboard");
    await close();
  });

  it("is left by Escape to where it was opened, and axe finds nothing", async () => {
    const { page, dialog, complaints, close } = await exportsSheet();
    const { violations } = await new AxeBuilder({ page }).include("[role=dialog]").analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "detached" });
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent))
      .toBe("Save or copy");
    expect(complaints).toEqual([]);
    await close();
  });
});
