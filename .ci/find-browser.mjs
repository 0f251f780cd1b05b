import { existsSync } from "node:fs";

const usualPlaces = {
  linux: [
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/usr/bin/google-chrome",
    "/usr/bin/google-chrome-stable",
    "/snap/bin/chromium",
  ],
  darwin: [
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  ],
  win32: [
    "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
  ],
};

/**
 * A Chromium for the browser tests: CHROME_PATH first, then the usual places.
 * @returns {string | undefined} path of the program, or nothing
 */
export function findBrowser() {
  const named = process.env.CHROME_PATH;
  if (named !== undefined && named !== "" && existsSync(named)) return named;
  return usualPlaces[process.platform]?.find((path) => existsSync(path));
}

/** No sandbox as root; the rest keeps a closed network from slowing the start. */
export const browserArguments = [
  "--no-sandbox",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--disable-quic",
  "--no-first-run",
  "--disable-gpu",
];
