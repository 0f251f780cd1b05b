import AxeBuilder from "@axe-core/playwright";
import type { Locator, Page } from "playwright-core";
import { partsOf } from "./page-parts.ts";

/** The word that everything is stored. */
export const saved = (page: Page) => page.getByTestId("saved").filter({ hasText: /^saved$/ });
/** What is said over the page. */
export const notice = (page: Page) => page.getByTestId("notice");

/** Asks for another chord and waits until that is stored. */
export async function work(page: Page, chord = "Cm9"): Promise<void> {
  await partsOf(page).chord.fill(chord);
  await saved(page).waitFor();
}

/** A button with just this name. */
export const press = (page: Page, name: string) => page.getByRole("button", { name, exact: true });

/** Opens the list of projects. */
export async function openSheet(page: Page): Promise<Locator> {
  await page.getByRole("button", { name: /^Projects:/ }).click();
  const sheet = page.getByRole("dialog", { name: "Projects" });
  await sheet.waitFor();
  return sheet;
}

/** What axe finds, the map's marks left out. */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).exclude(".lattice").analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" | ")}`);
}
