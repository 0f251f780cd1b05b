import { chromium, type Browser, type BrowserContextOptions, type Page } from "playwright-core";
import { inject } from "vitest";
import { browserArguments, findBrowser } from "../../.ci/find-browser.mjs";

/** The built page in a browser of its own, and what went wrong in it. */
export interface OpenPage {
  readonly page: Page;
  /** Errors, warnings, broken policy and requests that left this machine, as they happened. */
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
}

let browser: Promise<Browser> | undefined;

/** One browser a test file; it ends with the test run's process. */
function theBrowser(): Promise<Browser> {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error("page tests need a Chromium");
  browser ??= chromium.launch({ executablePath, args: browserArguments });
  return browser;
}

/**
 * Opens the built page as a newcomer would, with nothing remembered.
 * @param options - size, touch, colour scheme … of the visitor
 * @param fragment - what stands behind the # of the address
 * @returns the page and its complaints
 */
export async function openPage(
  options: BrowserContextOptions = { viewport: { width: 1440, height: 900 } },
  fragment = "",
): Promise<OpenPage> {
  const address = inject("pageAddress");
  const context = await (await theBrowser()).newContext(options);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(`error: ${error.message}`));
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(address) && !/^(data|blob):/.test(url)) complaints.push(`asks for ${url}`);
  });
  await page.goto(address + fragment);
  return { page, complaints, close: () => context.close() };
}

/** Ends the browser; call it after the last test of a file. */
export async function closeBrowser(): Promise<void> {
  await (await browser)?.close();
  browser = undefined;
}
