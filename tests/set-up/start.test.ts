import { spawn } from "node:child_process";
import { createServer } from "node:http";
import { connect } from "node:net";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { freshness } from "../../.ci/freshness.mjs";
import { nodeProblem } from "../../.ci/node-version.mjs";
import { serveFolder } from "../../.ci/serve.mjs";
import { portProblem, readPort } from "../../.ci/start.mjs";

const root = resolve(import.meta.dirname, "../..");
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "start-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the Node that is asked for", () => {
  it.each(["20.19.0", "20.20.2", "22.0.0"])("accepts Node %s", (version) => {
    expect(nodeProblem(version)).toBeUndefined();
  });
  it.each(["18.20.4", "20.18.3", "9.0.0"])("says in words that Node %s is too old", (version) => {
    expect(nodeProblem(version)).toMatch(/^Hornweave needs Node 20\.19\.0 or newer, and this is/);
  });
});

describe("the port", () => {
  it("is 4173 unless asked otherwise", () => expect(readPort([], undefined)).toBe(4173));
  it("is read from the command before the environment", () => {
    expect(readPort(["--port", "4200"], "5000")).toBe(4200);
    expect(readPort(["--port=4201"], undefined)).toBe(4201);
    expect(readPort([], "5000")).toBe(5000);
  });
  it.each(["", "abc", "0", "65536", "42.5", "-1"])("cannot be %j", (text) => {
    expect(readPort(["--port", text], undefined)).toBeUndefined();
  });
  it("is explained when it is taken, with a way on", () => {
    const words = portProblem(4173, Object.assign(new Error("taken"), { code: "EADDRINUSE" }));
    expect(words).toContain("Port 4173 is taken");
    expect(words).toContain("npm start -- --port 4174");
  });
});

describe("the server", () => {
  let address = "";
  let close = async () => {};
  beforeAll(async () => {
    const served = join(folder, "dist");
    mkdirSync(join(served, "assets"), { recursive: true });
    writeFileSync(join(served, "index.html"), "<!doctype html>page");
    writeFileSync(join(served, "assets/app.js"), "1");
    writeFileSync(join(served, "assets/music.woff2"), "2");
    writeFileSync(join(folder, "secret.txt"), "secret");
    ({ address, close } = await serveFolder(served, 0));
  });
  afterAll(() => close());

  it.each([
    ["", "text/html; charset=utf-8"],
    ["assets/app.js?x=1", "text/javascript; charset=utf-8"],
    ["assets/music.woff2", "font/woff2"],
  ])("answers /%s with its type and never from a cache", async (path, type) => {
    const answer = await fetch(address + path);
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-type")).toBe(type);
    expect(answer.headers.get("cache-control")).toBe("no-store");
  });

  it.each(["/%2e%2e/secret.txt", "/../secret.txt", "/nowhere.js", "/%", "/a%00b"])(
    "finds nothing at %s",
    async (path) => {
      // Raw, because fetch tidies such addresses away.
      const port = Number(new URL(address).port);
      const text = await new Promise<string>((done) => {
        const socket = connect(port, "127.0.0.1", () =>
          socket.write(`GET ${path} HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n`),
        );
        let all = "";
        socket.on("data", (data) => (all += data));
        socket.on("end", () => done(all));
      });
      expect(text).toMatch(/^HTTP\/1\.1 404/);
      expect(text).not.toContain("secret\n");
    },
  );

  it("changes nothing on request", async () => {
    expect((await fetch(address, { method: "POST" })).status).toBe(405);
  });
});

describe("what is built", () => {
  it("is fresh only until a source changes, comes or goes", () => {
    mkdirSync(join(folder, "src"), { recursive: true });
    writeFileSync(join(folder, "src/a.ts"), "1");
    writeFileSync(join(folder, "product"), "1");
    const look = () => freshness(folder, "page", "product", ["src"]);
    expect(look().isFresh).toBe(false);
    look().remember();
    expect(look().isFresh).toBe(true);
    writeFileSync(join(folder, "src/a.ts"), "22");
    expect(look().isFresh).toBe(false);
    look().remember();
    writeFileSync(join(folder, "src/b.ts"), "1");
    expect(look().isFresh).toBe(false);
    look().remember();
    rmSync(join(folder, "src/b.ts"));
    expect(look().isFresh).toBe(false);
    look().remember();
    rmSync(join(folder, "product"));
    expect(look().isFresh).toBe(false);
  });
});

interface Ended {
  readonly code: number | null;
  readonly errors: string;
}

function launch(...args: readonly string[]): Promise<Ended> {
  const child = spawn(process.execPath, [join(root, ".ci/launch.mjs"), ...args], { cwd: root });
  let errors = "";
  child.stderr.on("data", (data) => (errors += data));
  return new Promise((done) => child.on("close", (code) => done({ code, errors })));
}

describe("the launcher", () => {
  it("lists its commands when it does not know one, and ends with 2", async () => {
    const { code, errors } = await launch("fly");
    expect(code).toBe(2);
    expect(errors).toContain("start [--port N]");
  });

  it("ends with 2 and a way on when the port is taken", async () => {
    const other = createServer().listen(0, "127.0.0.1");
    await new Promise((done) => other.once("listening", done));
    const taken = (other.address() as { port: number }).port;
    const { code, errors } = await launch("start", "--port", String(taken));
    other.close();
    expect(errors).toContain(`Port ${taken} is taken`);
    expect(code).toBe(2);
  });
});
