import { createStore, useStore } from "zustand";
import { planPhrase } from "../../../audio/index.ts";
import type { Db, Hertz } from "../../../base/index.ts";
import { announce } from "../../actions/announce.ts";
import { fileNameOf } from "../../actions/hand-over.ts";
import { playback } from "../../actions/sound-door.ts";
import { openWavTarget } from "../../actions/wav-target.ts";
import { session } from "../../store.ts";
import { phraseStore, type PhraseInView } from "../phrase-store.ts";

/** Sampling rate of what the player renders. */
const sampleRate = 48_000 as Hertz;
const rhythmIds = ["bass", "piano", "drums"];

interface Recording {
  /** Name and share (0 to 1) of the file being made; null while none is. */
  readonly now: { readonly fileName: string; readonly share: number } | null;
  readonly outcome: string;
}

const recording = createStore<Recording>()(() => ({ now: null, outcome: "" }));
let stop: AbortController | null = null;

/** The recording that is being made, and what became of the last one. */
export function useRecording(): Recording {
  return useStore(recording);
}

/** Gives up the recording. */
export function stopRecording(): void {
  stop?.abort();
}

/** Who is on a recording: everybody, the horns, every player in a file each, or one by id. */
export type Recorded = "all" | "horns" | "each" | (string & {});

/**
 * Records the phrase, streamed to the file where the browser lets it.
 * @param who - who is on it
 */
export async function recordPhrase(who: Recorded): Promise<void> {
  const { view } = phraseStore.getState();
  if (view === null) return;
  stop?.abort();
  const mine = new AbortController();
  stop = mine;
  const takes = who === "each" ? view.phrase.players.map(({ id }) => id) : [who];
  const outcomes: string[] = [];
  for (const each of takes) {
    if (mine.signal.aborted) break;
    outcomes.push(await recordOne(view, each, mine.signal));
  }
  if (stop !== mine) return;
  const last = outcomes.at(-1) ?? "";
  const saved = outcomes.filter((text) => text.startsWith("Saved")).length;
  const outcome = takes.length > 1 ? `${saved} of ${takes.length} files are saved. ${last}` : last;
  recording.setState({ now: null, outcome });
  announce(outcome);
}

function silentFor(view: PhraseInView, who: Recorded): readonly string[] {
  if (who === "all") return [];
  if (who === "horns") return rhythmIds;
  const others = view.phrase.players.map(({ id }) => id).filter((id) => id !== who);
  return [...others, ...rhythmIds];
}

async function recordOne(view: PhraseInView, who: Recorded, signal: AbortSignal): Promise<string> {
  const player = view.phrase.players.find(({ id }) => id === who);
  const words = player?.name ?? (who === "horns" ? "horns" : "");
  const fileName = fileNameOf([view.phrase.melody.title, words], "wav");
  const { plan } = planPhrase(view.phrase, view.performance, {
    silentIds: silentFor(view, who),
    seats: session().seats,
  });
  if (plan.events.length === 0) return `${player?.name ?? "Nobody"} rests throughout.`;
  const target = await openWavTarget(fileName);
  if (target === null || signal.aborted) return "Nothing was saved.";
  recording.setState({ now: { fileName, share: 0 }, outcome: "" });
  try {
    const [out, { renderWav }] = await Promise.all([playback(), import("../../../files/index.ts")]);
    const written = await renderWav([{ plan, gain: 0 as Db }], {
      render: (...asked) => out.renderInto(...asked),
      sampleRate,
      signal,
      sink: target.write,
      onProgress: (share) => {
        if (!signal.aborted) recording.setState({ now: { fileName, share } });
      },
    });
    if (written.ok && written.value) {
      await target.finish();
      return `Saved as ${fileName}.`;
    }
    await target.giveUp();
    return written.ok ? "Nothing was saved." : written.problem.message;
  } catch {
    await target.giveUp().catch(() => undefined);
    return "The file could not be written: save it to another place.";
  }
}
