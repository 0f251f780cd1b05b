import { readFileSync } from "node:fs";
import { afterAll, describe, expect, inject, it } from "vitest";
import { readProject, readShareLink, writeShareLink } from "../../src/files/index.ts";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";
import { axeFaults, notice, saved } from "./project-parts.ts";

afterAll(closeBrowser);

const sample = readFileSync(new URL("../golden/files/project-1.json", import.meta.url), "utf8");

/** A link to the sample project, saved with whatever version of the costs. */
function sampleLink(): string {
  const read = readProject(sample);
  if (!read.ok) throw new Error(read.problem.message);
  const { history } = read.value.project;
  const [first] = history.past;
  const link = writeShareLink({
    ...read.value.project,
    history: { ...history, present: first ?? history.present },
  });
  if (!link.ok) throw new Error(link.problem.message);
  return `#${link.value}`;
}

describe("sharing", () => {
  it("copies a link that holds question and kept voicings, and opens it elsewhere", async () => {
    const { page, complaints, close } = await openPage({
      viewport: { width: 1440, height: 900 },
      permissions: ["clipboard-read", "clipboard-write"],
    });
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.button("Keep this one").click();
    await parts.chord.fill("Cm9");
    await says(parts.stack, "E♭3");
    const stack = await parts.stack.textContent();
    await parts.button("Share").click();
    await says(notice(page), "Link copied.");
    await says(notice(page), "the question and one kept voicing");
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(link.startsWith(`${inject("pageAddress")}#1.`)).toBe(true);
    const other = await openPage(undefined, new URL(link).hash);
    await says(partsOf(other.page).stack, stack ?? "");
    await other.page.getByRole("textbox", { name: "Name of A" }).waitFor();
    await says(notice(other.page), "came with a link");
    expect(complaints).toEqual([]);
    expect(other.complaints).toEqual([]);
    await close();
    await other.close();
  });

  it("shows the link where the clipboard is refused", async () => {
    const { page, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    await page.evaluate(() => {
      Object.defineProperty(navigator, "clipboard", { value: undefined });
    });
    await partsOf(page).button("Share").click();
    const link = await page.getByRole("textbox", { name: "The link" }).inputValue();
    expect(readShareLink(new URL(link).hash)).toMatchObject({ ok: true });
    expect(await axeFaults(page)).toEqual([]);
    await close();
  });

  it("offers the file where the project is too large for a link", async () => {
    const { page, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    const file = JSON.parse(sample) as {
      states: { kept: number[] }[];
      kept: object[];
      present: number;
    };
    // Notes of digits that cannot be packed.
    file.kept = Array.from({ length: 300 }, (_, index) => ({
      ...file.kept[0],
      letter: `A${index}`,
      note: String(7n ** BigInt(400 + index)),
    }));
    file.states[file.present]!.kept = file.kept.map((_, index) => index);
    await page.evaluate((text) => {
      const data = new DataTransfer();
      data.items.add(new File([text], "large.json"));
      const event = { dataTransfer: data, bubbles: true, cancelable: true };
      document.body.dispatchEvent(new DragEvent("drop", event));
    }, JSON.stringify(file));
    await page.getByRole("button", { name: "Projects: Test project, act 2" }).waitFor();
    await partsOf(page).button("Share").click();
    await says(notice(page), "too large for a link");
    await notice(page).getByRole("button", { name: "Save as a file" }).waitFor();
    await close();
  });
});

describe("a link", () => {
  it("opens as a project of its own, kept once something changes, beside what is stored", async () => {
    const { page, complaints, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.chord.fill("Cm9");
    await saved(page).waitFor();
    await page.goto(inject("pageAddress") + sampleLink());
    await page.getByRole("button", { name: "Projects: Test project, act 2" }).waitFor();
    await says(page.getByTestId("saved"), "from a link");
    await says(notice(page), "your other projects are as they were");
    await parts.melody.fill("C5");
    await saved(page).waitFor();
    expect(new URL(page.url()).hash).toBe("");
    await page.reload();
    await page.getByRole("button", { name: "Projects: Test project, act 2" }).waitFor();
    expect(await parts.melody.inputValue()).toBe("C5");
    await parts.button(/^Projects:/).click();
    await page.getByRole("button", { name: "Open Sketch 1" }).click();
    await page.getByRole("button", { name: "Projects: Sketch 1" }).waitFor();
    expect(await parts.chord.inputValue()).toBe("Cm9");
    expect(complaints).toEqual([]);
    await close();
  });

  it("that is only looked at leaves nothing behind", async () => {
    const { page, close } = await openPage(undefined, sampleLink());
    await says(notice(page), "came with a link");
    await partsOf(page)
      .button(/^Projects:/)
      .click();
    await page.getByText("Nothing is stored yet.").waitFor();
    await close();
  });

  it("from another version of the costs says so, the notes stay", async () => {
    const { deflateSync, strToU8 } = await import("fflate");
    const other = sample.replace('"model": 1', '"model": 999');
    const packed = Buffer.from(deflateSync(strToU8(other))).toString("base64url");
    const { page, close } = await openPage(undefined, `#1.${packed}`);
    await says(notice(page), "another version of the costs");
    await close();
  });

  it.each<[string, string, RegExp]>([
    ["is cut off", sampleLink().slice(0, -20), /damaged/],
    ["is no link of ours", "#<img src=x onerror=alert(1)>", /damaged/],
    ["comes from the future", "#9.AAAA", /newer version/],
    ["is a megabyte long", `#1.${"A".repeat(1_000_000)}`, /too long/],
  ])("that %s is refused in a sentence; the page lives", async (_, fragment, why) => {
    const { page, complaints, close } = await openPage(undefined, fragment);
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await says(notice(page), why);
    await notice(page).getByRole("button", { name: "Close" }).click();
    await parts.chord.fill("Cm9");
    await saved(page).waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  it("that unpacks to forty megabytes is refused before it fills the memory", async () => {
    const { deflateSync } = await import("fflate");
    const bomb = Buffer.from(deflateSync(new Uint8Array(40_000_000))).toString("base64url");
    const { page, close } = await openPage(undefined, `#1.${bomb}`);
    await says(notice(page), "holds more than a project can");
    await says(partsOf(page).stack, firstStack);
    await close();
  });

  it("that is refused leaves the stored project on the page", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.chord.fill("Cm9");
    await saved(page).waitFor();
    await page.goto(`${inject("pageAddress")}#1.broken`);
    await says(notice(page), "was not opened");
    expect(await parts.chord.inputValue()).toBe("Cm9");
    await page.reload();
    await says(notice(page), "was not opened");
    await page.getByRole("button", { name: "Projects: Sketch 1" }).waitFor();
    expect(await parts.chord.inputValue()).toBe("Cm9");
    await close();
  });
});
