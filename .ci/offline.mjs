import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";

const worker = "service-worker.js";

/**
 * Builds the service worker beside the page and tells it which files the page consists of.
 * @param {string} source - absolute path of the service worker
 * @returns {import("vite").Plugin} for vite.config.ts
 */
export function offline(source) {
  return {
    name: "offline",
    apply: "build",
    buildStart() {
      if (this.environment.name !== "client") return;
      this.emitFile({ type: "chunk", id: source, fileName: worker });
    },
    writeBundle: {
      order: "post",
      handler({ dir }) {
        const path = join(dir, worker);
        const code = readFileSync(path, "utf8");
        const built = JSON.stringify({ version: versionOf(dir), files: filesOf(dir) });
        writeFileSync(path, `self.built = ${built};\n${code}`);
      },
    },
  };
}

/** All files but the service worker itself, relative, in order of their names. */
function filesOf(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .filter((name) => name !== worker)
    .sort();
}

/** Changes with every change of any file, the service worker's own code too. */
function versionOf(folder) {
  const hash = createHash("sha256");
  for (const name of [...filesOf(folder), worker])
    hash.update(name).update(readFileSync(join(folder, name)));
  return hash.digest("hex").slice(0, 16);
}
