import { afterAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";

const desk = { viewport: { width: 1440, height: 900 } };
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

afterAll(closeBrowser);

describe.each([
  ["at a desk", desk],
  ["on a phone", phone],
])("a first visit %s", (_name, visitor) => {
  it("shows an answer, complains of nothing and asks for nothing from elsewhere", async () => {
    const { page, complaints, close } = await openPage(visitor);
    // F13 under D5 for thirteen horns: root F2 at the bottom of the widest good answer.
    await page.getByText("F2 A3 C4 E♭4 G4 D5").first().waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  it("does not scroll sideways", async () => {
    const { page, close } = await openPage(visitor);
    await page.getByText("F2 A3 C4 E♭4 G4 D5").first().waitFor();
    const [inside, outside] = await page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ]);
    expect(inside).toBeLessThanOrEqual(outside ?? 0);
    await close();
  });
});

describe("what cannot be read", () => {
  it("is said in a sentence, and the answer before it stays", async () => {
    const { page, complaints, close } = await openPage(desk);
    await page.getByText("F2 A3 C4 E♭4 G4 D5").first().waitFor();
    const chord = page.getByRole("textbox", { name: "Chord", exact: false }).first();
    await chord.fill("H7");
    await chord.press("Enter");
    await page.getByText("A chord starts with its root").first().waitFor();
    expect(await page.getByText("F2 A3 C4 E♭4 G4 D5").count()).toBeGreaterThan(0);
    expect(complaints).toEqual([]);
    await close();
  });
});
