/// <reference lib="webworker" />
// A module of its own, so that its names are not the page's.
export {};

/** Written in front of this file when the page is built: see .ci/offline.mjs. */
interface Built {
  /** Changes with any file of the page. */
  readonly version: string;
  /** All files of the page, relative to it. */
  readonly files: readonly string[];
}

declare const self: ServiceWorkerGlobalScope & { readonly built: Built };

const prefix = "hornweave-files-";
const current = prefix + self.built.version;
/** Name of a file that changes with what is in it. */
const isHashed = (file: string): boolean => /^assets\/.*-[\w-]{8}\.\w+$/.test(file);
/** Longest wait for a newer page before the stored one is shown, ms. */
const patienceMs = 3_000;

self.addEventListener("install", (event) => {
  // Files are served by their names, so a new version can stand beside an old page at once.
  event.waitUntil(fill().then(() => self.skipWaiting()));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(clearOld().then(() => self.clients.claim()));
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(request.mode === "navigate" ? newestPage(request) : fileOf(request));
});

/** Stores all files of this version; what an older one has under the same name is taken over. */
async function fill(): Promise<void> {
  const cache = await caches.open(current);
  await Promise.all(
    self.built.files.map(async (file) => {
      const known = isHashed(file) ? await caches.match(file) : undefined;
      if (known) await cache.put(file, known);
      else await cache.add(new Request(file, { cache: "reload" }));
    }),
  );
}

/** Keeps this version and the one before it, which an open page may still read from. */
async function clearOld(): Promise<void> {
  const ours = (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== current);
  await Promise.all(ours.slice(0, -1).map((name) => caches.delete(name)));
}

/** The page as the server has it now, or as it is stored when the server does not answer. */
async function newestPage(request: Request): Promise<Response> {
  const stored = async () => (await caches.open(current)).match("index.html");
  try {
    const signal = AbortSignal.timeout(patienceMs);
    const answer = await fetch(request.url, { signal, cache: "no-cache" });
    return answer.ok ? answer : ((await stored()) ?? answer);
  } catch {
    return (await stored()) ?? Response.error();
  }
}

/** A stored file; one that is not stored is asked for. */
async function fileOf(request: Request): Promise<Response> {
  const options = { ignoreSearch: true };
  const mine = await (await caches.open(current)).match(request, options);
  return mine ?? (await caches.match(request, options)) ?? fetch(request);
}
