import { resolve } from "node:path";
import react from "@vitejs/plugin-react";
import { playwright } from "@vitest/browser-playwright";
import { defineConfig } from "vitest/config";
import { browserArguments, findBrowser } from "./.ci/find-browser.mjs";
import { offline } from "./.ci/offline.mjs";

const here = (path: string) => resolve(import.meta.dirname, path);
const isTest = process.env["VITEST"] !== undefined;
const browser = findBrowser();

/** Tests that need nothing but Node. */
const nodeTests = {
  extends: true as const,
  test: {
    name: "node",
    environment: "node" as const,
    include: ["tests/**/*.test.ts", "tests/**/*.test.tsx"],
    exclude: ["tests/browser/**", "tests/page/**"],
    // Files of one worker share what they import: half the time went into loading it anew.
    isolate: false,
    // Generous, so that a busy machine fails nothing; what hangs still fails.
    testTimeout: 30_000,
    hookTimeout: 30_000,
  },
};

/** Modules run inside a real browser: drawing, sound, components. */
const browserTests = {
  extends: true as const,
  test: {
    name: "browser",
    include: ["tests/browser/**/*.browser.test.{ts,tsx}"],
    sequence: { groupOrder: 1 },
    testTimeout: 60_000,
    browser: {
      enabled: true,
      headless: true,
      screenshotFailures: false,
      provider: playwright({
        launchOptions: { executablePath: browser ?? "", args: browserArguments },
      }),
      instances: [{ browser: "chromium" as const }],
    },
  },
};

/** The built page, driven from outside as a person would, two files at a time: most of it is waiting. */
const pageTests = {
  extends: true as const,
  test: {
    name: "page",
    environment: "node" as const,
    include: ["tests/page/**/*.test.ts"],
    globalSetup: [here("tests/set-up/built-page.ts")],
    maxWorkers: 2,
    // After all others: a page that waits for a busy machine tells nothing.
    sequence: { groupOrder: 2 },
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
};

export default defineConfig({
  // The page's files lie together; tests look from the top.
  root: isTest ? "." : "src/ui",
  // Relative addresses: the built page works in any folder of any server.
  base: "./",
  plugins: [react(), offline(here("src/ui/offline/service-worker.ts"))],
  assetsInclude: ["**/*.otf"],
  // Named, so that a browser test never starts over because one more library was met.
  optimizeDeps: {
    include: ["vexflow/core", "tone", "fast-check", "fflate", "idb-keyval", "zod/mini"],
  },
  worker: { format: "es" },
  build: {
    outDir: "../../dist",
    emptyOutDir: true,
    target: "es2022",
    // A file of its own for each font and sound: they are cached, and no data: address is needed.
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1200,
  },
  test: {
    reporters: ["default", here("tests/rules/plain-reporter.mjs")],
    passWithNoTests: false,
    projects: browser === undefined ? [nodeTests] : [nodeTests, browserTests, pageTests],
  },
});
