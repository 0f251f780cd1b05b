/** What tabs tell each other about a project. */
export interface TabWord {
  /** "here" answers "opened"; "saved" and "removed" concern what is stored. */
  readonly kind: "opened" | "here" | "left" | "saved" | "removed";
  readonly id: string;
  /** Of "saved": the revision stored now. */
  readonly revision: number;
}

const kinds = ["opened", "here", "left", "saved", "removed"];

function isWord(data: unknown): data is TabWord {
  if (typeof data !== "object" || data === null) return false;
  const { kind, id, revision } = data as Partial<TabWord>;
  return typeof id === "string" && typeof revision === "number" && kinds.includes(kind as string);
}

let channel: BroadcastChannel | undefined;

/**
 * Listens to the page's other tabs. Without such a channel the revision in the store still keeps one
 * tab from overwriting another.
 * @param heard - what to do with a word of another tab
 */
export function listenToTabs(heard: (word: TabWord) => void): void {
  if (typeof BroadcastChannel === "undefined") return;
  channel = new BroadcastChannel("hornweave-projects");
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    if (isWord(data)) heard(data);
  };
}

/**
 * Tells the other tabs something.
 * @param kind - what
 * @param id - about which project
 * @param revision - stored revision, where that is what is told
 */
export function tellTabs(kind: TabWord["kind"], id: string, revision = 0): void {
  channel?.postMessage({ kind, id, revision } satisfies TabWord);
}
