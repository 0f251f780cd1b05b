import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Browser, CDPSession, Page, BrowserType } from "playwright-core";
import { browserArguments, findBrowser } from "../../.ci/find-browser.mjs";
import { serveFolder } from "../../.ci/serve.mjs";
import { Found, medianOf, type Bench } from "./bench.ts";

/** A window onto the freshly built page. */
interface Opened {
  readonly page: Page;
  readonly address: string;
  readonly cdp: CDPSession;
}

let built = false;

/** Builds the page once; the bundle that runs this must not hold the builder itself. */
function buildOnce(): void {
  if (built) return;
  const { status } = spawnSync(process.execPath, [".ci/launch.mjs", "build"], { stdio: "ignore" });
  if (status !== 0) throw new Error("the page could not be built; npm run build says why");
  built = true;
}

/** Lets work happen in a fresh browser on a server of its own. */
async function inBrowser<T>(work: (opened: Opened) => Promise<T>): Promise<T> {
  buildOnce();
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error("the page's benchmarks need a Chromium");
  // Looked up where the project lies: the browser driver cannot be bundled.
  const require = createRequire(join(process.cwd(), "package.json"));
  const { chromium } = require("playwright-core") as { readonly chromium: BrowserType };
  const served = await serveFolder(join(process.cwd(), "dist"), 0);
  let browser: Browser | undefined;
  try {
    browser = await chromium.launch({ executablePath, args: [...browserArguments] });
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
    const page = await context.newPage();
    const cdp = await context.newCDPSession(page);
    return await work({ page, address: served.address, cdp });
  } finally {
    await browser?.close();
    await served.close();
  }
}

/** Seconds the main thread has worked so far. */
async function taskSeconds(cdp: CDPSession): Promise<number> {
  const { metrics } = await cdp.send("Performance.getMetrics");
  return metrics.find(({ name }) => name === "TaskDuration")?.value ?? 0;
}

/** The 95th percentile of main-thread work, milliseconds a step, each step drawn to the end. */
async function workPerStep(
  { page, cdp }: Opened,
  steps: number,
  step: (index: number) => Promise<void>,
): Promise<Found> {
  await cdp.send("Performance.enable", { timeDomain: "threadTicks" });
  const costs: number[] = [];
  for (let index = 0; index < steps; index += 1) {
    const before = await taskSeconds(cdp);
    await step(index);
    await page.evaluate(
      () =>
        new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(null)))),
    );
    costs.push(1000 * ((await taskSeconds(cdp)) - before));
  }
  const sorted = [...costs].sort((a, b) => a - b);
  const p95 = sorted[Math.ceil(0.95 * sorted.length) - 1] ?? 0;
  return new Found(p95, `p95 of ${steps} steps, median ${medianOf(costs).toFixed(1)} ms`);
}

async function answered({ page, address }: Opened): Promise<void> {
  await page.goto(address);
  await page.locator(".token").first().waitFor();
}

/** How soon the page answers, and what moving a token or the map costs its main thread. */
export const benches: readonly Bench[] = [
  {
    name: "page: first paint with an answered question, nothing cached",
    target: { most: 1500, unit: "ms" },
    run: () =>
      inBrowser(async (opened) => {
        await answered(opened);
        const at = await opened.page.evaluate(() => performance.now());
        return new Found(at, "from the start of loading");
      }),
  },
  {
    name: "page: dragging a token, main-thread work a move",
    repeats: 3,
    target: { most: 16, unit: "ms" },
    run: () =>
      inBrowser(async (opened) => {
        await answered(opened);
        const { page } = opened;
        const box = await page.locator('[data-player="tbn1"][role="button"]').boundingBox();
        if (box === null) throw new Error("trombone 1 is not on the ladder");
        const x = box.x + box.width / 2;
        const y = box.y + box.height / 2;
        await page.mouse.move(x, y);
        await page.mouse.down();
        const found = await workPerStep(opened, 60, (index) =>
          page.mouse.move(x, y + 60 * Math.sin(index / 6)),
        );
        await page.mouse.up();
        return found;
      }),
  },
  {
    name: "page: drawing the map larger and smaller, main-thread work a step",
    repeats: 3,
    target: { most: 8, unit: "ms" },
    run: () =>
      inBrowser(async (opened) => {
        await answered(opened);
        const { page } = opened;
        await page.getByTestId("map").focus();
        await page.keyboard.press("+");
        return workPerStep(opened, 40, (index) => page.keyboard.press(index % 6 < 3 ? "+" : "-"));
      }),
  },
];
