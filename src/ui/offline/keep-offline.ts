import { notify } from "../projects/projects-state.ts";
import { saveNow } from "../projects/save.ts";

/** Time after the first answer before the page's files are stored, ms: work comes first. */
const waitMs = 2_000;
/** How often an open page asks whether there is a newer version, ms. */
const askEveryMs = 3_600_000;

/** Keeps the page's own files in the browser, so that it opens without a network. */
export function keepOffline(): void {
  // While the page is being developed nothing may be stale.
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  setTimeout(() => void register(), waitMs);
}

async function register(): Promise<void> {
  const { serviceWorker } = navigator;
  let isFirst = serviceWorker.controller === null;
  serviceWorker.addEventListener("controllerchange", () => {
    if (!isFirst) void tellOfNewer();
    isFirst = false;
  });
  try {
    const address = new URL("service-worker.js", document.baseURI);
    const kept = await serviceWorker.register(address, { updateViaCache: "none" });
    setInterval(() => kept.update().catch(() => undefined), askEveryMs);
  } catch {
    // Refused, as in some private windows: the page works as long as the network does.
  }
}

/** Says that a newer version is there, unless it is the one on the page. */
async function tellOfNewer(): Promise<void> {
  const script = document.querySelector<HTMLScriptElement>('script[type="module"]');
  const name = script?.src.split("/").at(-1) ?? "";
  const newest = await fetch("index.html").then((answer) => answer.text());
  if (newest.includes(name)) return;
  notify("A newer version of Hornweave is there. It opens the next time you load the page.", [
    { text: "Load it now", act: () => void loadAnew() },
  ]);
}

async function loadAnew(): Promise<void> {
  await saveNow();
  location.reload();
}

/** Whether the page's files are kept in the browser. */
export const isKeptOffline = (): boolean =>
  "serviceWorker" in navigator && navigator.serviceWorker.controller !== null;
