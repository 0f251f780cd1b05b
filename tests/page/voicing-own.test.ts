import { afterAll, describe, expect, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { cornerOf, firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

describe("two players", () => {
  it("change places by keyboard, as one step", async () => {
    const { page, complaints, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.token("tbn1").focus();
    await page.keyboard.press("s");
    await says(parts.spoken, "Swap Trombone 1 with whom?");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Enter");
    await says(parts.spoken, "Swapped: Tbn 1 on C4, Tbn 2 on E♭4");
    expect(await parts.token("tbn1").getAttribute("aria-label")).toMatch(/^Trombone 1, C4/);
    expect(await parts.token("tbn2").getAttribute("aria-label")).toMatch(/^Trombone 2, E flat 4/);
    await page.keyboard.press("Control+z");
    await expect
      .poll(() => parts.token("tbn1").getAttribute("aria-label"))
      .toMatch(/^Trombone 1, E flat 4/);
    expect(complaints).toEqual([]);
    await close();
  });

  it("change places by the mouse: a control and a press, or one token taken onto another", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.token("alto1").click();
    await parts.button("Swap").click();
    await page.getByText("Swap Alto 1:").waitFor();
    await parts.token("tpt4").click();
    await parts.button("Undo: swap Alto 1 and Tpt 4").waitFor();
    const from = await cornerOf(parts.token("tpt3"));
    const to = await cornerOf(parts.token("tbn3"));
    await page.mouse.move(from.x + 20, from.y + 14);
    await page.mouse.down();
    await page.mouse.move(to.x + 20, to.y + 14, { steps: 8 });
    // A hand comes to rest on the token: what the way there changed is put back first.
    await page.mouse.move(to.x + 22, to.y + 15, { steps: 3 });
    await page.mouse.up();
    await parts.button("Undo: swap Tpt 3 and Tbn 3").waitFor();
    await close();
  });
});

describe("a voicing of one's own", () => {
  it("is typed, shown by hand with its broken rules, and falls on the map", async () => {
    const { page, complaints, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.button("Type a voicing").click();
    await page.keyboard.type("tpt1 D5, alto1 B4, tbn1 F4, bari A2");
    await page.keyboard.press("Enter");
    await says(parts.stack, "A2 F4 B4 D5");
    await page.getByTestId("broken").waitFor();
    await says(parts.place, "4 notes, 4 players");
    await says(parts.spoken, "It lies at 2 octaves + P4, 4 notes, 4 players");
    await page.getByRole("textbox", { name: /^Your own voicing/ }).fill("F2 A3 C4 Eb4 G4 D5");
    await page.keyboard.press("Enter");
    await says(parts.stack, firstStack);
    await says(parts.place, "13 players");
    expect(complaints).toEqual([]);
    await close();
  });

  it("names the place of what cannot be read, and keeps what was there", async () => {
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await parts.button("Type a voicing").click();
    await page.keyboard.type("tpt1 D5, vibes B4");
    await page.keyboard.press("Enter");
    await page.getByText("At “vibes”:").waitFor();
    expect(await parts.stack.innerText()).toBe(firstStack);
    await close();
  });
});
