import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { runTool } from "./child.mjs";
import { findBrowser } from "./find-browser.mjs";
import { installPackages } from "./install.mjs";

/**
 * `npm test`: installs what is missing, Chromium too where it can, and runs every test.
 * @param {string} root - the project's folder
 * @param {readonly string[]} args - passed on to the test runner
 * @returns {Promise<number>} 0 when all passed
 */
export async function test(root, args) {
  await installPackages(root);
  const browser = findBrowser() ?? installBrowser();
  if (browser === undefined) process.stderr.write(`${withoutBrowser()}\n`);
  const { code } = await runTool(root, "vitest/vitest.mjs", ["run", ...args], {
    // A machine set to "production" would otherwise test what nobody runs.
    env: { NODE_ENV: "test", ...(browser === undefined ? {} : { CHROME_PATH: browser }) },
  });
  return code;
}

function withoutBrowser() {
  return (
    "Browser tests are skipped: no Chromium was found and none could be installed. " +
    "Install one (Debian: sudo apt-get install chromium) or name one in CHROME_PATH."
  );
}

/** Debian's package, where this is Debian and we may. */
function installBrowser() {
  const isRoot = process.getuid?.() === 0;
  if (process.platform !== "linux" || !existsSync("/usr/bin/apt-get") || !isRoot) return undefined;
  process.stderr.write("Installing Chromium for the browser tests (once) ...\n");
  const apt = (...args) =>
    spawnSync("apt-get", args, {
      stdio: ["ignore", "ignore", 2],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    }).status === 0;
  apt("update");
  apt("-o", "DPkg::Lock::Timeout=300", "install", "-y", "--no-install-recommends", "chromium");
  return findBrowser();
}
