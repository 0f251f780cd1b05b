import { setInterval } from "node:timers";
import { spawn } from "node:child_process";
import { join } from "node:path";
import { buildPage } from "./build-page.mjs";
import { installPackages } from "./install.mjs";
import { serveFolder } from "./serve.mjs";

/**
 * `npm start`: installs, builds and serves the page until interrupted.
 * @param {string} root - the project's folder
 * @param {readonly string[]} args - "--port N"
 * @returns {Promise<number>} 2 when the port cannot be had; otherwise it keeps serving
 */
export async function start(root, args) {
  const port = readPort(args, process.env.PORT);
  if (port === undefined) {
    process.stderr.write("A port is a whole number from 1 to 65535: npm start -- --port 4200\n");
    return 2;
  }
  // The port first: nobody waits for a build to hear that it cannot be served.
  const served = await serveFolder(join(root, "dist"), port).catch((error) => error);
  if (served instanceof Error) {
    process.stderr.write(`${portProblem(port, served)}\n`);
    return 2;
  }
  try {
    await installPackages(root);
    await buildPage(root);
  } catch (error) {
    await served.close();
    throw error;
  }
  process.stdout.write(`Hornweave is at ${served.address}\nStop it with Ctrl+C.\n`);
  openBrowser(served.address);
  await interrupted();
  await served.close();
  return 0;
}

/** @returns {number | undefined} the port asked for, 4173 when none is, nothing when it is not one */
export function readPort(args, fromEnvironment) {
  const at = args.findIndex((arg) => arg === "--port" || arg.startsWith("--port="));
  const given =
    at < 0 ? fromEnvironment : args[at] === "--port" ? (args[at + 1] ?? "") : args[at].slice(7);
  if (given === undefined || (at < 0 && given === "")) return 4173;
  const port = Number(given);
  return /^\d+$/.test(given) && port >= 1 && port <= 65535 ? port : undefined;
}

/** What to do when the port cannot be had, in words. */
export function portProblem(port, error) {
  const other = port < 65535 ? port + 1 : port - 1;
  const way = `npm start -- --port ${other}`;
  if (error.code === "EADDRINUSE")
    return (
      `Port ${port} is taken: perhaps Hornweave is already running at http://127.0.0.1:${port}/. ` +
      `Open that, or stop it, or choose another port: ${way}`
    );
  if (error.code === "EACCES")
    return `This user may not listen on port ${port}. Choose one from 1024 up: ${way}`;
  return `Port ${port} cannot be used (${error.message}). Try another: ${way}`;
}

/** Waits for an interrupt, or for npm to go away: killed, it does not always tell its child. */
function interrupted() {
  return new Promise((done) => {
    for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.once(signal, done);
    if (process.env.npm_lifecycle_event === undefined) return;
    const parent = process.ppid;
    const watch = () => process.ppid !== parent && done();
    setInterval(watch, 500).unref();
  });
}

/** A courtesy where there is a desktop; the printed address is enough everywhere else. */
function openBrowser(address) {
  const { platform, env, stdout } = process;
  if (env.CI !== undefined || !stdout.isTTY) return;
  const hasDesktop =
    platform !== "linux" || env.DISPLAY !== undefined || env.WAYLAND_DISPLAY !== undefined;
  if (!hasDesktop) return;
  const [command, ...args] =
    platform === "darwin"
      ? ["open"]
      : platform === "win32"
        ? ["cmd", "/c", "start", ""]
        : ["xdg-open"];
  const child = spawn(command, [...args, address], { stdio: "ignore", detached: true });
  child.on("error", () => {});
  child.unref();
}
