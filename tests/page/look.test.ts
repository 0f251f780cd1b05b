import AxeBuilder from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage, type OpenPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

const desk = { viewport: { width: 1440, height: 900 } };
const sizes = [
  ["1440 × 900", desk],
  ["1440 × 900, dark", { ...desk, colorScheme: "dark" as const }],
  ["1024 × 768", { viewport: { width: 1024, height: 768 } }],
  ["820 × 1180", { viewport: { width: 820, height: 1180 } }],
  ["390 × 844", { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }],
  [
    "390 × 844, dark",
    {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
      colorScheme: "dark" as const,
    },
  ],
] as const;

/** What axe finds, the map's marks left out: they are hidden from it and tested by keyboard. */
async function faults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).exclude(".lattice").analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" | ")}`);
}

describe.each(sizes)("at %s", (_name, visitor) => {
  // Both only look at the page: one visit does.
  let open: OpenPage;
  beforeAll(async () => {
    open = await openPage(visitor);
    await says(partsOf(open.page).stack, firstStack);
    await open.page.locator(".token").first().waitFor();
  });
  afterAll(() => open.close());

  it("shows everything inside the window's width, the tokens without overlap", async () => {
    const { page } = open;
    const outside = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(outside).toBeLessThanOrEqual(0);
    const overlaps = await page.evaluate(() => {
      const boxes = [...document.querySelectorAll(".token > path:first-of-type")].map((one) =>
        one.getBoundingClientRect(),
      );
      return boxes.flatMap((a, index) =>
        boxes
          .slice(index + 1)
          .filter(
            (b) =>
              a.left < b.right - 1 &&
              b.left < a.right - 1 &&
              a.top < b.bottom - 1 &&
              b.top < a.bottom - 1,
          ),
      ).length;
    });
    expect(overlaps).toBe(0);
  });

  it("gives axe nothing to find", async () => {
    expect(await faults(open.page)).toEqual([]);
  });
});

describe("the other views", () => {
  it("give axe nothing to find: a broken rule, a problem at a field, kept ones", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.token("tpt3").focus();
    await page.keyboard.press("Shift+ArrowUp");
    await page.getByTestId("broken").waitFor();
    await parts.button("Keep this one").click();
    await parts.chord.fill("F13b");
    await parts.problems.waitFor();
    expect(await faults(page)).toEqual([]);
    await close();
  });

  it("give axe nothing to find: the map as a table, of a line-up that keeps it short", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts
      .button(/Line-up/)
      .first()
      .click();
    await page.getByRole("option", { name: "Three horns" }).click();
    await says(parts.place, "3 players");
    await parts.button("As a table").click();
    await page.getByRole("table").waitFor();
    expect(await faults(page)).toEqual([]);
    await close();
  });

  it.each([/^Rules/, "Edit the players of the line-up", "Help"])(
    "give axe nothing to find: the dialog behind %s",
    async (name) => {
      const { page, close } = await openPage();
      const parts = partsOf(page);
      await says(parts.stack, firstStack);
      await parts.button(name).click();
      await page.getByRole("dialog").waitFor();
      expect(await faults(page)).toEqual([]);
      await page.keyboard.press("Escape");
      await page.getByRole("dialog").waitFor({ state: "detached" });
      await close();
    },
  );

  it("keep light or dark as chosen, whatever the system prefers", async () => {
    const { page, close } = await openPage(desk);
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    const ground = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    const light = await ground();
    await parts.button("Help").click();
    await parts.choice("dark").click();
    expect(await ground()).not.toBe(light);
    await page.reload();
    await says(parts.stack, firstStack);
    expect(await ground()).not.toBe(light);
    await close();
  });

  it("keep working with forced colours and without motion", async () => {
    const { page, complaints, close } = await openPage({
      ...desk,
      forcedColors: "active",
      reducedMotion: "reduce",
    });
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    const seconds = await page
      .locator(".token")
      .first()
      .evaluate((one) => getComputedStyle(one).transitionDuration);
    expect(Number.parseFloat(seconds)).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });
});
