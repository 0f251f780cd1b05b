import { createHash } from "node:crypto";
import { spawn } from "node:child_process";
import { closeSync, existsSync, openSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";

/**
 * Installs the packages when the lock file, Node or the platform changed since the last time.
 * Everything it says goes to stderr, so that the command line's stdout stays clean.
 * @param {string} root - the project's folder
 */
export async function installPackages(root) {
  if (isInstalled(root)) return;
  const lock = lockFile(root);
  await takeLock(lock);
  try {
    // Another launcher may have finished while this one waited.
    if (isInstalled(root)) return;
    process.stderr.write("Installing packages (once; about half a minute) ...\n");
    const code = await npm(root, ["ci", "--include=dev", "--ignore-scripts", "--loglevel=error"]);
    if (code !== 0)
      throw new Error(
        `Installing the packages failed (npm ci ended with ${code}). The reason is above; ` +
          "with no network, connect once and run the same command again.",
      );
    writeFileSync(stampFile(root), fingerprint(root));
  } finally {
    rmSync(lock, { force: true });
  }
}

/** True when what lies in node_modules is what the lock file asks for. */
function isInstalled(root) {
  const now = fingerprint(root);
  if (existsSync(stampFile(root)) && readFileSync(stampFile(root), "utf8") === now) return true;
  if (!matchesLock(root)) return false;
  writeFileSync(stampFile(root), now);
  return true;
}

const stampFile = (root) => join(root, "node_modules", ".hornweave-stamp");

function fingerprint(root) {
  return createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .update(`${process.versions.node} ${process.platform} ${process.arch}`)
    .digest("hex");
}

/** Someone may have run npm by hand: npm's own note of what it installed then tells. */
function matchesLock(root) {
  const note = join(root, "node_modules", ".package-lock.json");
  if (!existsSync(note)) return false;
  const installed = JSON.parse(readFileSync(note, "utf8")).packages ?? {};
  const wanted = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")).packages ?? {};
  return Object.entries(wanted).every(
    ([path, entry]) =>
      path === "" || entry.optional === true || installed[path]?.version === entry.version,
  );
}

/** Beside the project's folder nothing may lie, and node_modules itself is replaced: so, temp. */
function lockFile(root) {
  const name = createHash("sha256").update(root).digest("hex").slice(0, 16);
  return join(tmpdir(), `hornweave-install-${name}.lock`);
}

async function takeLock(lock) {
  for (let told = false; ;) {
    try {
      const file = openSync(lock, "wx");
      writeFileSync(file, String(process.pid));
      closeSync(file);
      return;
    } catch (error) {
      if (error.code !== "EEXIST") throw error;
    }
    if (isLeftOver(lock)) {
      rmSync(lock, { force: true });
      continue;
    }
    if (!told) process.stderr.write("Another Hornweave is installing packages; waiting ...\n");
    told = true;
    await wait(250);
  }
}

function isLeftOver(lock) {
  let pid;
  try {
    pid = Number(readFileSync(lock, "utf8"));
  } catch {
    return false;
  }
  // Empty: its owner has just made it and not yet written its number.
  if (!(pid > 0)) return false;
  try {
    process.kill(pid, 0);
    return false;
  } catch (error) {
    return error.code === "ESRCH";
  }
}

/** Runs npm as npm itself was started; its messages go to stderr. */
function npm(root, args) {
  const script = process.env.npm_execpath;
  const byNode = script !== undefined && /\.[cm]?js$/.test(script);
  const [command, all] = byNode ? [process.execPath, [script, ...args]] : ["npm", args];
  return new Promise((done, failed) => {
    const child = spawn(command, all, {
      cwd: root,
      stdio: ["ignore", 2, 2],
      shell: !byNode && process.platform === "win32",
    });
    child.on("error", (error) =>
      failed(new Error(`npm could not be started (${error.message}). It comes with Node.`)),
    );
    child.on("exit", (code) => done(code ?? 1));
  });
}
