import { spawn } from "node:child_process";
import { join } from "node:path";

/**
 * Runs one of the installed tools with this Node, passing on interrupts.
 * @param {string} root - the project's folder
 * @param {string} script - the tool's script, relative to node_modules
 * @param {readonly string[]} args - its arguments
 * @param {{ quiet?: boolean, env?: NodeJS.ProcessEnv }} [how] - quiet: keep its output, do not show
 * @returns {Promise<{ code: number, output: string }>} exit code, and output when quiet
 */
export function runTool(root, script, args, { quiet = false, env = {} } = {}) {
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, [join(root, "node_modules", script), ...args], {
      cwd: root,
      env: { ...process.env, ...env },
      stdio: quiet ? ["ignore", "pipe", "pipe"] : ["ignore", "inherit", "inherit"],
    });
    let output = "";
    child.stdout?.on("data", (data) => (output += data));
    child.stderr?.on("data", (data) => (output += data));
    const forward = (signal) => child.kill(signal);
    process.on("SIGINT", forward);
    process.on("SIGTERM", forward);
    child.on("error", failed);
    child.on("close", (code, signal) => {
      process.off("SIGINT", forward);
      process.off("SIGTERM", forward);
      done({ code: code ?? (signal === null ? 1 : 130), output });
    });
  });
}
