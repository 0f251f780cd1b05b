import { resolve } from "node:path";
import type { TestProject } from "vitest/node";
import { buildPage } from "../../.ci/build-page.mjs";
import { serveFolder } from "../../.ci/serve.mjs";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the built page is served while the page tests run: `inject("pageAddress")`. */
    pageAddress: string;
  }
}

/**
 * Builds the page if it is not fresh and serves it on a free port for the tests in tests/page.
 * @param project - the test project to tell the address
 * @returns what to do when the tests are over
 */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const root = resolve(import.meta.dirname, "../..");
  await buildPage(root);
  const served = await serveFolder(resolve(root, "dist"), 0);
  project.provide("pageAddress", served.address);
  return served.close;
}
