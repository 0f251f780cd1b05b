import { planPhrase } from "../../audio/index.ts";
import { midiOfPhrase, musicXmlOfPhrase, writeMxl } from "../../files/index.ts";
import type { RhythmPart } from "../../phrase/index.ts";
import { fileNameOf, handOver } from "../actions/hand-over.ts";
import { saveRecordings, type Recording } from "../actions/save-sound.ts";
import type { PhraseInView } from "../phrase/phrase-store.ts";
import { session } from "../store.ts";

/** What of the phrase goes into a file. */
export interface PhraseFileWish {
  /** One player's id; null for everybody. */
  readonly only: string | null;
  readonly hasRhythm: boolean;
  readonly pitch: "written" | "concert";
  readonly timing: "played" | "written";
}

const rhythm: readonly RhythmPart[] = ["piano", "bass", "drums"];

/**
 * Makes a score or a MIDI file and hands it over.
 * @param kind - which file
 * @param view - the phrase
 * @param wish - what of it
 * @returns what became of it, one sentence
 */
export function savePhraseFile(
  kind: "musicxml" | "mxl" | "mid",
  view: PhraseInView,
  wish: PhraseFileWish,
): string {
  const name = fileNameOf(wordsOf(view, wish.only), kind);
  try {
    handOver(contentOf(kind, view, wish), name, types[kind]);
    return `Saved as ${name}.`;
  } catch {
    return "The file could not be made: reload the page, then save it again.";
  }
}

const types = {
  musicxml: "application/vnd.recordare.musicxml+xml",
  mxl: "application/vnd.recordare.musicxml",
  mid: "audio/midi",
} as const;

function contentOf(
  kind: "musicxml" | "mxl" | "mid",
  { phrase, performance }: PhraseInView,
  { only, hasRhythm, pitch, timing }: PhraseFileWish,
): string | Uint8Array {
  const who = only === null ? {} : { playerIds: [only] };
  const withRhythm = hasRhythm && only === null;
  if (kind === "mid")
    return midiOfPhrase(phrase, performance, {
      ...who,
      timing,
      rhythm: withRhythm ? rhythm : [],
    });
  const text = musicXmlOfPhrase(phrase, performance, {
    ...who,
    pitch,
    rhythm: withRhythm ? ["piano", "bass"] : [],
  });
  return kind === "mxl" ? writeMxl(text) : text;
}

function wordsOf({ phrase }: PhraseInView, playerId: string | null): readonly string[] {
  const { title } = phrase.melody;
  return [title === "" ? "phrase" : title, ...(playerId === null ? [] : [playerId])];
}

/**
 * Saves the phrase as sound: everybody in one file, or one player.
 * @param view - the phrase
 * @param wish - who, and whether the rhythm section plays along
 */
export function savePhraseSound(view: PhraseInView, wish: PhraseFileWish): void {
  const { only, hasRhythm } = wish;
  void saveRecordings([recordingOf(view, only, hasRhythm && only === null)]);
}

/**
 * Saves a recording of each player who sounds.
 * @param view - the phrase
 * @param wish - whether the rhythm section is among them
 */
export function saveEachPlayer(view: PhraseInView, { hasRhythm }: PhraseFileWish): void {
  const horns = view.performance.parts.filter(({ notes }) => notes.length > 0);
  const ids = [...horns.map(({ player }) => player.id), ...(hasRhythm ? rhythm : [])];
  void saveRecordings(ids.map((id) => recordingOf(view, id, false)));
}

function recordingOf(view: PhraseInView, only: string | null, hasRhythm: boolean): Recording {
  const all = [...view.phrase.players.map(({ id }) => id), ...rhythm];
  const isSilent = (id: string): boolean =>
    only === null ? !hasRhythm && rhythm.some((part) => part === id) : id !== only;
  return {
    name: fileNameOf(wordsOf(view, only), "wav"),
    plan: () =>
      planPhrase(view.phrase, view.performance, {
        silentIds: all.filter(isSilent),
        seats: session().seats,
      }).plan,
  };
}
