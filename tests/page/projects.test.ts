import { readFileSync, writeFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";
import { axeFaults, notice, openSheet, press, saved, work } from "./project-parts.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "projects-"));
});
afterAll(async () => {
  rmSync(folder, { recursive: true, force: true });
  await closeBrowser();
});

describe("work", () => {
  it("is there again after the page is loaded anew, with what can be undone and redone", async () => {
    const { page, complaints, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.button("Keep this one").click();
    await parts.token("tpt3").focus();
    await page.keyboard.press("Shift+ArrowUp");
    await page.keyboard.press("Control+z");
    await saved(page).waitFor();
    await page.reload();
    await page.getByRole("textbox", { name: "Name of A" }).waitFor();
    await press(page, "Redo").click();
    await says(parts.stack, "A♭4");
    await press(page, "Undo").click();
    await says(parts.stack, firstStack);
    await press(page, "Undo").click();
    await page.getByText("Nothing kept yet").waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  it("that was changed a moment before the page is left is there too", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await work(page);
    await parts.chord.fill("E7");
    await page.reload();
    expect(await parts.chord.inputValue()).toBe("E7");
    await close();
  });

  it("that was begun a moment before the page is left is there too, though never stored", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    // The part that writes is loaded once the page is idle.
    await page.waitForFunction(() =>
      performance.getEntriesByType("resource").some(({ name }) => name.includes("/files-")),
    );
    await page.waitForTimeout(300);
    await parts.chord.fill("E7");
    await page.reload();
    expect(await parts.chord.inputValue()).toBe("E7");
    await saved(page).waitFor();
    await close();
  });

  it("on a phrase is there again as well", async () => {
    const { page, complaints, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    await partsOf(page).choice("Phrase").click();
    await page.getByRole("button", { name: /Tidemill Shout/ }).click();
    await saved(page).waitFor();
    await page.reload();
    await page.getByRole("textbox", { name: "Title" }).waitFor();
    expect(await page.getByRole("textbox", { name: "Title" }).inputValue()).toBe("Tidemill Shout");
    await press(page, "Undo").click();
    await page.getByRole("button", { name: /Tidemill Shout/ }).waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  it("is not stored before anything is done: a first visit leaves no project behind", async () => {
    const { page, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    const sheet = await openSheet(page);
    await sheet.getByText("Nothing is stored yet.").waitFor();
    await close();
  });
});

describe("projects", () => {
  it("are named, started, opened and keep apart what is in them", async () => {
    const { page, complaints, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await work(page, "Cm9");
    let sheet = await openSheet(page);
    const name = sheet.getByRole("textbox", { name: "Name of this project" });
    await name.fill("Opener, letter B");
    await name.press("Enter");
    await sheet.getByRole("button", { name: "Rename Opener, letter B" }).waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await sheet.getByRole("button", { name: "Start a new one" }).click();
    await says(parts.stack, firstStack);
    expect(await press(page, "Undo").isDisabled()).toBe(true);
    await work(page, "G7");
    sheet = await openSheet(page);
    await sheet.getByRole("button", { name: "Open Opener, letter B" }).click();
    await page.getByRole("button", { name: "Projects: Opener, letter B" }).waitFor();
    expect(await parts.chord.inputValue()).toBe("Cm9");
    await page.reload();
    await page.getByRole("button", { name: "Projects: Opener, letter B" }).waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  it("are copied, renamed in the list, removed and brought back", async () => {
    const { page, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    await work(page);
    const sheet = await openSheet(page);
    await sheet.getByRole("button", { name: "Copy Sketch 1" }).click();
    await sheet.getByRole("button", { name: "Rename Sketch 1, copy" }).click();
    const field = sheet.getByRole("textbox", { name: "New name of Sketch 1, copy" });
    await field.fill("Shout, second try");
    await field.press("Enter");
    await sheet.getByRole("button", { name: "Remove Shout, second try" }).click();
    await sheet.getByText("Shout, second try is removed.").waitFor();
    expect(await sheet.getByRole("button", { name: /^Remove/ }).count()).toBe(1);
    await sheet.getByRole("button", { name: "Bring it back" }).click();
    await sheet.getByRole("button", { name: "Open Shout, second try" }).waitFor();
    await close();
  });

  it("go on with the latest other one when the one on the page is removed", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await work(page, "Cm9");
    await (await openSheet(page)).getByRole("button", { name: "Start a new one" }).click();
    await work(page, "G7");
    await (await openSheet(page)).getByRole("button", { name: "Remove Sketch 2" }).click();
    await page.getByRole("button", { name: "Projects: Sketch 1", includeHidden: true }).waitFor();
    expect(await parts.chord.inputValue()).toBe("Cm9");
    await close();
  });
});

describe("a file", () => {
  it("takes a project out and back in as one of its own, undo included", async () => {
    const { page, complaints, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await work(page, "Cm9");
    const sheet = await openSheet(page);
    const download = page.waitForEvent("download");
    await sheet.getByRole("button", { name: "Save as a file" }).click();
    const path = join(folder, "project.json");
    await (await download).saveAs(path);
    expect((await download).suggestedFilename()).toBe("hornweave-Sketch-1.json");
    await page.keyboard.press("Escape");
    await work(page, "G7");
    await (await openSheet(page)).getByLabel("Project file").setInputFiles(path);
    await page.getByRole("button", { name: "Projects: Sketch 2" }).waitFor();
    expect(await parts.chord.inputValue()).toBe("Cm9");
    await press(page, "Undo").click();
    await says(parts.stack, firstStack);
    await (await openSheet(page)).getByRole("button", { name: "Open Sketch 1" }).waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  it.each<[string, string, RegExp]>([
    ["no project at all", "<script>alert(1)</script>", /no readable JSON/],
    ["half a project", '{"format":2,"program":"hornweave"}', /damaged/],
    ["one of the future", '{"format":99}', /newer version/],
    ["one that reaches for the prototype", '{"__proto__":{"x":1},"format":1}', /damaged/],
  ])("that is %s is refused in a sentence, by the sheet", async (_, text, why) => {
    const { page, complaints, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await work(page);
    const path = join(folder, "hostile.json");
    writeFileSync(path, text);
    await (await openSheet(page)).getByLabel("Project file").setInputFiles(path);
    await says(notice(page), why);
    await says(notice(page), "Your work is as it was.");
    expect(await parts.chord.inputValue()).toBe("Cm9");
    expect(complaints).toEqual([]);
    await close();
  });

  it("is opened by dropping it, and never replaces the page", async () => {
    const { page, complaints, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    const drop = (name: string, text: string) =>
      page.evaluate(
        ([fileName = "", content = ""]) => {
          const data = new DataTransfer();
          data.items.add(new File([content], fileName));
          const event = { dataTransfer: data, bubbles: true, cancelable: true };
          document.body.dispatchEvent(new DragEvent("drop", event));
        },
        [name, text],
      );
    await drop("melody.musicxml", "<score/>");
    await says(notice(page), "It holds notes, not a project");
    await drop("zeros.json", "\0".repeat(100));
    await says(notice(page), "no readable JSON");
    const sample = readFileSync(new URL("../golden/files/project-2.json", import.meta.url), "utf8");
    await drop("act-2.json", sample);
    await page.getByRole("button", { name: "Projects: Test project, act 2" }).waitFor();
    await saved(page).waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  it("whose form is in order and whose music is nonsense leaves the page alive", async () => {
    const { page, complaints, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    const text = readFileSync(new URL("../golden/files/project-1.json", import.meta.url), "utf8");
    const file = JSON.parse(text) as {
      inquiries: Record<string, unknown>[];
      states: Record<string, unknown>[];
      present: number;
    };
    const pitches = { nobody: 0, tpt1: 127, bari: 0 };
    Object.assign(file.inquiries[0]!, { chord: "🎺".repeat(200), melody: "C99", lineUp: 0 });
    file.states = [
      {
        ...file.states[0]!,
        place: [127, 64, 64],
        made: { by: "hand", pitches, moved: ["ghost"], from: {}, title: "</p><img src=x>" },
        compared: ["Z9"],
      },
    ];
    file.present = 0;
    const path = join(folder, "nonsense.json");
    writeFileSync(path, JSON.stringify(file));
    await (await openSheet(page)).getByLabel("Project file").setInputFiles(path);
    await page.getByRole("button", { name: "Projects: Test project, act 2" }).waitFor();
    await partsOf(page).chord.fill("F13");
    await partsOf(page).melody.fill("D5");
    await saved(page).waitFor();
    await page.reload();
    await page.getByRole("button", { name: "Projects: Test project, act 2" }).waitFor();
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("a file with a nonsense phrase", () => {
  type Melody = Record<string, unknown> & { division: number };
  interface PhraseFile {
    notes: Record<string, unknown>[];
    melodies: Melody[];
    lineUps: unknown[];
    curves: Record<string, unknown>[];
  }
  it.each<[string, (file: PhraseFile) => void]>([
    ["all notes at once", ({ notes }) => notes.forEach((one) => Object.assign(one, { at: 0 }))],
    ["no note", ({ melodies }) => melodies.forEach((one) => Object.assign(one, { notes: [] }))],
    ["nobody to play", (file) => (file.lineUps = file.lineUps.map(() => []))],
    [
      "a curve that runs backwards",
      ({ curves }) =>
        curves.forEach((one) =>
          Object.assign(one, {
            span: [
              [99, 1000],
              [0, 0],
            ],
          }),
        ),
    ],
  ])("leaves the page alive: %s", async (_, change) => {
    const { page, complaints, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    const text = readFileSync(new URL("../golden/files/project-2.json", import.meta.url), "utf8");
    const file = JSON.parse(text) as PhraseFile;
    change(file);
    const path = join(folder, "phrase.json");
    writeFileSync(path, JSON.stringify(file));
    await (await openSheet(page)).getByLabel("Project file").setInputFiles(path);
    await page.getByRole("button", { name: "Projects: Test project, act 2" }).waitFor();
    await partsOf(page).choice("Phrase").click();
    await page.locator(".phrase-body").waitFor();
    await partsOf(page).choice("One chord").click();
    await partsOf(page).chord.fill("F13");
    await partsOf(page).melody.fill("D5");
    await saved(page).waitFor();
    expect(await page.locator(".rescue").count()).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });
});
