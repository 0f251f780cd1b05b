import AxeBuilder from "@axe-core/playwright";
import type { Locator, Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { hearOutput, listenIn } from "./listen-in.ts";
import { closeBrowser, openPage, type OpenPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

const desk = { viewport: { width: 1440, height: 900 } };
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

/** The lessons as a learner finds them. */
interface Lesson extends OpenPage {
  readonly dialog: Locator;
  readonly title: Locator;
  readonly change: Locator;
  readonly track: Locator;
  readonly spoken: Locator;
  readonly button: (name: string | RegExp) => Locator;
}

async function lesson(options: Parameters<typeof openPage>[0] = desk): Promise<Lesson> {
  const open = await openPage(options);
  const { page } = open;
  await says(partsOf(page).stack, firstStack);
  await listenIn(page);
  await page.getByRole("button", { name: "Lesson" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.locator(".pair").waitFor();
  return {
    ...open,
    dialog,
    title: dialog.getByRole("heading", { level: 1 }),
    change: dialog.getByTestId("change"),
    track: dialog.getByRole("radiogroup", { name: /^Right voicing/ }),
    spoken: dialog.getByTestId("spoken"),
    button: (name) => dialog.getByRole("button", { name, exact: typeof name === "string" }),
  };
}

/** Cells of the table's row of a measure: left, right. */
function figures(dialog: Locator, measure: string): Promise<readonly string[]> {
  return dialog
    .getByRole("row", { name: new RegExp(`^${measure}`) })
    .locator("td")
    .allInnerTexts();
}

async function faults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" | ")}`);
}

describe("the lesson", () => {
  it("opens on span with the root an octave lower on the right, and complains of nothing", async () => {
    const { change, dialog, complaints, close } = await lesson();
    // F13 under D5: the same six notes but for the root, 21 and 33 semitones.
    await says(change, "12 semitones wider: F3 gives way to F2.");
    expect(await figures(dialog, "Span")).toEqual(["21", "33"]);
    const [notes, players, weight] = await Promise.all(
      ["Notes", "Players", "Weight"].map((measure) => figures(dialog, measure)),
    );
    for (const pair of [notes, players, weight]) expect(pair?.[0]).toBe(pair?.[1]);
    expect(complaints).toEqual([]);
    await close();
  });

  it("takes the focus, keeps it, and gives it back on Escape", async () => {
    const { page, dialog, close } = await lesson();
    const isInside = () =>
      page.evaluate(() => document.activeElement?.closest('[role="dialog"]') !== null);
    await expect.poll(isInside).toBe(true);
    for (let tab = 0; tab < 30; tab += 1) {
      await page.keyboard.press("Tab");
      expect(await isInside()).toBe(true);
    }
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "detached" });
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent))
      .toBe("Lesson");
    await close();
  });

  it("lets the learner move one control by button and arrow keys, says and sounds each move", async () => {
    const { page, change, track, button, dialog, close } = await lesson();
    await button("Narrower").click();
    await says(change, /semitones wider: .* to /);
    await hearOutput(page);
    await track.getByRole("radio", { checked: true }).focus();
    await page.keyboard.press("Home");
    await says(change, "semitones narrower");
    // A status of its own: whatever else is announced cannot drown it.
    expect(await change.getAttribute("role")).toBe("status");
    await says(change, "notes per octave left");
    const narrowest = Number((await figures(dialog, "Span"))[1]);
    await page.keyboard.press("ArrowRight");
    await expect
      .poll(async () => Number((await figures(dialog, "Span"))[1]))
      .toBeGreaterThan(narrowest);
    await page.keyboard.press("End");
    await says(change, "12 semitones wider");
    await close();
  });

  it("can be silent on moves", async () => {
    const { page, track, button, change, dialog, close } = await lesson();
    await button("Each move sounds").click();
    await track.getByRole("radio", { checked: true }).focus();
    await page.keyboard.press("Home");
    await says(change, "semitones narrower");
    await dialog.getByText("Starts quietly; mind the volume on headphones.").waitFor();
    await close();
  });

  it("plays one, the other, and both in turn", async () => {
    const { page, button, dialog, close } = await lesson();
    await button("Left, then right").click();
    await dialog.getByText("Now Left").waitFor();
    await hearOutput(page);
    await dialog.getByText("Now Right").waitFor({ timeout: 20_000 });
    await button("Stop").click();
    await dialog.getByText("Held for three seconds").waitFor();
    await close();
  });

  it("goes from span over weight and density to interleaving and the quiz", async () => {
    const { title, button, dialog, change, close } = await lesson();
    await button("Next: weight").click();
    await says(title, "Weight");
    await says(change, /players more on the same notes/);
    const [light, heavy] = await figures(dialog, "Weight");
    expect(Number(heavy)).toBeGreaterThan(1.25 * Number(light));
    await button("Next: density").click();
    await says(change, /notes? more within the same span/);
    await button("Next: interleaving").click();
    await dialog.locator(".pair-warp").first().waitFor({ state: "attached" });
    expect((await figures(dialog, "Interleaving"))[0]).toBe("0.00");
    await button("Next: test your ear").click();
    await says(title, "Quiz");
    await close();
  });

  it("hears weight as played and everything else level-matched, unless told otherwise", async () => {
    const { dialog, button, close } = await lesson();
    const checked = dialog
      .getByRole("radiogroup", { name: "Level" })
      .getByRole("radio", { checked: true });
    expect(await checked.innerText()).toBe("Level-matched");
    await button("Weight").click();
    await says(checked, "As played");
    await dialog.getByRole("radio", { name: "Level-matched" }).click();
    await says(checked, "Level-matched");
    await close();
  });

  it("says in a sentence what three horns cannot show", async () => {
    const { page, close } = await openPage(desk);
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts
      .button(/Line-up/)
      .first()
      .click();
    await page.getByRole("option", { name: /three/i }).click();
    await says(parts.place, "3 players");
    await page.getByRole("button", { name: "Lesson" }).click();
    const dialog = page.getByRole("dialog");
    await dialog.getByRole("button", { name: "Interleaving" }).click();
    await dialog.getByText("It takes two sections").waitFor();
    await close();
  });

  it("takes no step of the page's undo", async () => {
    const { page, close, track } = await lesson();
    await track.getByRole("radio", { checked: true }).focus();
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("Control+z");
    await page.keyboard.press("Escape");
    await says(partsOf(page).stack, firstStack);
    for (const name of ["Undo", "Redo"])
      expect(await page.getByRole("button", { name, exact: true }).isDisabled()).toBe(true);
    await close();
  });
});

describe("large type", () => {
  it("shows nothing smaller than 20 px, the title in 84, on a projector", async () => {
    const { dialog, button, close } = await lesson({ viewport: { width: 1600, height: 900 } });
    await button("Large type").click();
    for (const topic of ["Span", "Weight", "Density", "Interleaving", "Quiz"]) {
      await button(topic).click();
      await dialog.locator(topic === "Quiz" ? ".quiz-begin" : ".pair").waitFor();
      const small = await dialog.evaluate((root) =>
        [...root.querySelectorAll("*")]
          .filter((one) => !one.closest(".unseen, title, defs"))
          .filter((one) =>
            [...one.childNodes].some(
              (node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim() !== "",
            ),
          )
          .filter((one) => Number.parseFloat(getComputedStyle(one).fontSize) < 20)
          .map((one) => `${one.textContent} ${getComputedStyle(one).fontSize}`),
      );
      expect(small).toEqual([]);
    }
    expect(
      await dialog
        .getByRole("heading", { level: 1 })
        .evaluate((title) => getComputedStyle(title).fontSize),
    ).toBe("84px");
    await close();
  });

  it.each([
    ["1600 × 900", { viewport: { width: 1600, height: 900 } }],
    ["1280 × 720", { viewport: { width: 1280, height: 720 } }],
  ])("fits the window at %s", async (_name, visitor) => {
    const { dialog, button, close } = await lesson(visitor);
    await button("Large type").click();
    for (const topic of ["Span", "Weight", "Density", "Interleaving"]) {
      await button(topic).click();
      await dialog.locator(".pair").waitFor();
      const over = await dialog.evaluate((root) => ({
        across: root.scrollWidth - root.clientWidth,
        down: root.scrollHeight - root.clientHeight,
        cut: [...root.querySelectorAll(".pair text")].filter((text) => {
          const box = text.getBoundingClientRect();
          const frame = root.querySelector(".lesson-drawing")?.getBoundingClientRect();
          return (
            frame !== undefined && (box.right > frame.right + 1 || box.bottom > frame.bottom + 1)
          );
        }).length,
      }));
      expect(over).toEqual({ across: 0, down: 0, cut: 0 });
    }
    await close();
  });
});

describe("the quiz", () => {
  async function quiz(options: Parameters<typeof openPage>[0] = desk) {
    const open = await lesson(options);
    await open.button("Quiz").click();
    await open.button("Begin").click();
    await open.dialog.getByRole("heading", { name: /^Which is/ }).waitFor();
    const verdict = open.dialog.getByTestId("verdict");
    return { ...open, verdict };
  }

  it("asks, hears the answer by key, and explains it with numbers that bear it out", async () => {
    const { page, dialog, verdict, spoken, close } = await quiz();
    for (let turn = 0; turn < 4; turn += 1) {
      const heading = await dialog.getByRole("heading", { name: /^Which is/ }).innerText();
      const more = /^Which is (.*)\?$/.exec(heading)?.[1] ?? "";
      expect(await dialog.locator(".pair").count()).toBe(0);
      await page.keyboard.press("a");
      await verdict.waitFor();
      const text = await verdict.innerText();
      const side = new RegExp(`(Right|No): ([AB]) is ${more}\\.`).exec(text);
      expect(side?.[1]).toBe(side?.[2] === "A" ? "Right" : "No");
      const measure =
        { wider: "Span", heavier: "Weight", denser: "Density" }[more] ?? "Interleaving";
      const [a = NaN, b = NaN] = (await figures(dialog, measure)).map(Number);
      expect(a > b ? "A" : "B").toBe(side?.[2]);
      await says(spoken, `is ${more}.`);
      await dialog.locator(".pair").waitFor();
      await page.keyboard.press("Enter");
      await verdict.waitFor({ state: "detached" });
    }
    await close();
  });

  it("goes through a round by keyboard alone, scores it and goes on", async () => {
    const { page, dialog, verdict, complaints, close } = await quiz();
    let right = 0;
    for (let turn = 0; turn < 12; turn += 1) {
      await page.keyboard.press(turn % 3 === 0 ? "b" : "a");
      await verdict.waitFor();
      if ((await verdict.innerText()).startsWith("Right")) right += 1;
      await says(dialog.getByTestId("score"), `${right} of ${turn + 1} right`);
      await page.keyboard.press("Enter");
      await verdict.waitFor({ state: "detached" });
    }
    await says(dialog.getByTestId("result"), `${right} of 12 right`);
    expect(await dialog.getByRole("button", { name: /^Hear \d+ again$/ }).count()).toBe(12);
    await page.keyboard.press("Enter");
    await dialog.getByText("Question 1 of 12").waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  it("sounds A, then B, and shows neither before the answer", async () => {
    const { page, dialog, close } = await quiz();
    // The way to hear has the focus already.
    await page.keyboard.press("Enter");
    await dialog.getByText("Now A").waitFor();
    await hearOutput(page);
    await dialog.getByText("Now B").waitFor({ timeout: 20_000 });
    expect(await dialog.locator(".pair, .lesson-table").count()).toBe(0);
    await close();
  });

  it("asks only what it is told to", async () => {
    const { dialog, button, close } = await lesson();
    await button("Quiz").click();
    await button(/^on wider/).click();
    await button(/^on heavier/).click();
    await button(/^on more interlocked/).click();
    // The last one stays on: a round needs something to ask.
    await button(/^on denser/).click();
    await button("Begin").click();
    await dialog.getByRole("heading", { name: "Which is denser?" }).waitFor();
    await close();
  });

  it("says that heavier is heard as played", async () => {
    const { dialog, button, close } = await lesson();
    await button("Quiz").click();
    for (const other of ["wider", "denser", "more interlocked"])
      await button(new RegExp(`^on ${other}`)).click();
    await button("Begin").click();
    await dialog.getByText("As played: loudness is part of weight").waitFor();
    await close();
  });
});

describe.each([
  ["at a desk", desk],
  ["at a desk, dark", { ...desk, colorScheme: "dark" as const }],
  ["on a projector", { viewport: { width: 1600, height: 900 } }],
  ["on a tablet", { viewport: { width: 1024, height: 768 } }],
  ["on a phone", phone],
])("lessons and quiz %s", (name, visitor) => {
  it("pass axe and do not scroll sideways", async () => {
    const { page, dialog, button, close } = await lesson(visitor);
    if (name === "on a projector") await button("Large type").click();
    const check = async () => {
      expect(await faults(page)).toEqual([]);
      const over = await dialog.evaluate((root) => root.scrollWidth - root.clientWidth);
      expect(over).toBeLessThanOrEqual(0);
    };
    await check();
    await button("Interleaving").click();
    await dialog.locator(".pair-warp").first().waitFor({ state: "attached" });
    await check();
    await button("Quiz").click();
    await button("Begin").waitFor();
    await check();
    await button("Begin").click();
    await dialog.getByRole("heading", { name: /^Which is/ }).waitFor();
    await check();
    await page.keyboard.press("b");
    await dialog.getByTestId("verdict").waitFor();
    await check();
    await close();
  });
});
