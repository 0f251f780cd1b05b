import { createReadStream, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize, resolve, sep } from "node:path";

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".woff": "font/woff",
  ".otf": "font/otf",
  ".ttf": "font/ttf",
  ".wav": "audio/wav",
  ".webmanifest": "application/manifest+json",
  ".wasm": "application/wasm",
};

/**
 * Serves a folder to this machine only, never from a cache.
 * @param {string} folder - absolute path
 * @param {number} port - 0 picks a free one
 * @returns {Promise<{ address: string, close: () => Promise<void> }>} where it listens
 * @throws the system's error, code EADDRINUSE when the port is taken
 */
export function serveFolder(folder, port) {
  const server = createServer((request, response) => answer(resolve(folder), request, response));
  return new Promise((done, failed) => {
    server.once("error", failed);
    server.listen({ port, host: "127.0.0.1", exclusive: true }, () =>
      done({
        address: `http://127.0.0.1:${server.address().port}/`,
        close: () =>
          new Promise((closed) => {
            server.close(() => closed());
            server.closeAllConnections();
          }),
      }),
    );
  });
}

function answer(folder, request, response) {
  if (request.method !== "GET" && request.method !== "HEAD")
    return refuse(response, 405, "Only GET and HEAD are answered here.");
  const path = fileFor(folder, request.url ?? "/");
  const info = path === undefined ? undefined : statSync(path, { throwIfNoEntry: false });
  if (info === undefined || !info.isFile()) return refuse(response, 404, "Not found.");
  response.writeHead(200, {
    "Content-Type": types[extname(path).toLowerCase()] ?? "application/octet-stream",
    "Content-Length": info.size,
    "Cache-Control": "no-store",
    "X-Content-Type-Options": "nosniff",
  });
  if (request.method === "HEAD") return response.end();
  createReadStream(path)
    .on("error", () => response.destroy())
    .pipe(response);
}

/** The file an address means, or nothing when it points outside the folder. */
function fileFor(folder, url) {
  let path;
  try {
    path = decodeURIComponent(new URL(url, "http://localhost").pathname);
  } catch {
    return undefined;
  }
  if (path.includes("\0")) return undefined;
  const file = normalize(join(folder, path.endsWith("/") ? `${path}index.html` : path));
  return file.startsWith(folder + sep) ? file : undefined;
}

function refuse(response, status, text) {
  response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8" });
  response.end(`${text}\n`);
}
