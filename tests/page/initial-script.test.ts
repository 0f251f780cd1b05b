import { gzipSync } from "node:zlib";
import { afterAll, describe, expect, inject, it } from "vitest";
import { closeBrowser, openPage } from "./open-page.ts";
import { firstStack, partsOf, says } from "./page-parts.ts";

afterAll(closeBrowser);

/** Most script the page may need before it is drawn, bytes after gzip; this project's own bound. */
const most = 400_000;

const gzipped = async (path: string) => {
  const answer = await fetch(new URL(path, inject("pageAddress")));
  expect(answer.ok).toBe(true);
  return gzipSync(Buffer.from(await answer.arrayBuffer())).length;
};

describe("the page's first load", () => {
  it("needs no more than 400 kB of script after gzip, the rest comes when asked for", async () => {
    const { page, close } = await openPage();
    const html = await (await fetch(inject("pageAddress"))).text();
    const named = [...html.matchAll(/(?:src|href)="([^"]+\.js)"/g)].map((match) => match[1] ?? "");
    await says(partsOf(page).stack, firstStack);
    const sizes = await Promise.all([...new Set(named)].map(gzipped));
    const sum = sizes.reduce((total, size) => total + size, 0);
    await close();
    // An empty list would be no check: the page cannot run without a script.
    expect(sum).toBeGreaterThan(50_000);
    expect(sum, `${named.join(", ")}: ${sum} bytes`).toBeLessThanOrEqual(most);
  });
});
