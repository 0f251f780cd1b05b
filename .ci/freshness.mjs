import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

/**
 * Whether something built is still what these sources give. Looks at names, sizes and times, not
 * at contents: a few milliseconds for the whole tree.
 * @param {string} root - the project's folder
 * @param {string} name - name of the built thing
 * @param {string} product - a file that must be there, relative to root
 * @param {readonly string[]} sources - files and folders it is made from, relative to root
 * @returns {{ isFresh: boolean, remember: () => void }} call remember after a build
 */
export function freshness(root, name, product, sources) {
  const stamp = join(root, "node_modules", ".cache", "hornweave", `${name}.stamp`);
  const now = fingerprint(root, sources);
  const isFresh =
    existsSync(join(root, product)) && existsSync(stamp) && readFileSync(stamp, "utf8") === now;
  return {
    isFresh,
    remember() {
      mkdirSync(dirname(stamp), { recursive: true });
      writeFileSync(stamp, now);
    },
  };
}

function fingerprint(root, sources) {
  const hash = createHash("sha256").update(process.versions.node);
  const visit = (path) => {
    const info = statSync(join(root, path), { throwIfNoEntry: false });
    if (info === undefined) return;
    if (info.isDirectory())
      for (const entry of readdirSync(join(root, path)).sort()) visit(`${path}/${entry}`);
    else hash.update(`${path}\0${info.size}\0${info.mtimeMs}\n`);
  };
  for (const source of sources) visit(source);
  return hash.digest("hex");
}
