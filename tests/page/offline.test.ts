import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, inject, it } from "vitest";
import { serveFolder } from "../../.ci/serve.mjs";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

/** Waits until all files are kept and served from there. */
async function kept(page: Page): Promise<void> {
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === "activated");
}

describe("without a network", () => {
  it("everything works after the first load: the question, sound, lessons, projects, the phrase", async () => {
    const { page, complaints, close } = await openPage();
    const parts = partsOf(page);
    await says(parts.stack, firstStack);
    await kept(page);
    await page.context().setOffline(true);
    await page.reload();
    await says(parts.stack, firstStack);
    await parts.chord.fill("Cm9");
    await says(parts.stack, "E♭3");
    await page
      .getByTestId("saved")
      .filter({ hasText: /^saved$/ })
      .waitFor();
    // The drawing and its music fonts.
    await page.locator(".voicing svg").first().waitFor();
    const fonts = await page.evaluate(async () => {
      await document.fonts.ready;
      return [...document.fonts].filter(({ status }) => status === "error").length;
    });
    expect(fonts).toBe(0);
    await parts.button(/^Sustained/).click();
    await page.waitForFunction(() =>
      performance.getEntriesByType("resource").some(({ name }) => name.includes("playback-")),
    );
    await page.keyboard.press("Escape");
    await parts.button("Lesson").click();
    await page.getByRole("dialog").waitFor();
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: /^Projects:/ }).click();
    await page.getByText("works without a network").waitFor();
    await page.keyboard.press("Escape");
    await parts.choice("Phrase").click();
    await page.getByRole("radio", { name: "Phrase", checked: true }).waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  it("every file of the page is there, the chunks and workers that were never asked for too", async () => {
    const { page, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    await kept(page);
    const worker = await (await fetch(`${inject("pageAddress")}service-worker.js`)).text();
    const files = JSON.parse(/"files":(\[[^\]]*\])/.exec(worker)?.[1] ?? "[]") as string[];
    for (const part of ["index.html", "manifest.webmanifest", "icon-512.png"])
      expect(files).toContain(part);
    for (const part of ["teaching-worker", "phrase-worker", "render-worker", "bravura", "abcjs"])
      expect(
        files.some((file) => file.includes(part)),
        part,
      ).toBe(true);
    await page.context().setOffline(true);
    const missing = await page.evaluate(async (all) => {
      const answers = await Promise.all(
        all.map((file) =>
          fetch(file).then(
            ({ ok }) => ok,
            () => false,
          ),
        ),
      );
      return all.filter((_, index) => answers[index] !== true);
    }, files);
    expect(missing).toEqual([]);
    await close();
  });
});

describe("a newer version", () => {
  it("is said, and opens only when the user loads the page; the work is kept", async () => {
    const folder = mkdtempSync(join(tmpdir(), "newer-"));
    cpSync(resolve(import.meta.dirname, "../../dist"), folder, { recursive: true });
    const served = await serveFolder(folder, 0);
    const { page, close } = await openPage();
    const parts = partsOf(page);
    await page.goto(served.address);
    await says(parts.stack, firstStack);
    await kept(page);
    await parts.chord.fill("Cm9");
    // Another version is put on the server: its script has another name.
    const change = (name: string, from: string | RegExp, to: string) =>
      writeFileSync(join(folder, name), readFileSync(join(folder, name), "utf8").replace(from, to));
    const [script = ""] =
      /assets\/index-[\w-]{8}\.js/.exec(readFileSync(join(folder, "index.html"), "utf8")) ?? [];
    cpSync(join(folder, script), join(folder, "assets/index-newer000.js"));
    change("index.html", script, "assets/index-newer000.js");
    change("service-worker.js", script, "assets/index-newer000.js");
    change("service-worker.js", /"version":"\w+"/, '"version":"newer"');
    await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      await registration?.update();
    });
    await says(page.getByTestId("notice"), "A newer version of Hornweave is there.");
    const loaded = () => page.locator('script[type="module"]').getAttribute("src");
    expect(await loaded()).toContain(script);
    await parts.button("Load it now").click();
    await page.waitForFunction(() =>
      document.querySelector<HTMLScriptElement>('script[type="module"]')?.src.includes("newer"),
    );
    await says(parts.stack, "E♭3");
    expect(await parts.chord.inputValue()).toBe("Cm9");
    await close();
    await served.close();
    rmSync(folder, { recursive: true, force: true });
  });
});

describe("installing", () => {
  it("is offered by a manifest with icons, and the policy stays as strict as it was", async () => {
    const { page, complaints, close } = await openPage();
    await says(partsOf(page).stack, firstStack);
    const manifest = await page.evaluate(async () => {
      const link = document.querySelector<HTMLLinkElement>('link[rel="manifest"]');
      const answer = await fetch(link?.href ?? "");
      const type = answer.headers.get("content-type");
      const content = (await answer.json()) as { icons: { src: string; sizes: string }[] };
      const sizes = await Promise.all(
        content.icons.map(async ({ src }) => {
          const image = new Image();
          image.src = src;
          await image.decode();
          return `${image.naturalWidth}x${image.naturalHeight}`;
        }),
      );
      return { type, wanted: content.icons.map((icon) => icon.sizes), sizes };
    });
    expect(manifest.type).toBe("application/manifest+json");
    expect(manifest.sizes).toEqual(manifest.wanted);
    const policy = await page
      .locator('meta[http-equiv="Content-Security-Policy"]')
      .getAttribute("content");
    expect(policy).toBe(
      "default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'none'",
    );
    expect(complaints).toEqual([]);
    await close();
  });
});
