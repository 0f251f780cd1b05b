import AxeBuilder from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { plugIn, release, strike } from "./midi-stand-in.ts";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

const desk = { viewport: { width: 1440, height: 900 } };
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

async function faults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" | ")}`);
}

/** The phrase view, before a phrase is begun. */
async function phraseView(options: Parameters<typeof openPage>[0] = desk) {
  const open = await openPage(options);
  const { page } = open;
  await says(partsOf(page).stack, firstStack);
  await page.getByRole("radio", { name: "Phrase" }).click();
  await page.getByRole("heading", { name: /voiced for every player/ }).waitFor();
  return {
    ...open,
    ...partsOf(page),
    staff: page.getByTestId("staff"),
    moment: page.getByTestId("moment"),
    voiced: page.locator('[data-testid="phrase-state"][data-whole="true"]'),
    text: page.getByRole("textbox", { name: /^Melody in ABC/ }),
    asText: () => page.getByRole("radio", { name: "As text" }).click(),
  };
}

async function shout(options: Parameters<typeof openPage>[0] = desk) {
  const view = await phraseView(options);
  await view.button("Tidemill Shout").click();
  await view.voiced.waitFor();
  return view;
}

describe("the phrase view", () => {
  it("opens a ready phrase with one click, voiced, and is shown again after a reload", async () => {
    const { page, voiced, complaints, close } = await shout();
    await says(voiced, /^42 moments/);
    expect(await faults(page)).toEqual([]);
    await page.reload();
    await page.getByRole("radio", { name: "Phrase", checked: true }).waitFor();
    await page.getByRole("radio", { name: "One chord" }).click();
    await says(partsOf(page).stack, firstStack);
    expect(complaints).toEqual([]);
    await close();
  });

  it("changes between one chord and phrase by keys alone, the focus staying on the switch", async () => {
    const { page, close } = await phraseView();
    await page.keyboard.press("ArrowLeft");
    await says(partsOf(page).stack, firstStack);
    const focused = () => page.evaluate(() => document.activeElement?.textContent);
    expect(await focused()).toBe("One chord");
    await page.keyboard.press("ArrowRight");
    await page.getByRole("heading", { name: /voiced for every player/ }).waitFor();
    expect(await focused()).toBe("Phrase");
    await close();
  });

  it("fits a phone without scrolling sideways", async () => {
    const { page, close } = await shout(phone);
    const wide = () =>
      page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(await wide()).toBeLessThanOrEqual(0);
    expect(await faults(page)).toEqual([]);
    await close();
  });
});

describe("the melody", () => {
  it("is written on the staff by keys, chord and all, and taken back step by step", async () => {
    const { page, staff, voiced, asText, text, button, close } = await phraseView();
    await button("Eight empty bars").click();
    await staff.focus();
    await page.keyboard.press("h");
    await page.keyboard.type("Bb7");
    await page.keyboard.press("Enter");
    // Quarters D, F, a rest, a half G tied on by an eighth, an octave lower; a triplet.
    for (const key of ["4", "d", "f", "r", "2", "g", "8", "t", "PageDown", "3", "a", "b", "c"])
      await page.keyboard.press(key);
    await voiced.waitFor();
    await asText();
    // ABC 2.1: small letters from C5 up, (3 a triplet, - a tie.
    expect(await text.inputValue()).toContain('"Bb7"d2 f2 z2 G2- | G2- G (3ABc');
    await button("Undo").click();
    expect(await text.inputValue()).not.toContain("(3ABc");
    await close();
  });

  it("is written on the staff by mouse, and a note is dragged to another pitch", async () => {
    const { page, staff, voiced, asText, text, button, close } = await phraseView();
    await button("Eight empty bars").click();
    const box = await staff.locator("svg").first().boundingBox();
    if (box === null) throw new Error("there is no staff");
    // The middle line of the treble staff is B4, half a space up is C5.
    const middle = box.y + 76; // bottom line at 92, 8 between lines
    await page.mouse.click(box.x + 79, middle);
    await voiced.waitFor();
    const head = staff.locator("[data-chosen] text:not(.rest)").first();
    const at = await head.boundingBox();
    if (at === null) throw new Error("there is no note");
    await page.mouse.move(at.x + 4, middle);
    await page.mouse.down();
    await page.mouse.move(at.x + 4, middle - 4);
    await page.mouse.up();
    await asText();
    expect(await text.inputValue()).toMatch(/\nc/);
    await close();
  });

  it("is played in, key by key, in the length that is chosen", async () => {
    const open = await openPage(desk);
    const { page, close } = open;
    await plugIn(page, "yes");
    await page.reload();
    await says(partsOf(page).stack, firstStack);
    await page.getByRole("radio", { name: "Phrase" }).click();
    await partsOf(page).button("Eight empty bars").click();
    await partsOf(page).button("MIDI keyboard and out").press("Enter");
    await partsOf(page).button("Connect MIDI").press("Enter");
    await page.getByRole("dialog").getByRole("button", { name: "Keyboard" }).click();
    await page.getByRole("option", { name: "Test keyboard" }).click();
    await page.getByRole("button", { name: "Close", exact: true }).click();
    for (const key of [60, 64, 67]) {
      await strike(page, key);
      await release(page, key);
      await page.waitForFunction(
        (count) => document.querySelectorAll("[data-chosen] text:not(.rest)").length >= count,
        key === 60 ? 1 : key === 64 ? 2 : 3,
      );
    }
    await page.getByRole("radio", { name: "As text" }).click();
    const text = page.getByRole("textbox", { name: /^Melody in ABC/ });
    // C4, E4 and G4 as eighths: capitals without a comma in ABC 2.1.
    expect(await text.inputValue()).toContain("CE G");
    await close();
  });

  it("says bar and reason of text that cannot be read, keeps it and the last good answer", async () => {
    const { page, voiced, asText, text, moment, close } = await shout();
    const before = await moment.innerText();
    await asText();
    const typed = (await text.inputValue()).replace('"F7"fd', '"Fnonsense"fd');
    await text.fill(typed);
    await page.getByText(/Bar 3, chord “Fnonsense”/).waitFor();
    expect(await text.inputValue()).toBe(typed);
    expect(await moment.innerText()).toBe(before);
    await voiced.waitFor();
    expect(await faults(page)).toEqual([]);
    await close();
  });

  it("comes from a file, and a file that is none is refused in a sentence", async () => {
    const { page, voiced, problems, button, close } = await shout();
    const file = (name: string, text: string) =>
      page.getByTestId("melody-file").setInputFiles({
        name,
        mimeType: "text/plain",
        buffer: Buffer.from(text),
      });
    await file("broken.musicxml", "<score-partwise");
    await says(problems, "broken.musicxml could not be opened.");
    expect(await page.getByRole("textbox", { name: "Title" }).inputValue()).toBe("Tidemill Shout");
    await button("Close").click();
    await file("tune.abc", 'X:1\nT:Small tune\nM:4/4\nL:1/4\nK:C\n"C6"c e g e | "G7"f d B2 |]\n');
    await expect
      .poll(() => page.getByRole("textbox", { name: "Title" }).inputValue())
      .toBe("Small tune");
    await says(voiced, /^7 moments/);
    await close();
  });
});

describe("what the user decides", () => {
  it("opens a moment on the one-chord page and brings another voicing of it back, fixed", async () => {
    const { page, staff, moment, voiced, button, stack, close } = await shout();
    await staff.focus();
    for (let step = 0; step < 3; step += 1) await page.keyboard.press("ArrowRight");
    await says(moment, "C5 over F6");
    await button("Open on the one-chord page").click();
    const bar = page.getByRole("group", { name: "From the phrase" });
    await says(bar, "bar 1, the and of 2");
    await page.getByTestId("map").waitFor();
    const before = await stack.innerText();
    await button("Show the best here").click();
    await expect.poll(() => stack.innerText()).not.toBe("");
    const wanted = await stack.innerText();
    await button("Fix this voicing there").click();
    await button("Fixed as a whole: free it").waitFor();
    await voiced.waitFor();
    const pitches = await page.locator(".moment-pitch").allInnerTexts();
    expect(new Set(pitches)).toEqual(new Set(wanted.split(" ")));
    expect(before).not.toBe("");
    await close();
  });

  it("changes harmony and marks of one note, and gives both back to the rules", async () => {
    const { page, staff, moment, voiced, button, close } = await shout();
    await staff.focus();
    for (let step = 0; step < 5; step += 1) await page.keyboard.press("ArrowRight");
    await says(moment, "B4 over E6");
    await page.getByRole("button", { name: /Harmony/ }).click();
    await page.getByRole("option", { name: /Chord sound/ }).click();
    await says(moment, "B4 over F6");
    await voiced.waitFor();
    const fall = button("fall");
    await fall.click();
    await expect.poll(() => fall.getAttribute("aria-pressed")).toBe("true");
    await button("Back to the rules").click();
    await expect.poll(() => fall.getAttribute("aria-pressed")).toBe("false");
    await close();
  });

  it("draws curves and rests by keys, and chooses among answers that differ", async () => {
    const { page, voiced, button, complaints, close } = await shout();
    const point = page.getByRole("slider", { name: /^Weight/ }).first();
    const value = Number(await point.getAttribute("aria-valuenow"));
    await point.focus();
    await page.keyboard.press("ArrowUp");
    await expect
      .poll(async () => Number(await point.getAttribute("aria-valuenow")))
      .toBe(value + 1);
    const cell = page.getByRole("button", { name: /^Saxes, bar 1:/ });
    await cell.focus();
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Saxes, bar 2: rests" }).waitFor();
    await voiced.waitFor();
    await button("Look for three").click();
    const answers = page.locator(".alternative");
    await answers.nth(2).waitFor();
    await answers.nth(2).click();
    await expect.poll(() => answers.nth(2).getAttribute("aria-pressed")).toBe("true");
    await voiced.waitFor();
    await says(answers.nth(2), "in view");
    await says(answers.nth(0), /\d+ % of the notes differ/);
    await button("Undo").click();
    await expect.poll(() => answers.nth(0).getAttribute("aria-pressed")).toBe("true");
    expect(complaints).toEqual([]);
    await close();
  });
});
