import { quantity } from "../../../src/base/index.ts";
import { lineUpById, type Player } from "../../../src/band/index.ts";
import {
  melodyFromBars,
  readChord,
  readMelody,
  readPitch,
  type Chord,
  type Divisions,
  type HeardNote,
  type Key,
  type Melody,
  type MelodyStyle,
  type ReadMelody,
  type SpelledPitch,
  type WrittenItem,
} from "../../../src/theory/index.ts";
import { allRules } from "../../../src/voicing/index.ts";
import { readPhrase } from "../../../src/phrase/read-phrase.ts";
import { searchPhrase } from "../../../src/phrase/search-phrase.ts";
import type { Phrase, PhraseAnswer, PhraseQuestion } from "../../../src/phrase/phrase-types.ts";

/** A pitch that must be readable. */
export function spelled(text: string): SpelledPitch {
  const read = readPitch(text);
  if (!read.ok) throw new Error(`${text}: ${read.problem.message}`);
  return read.value.spelled;
}

/** A chord that must be readable. */
export function chordOf(text: string): Chord {
  const read = readChord(text);
  if (!read.ok) throw new Error(`${text}: ${read.problem.message}`);
  return read.value;
}

/** What a melody has beside its notes, where a test cares. */
export interface Head {
  readonly key?: string;
  readonly mode?: Key["mode"];
  readonly tempo?: number;
  readonly style?: MelodyStyle;
  readonly metre?: Melody["metre"];
  readonly repeats?: Melody["repeats"];
}

/** One item: `C5:1`, `r:1/2`, `D#4:1/2`, tied with `~`, under a chord with `@`: `C5:3/2~@F6`. */
function itemOf(text: string): WrittenItem {
  const [, pitch = "", n = "1", d = "1", tie, chord] =
    /^([^:]+):(\d+)(?:\/(\d+))?(~)?(?:@(\S+))?$/.exec(text) ?? [];
  if (pitch === "") throw new Error(`"${text}" is no note of a test melody`);
  return {
    length: [Number(n), Number(d)],
    ...(pitch === "r" ? {} : { pitch: spelled(pitch) }),
    isTied: tie !== undefined,
    ...(chord === undefined ? {} : { chord }),
  };
}

/** A melody from text: items by spaces, bars by bar lines. */
export function melodyOf(text: string, head: Head = {}): Melody {
  const { key = "C", mode = "major", tempo = 120, style = "swing", repeats = [] } = head;
  const bars = text.split("|").map((bar) => bar.trim().split(/\s+/).map(itemOf));
  const built = melodyFromBars(
    {
      title: "Test",
      metre: head.metre ?? { beats: 4, beatType: 4 },
      key: { tonic: spelled(`${key}4`), mode },
      tempo: quantity(tempo),
      style,
      repeats,
    },
    bars,
  );
  if (!built.ok) throw new Error(built.problems.map(({ message }) => message).join(" "));
  return built.value;
}

/** A melody that must be in order, read. */
export function read(melody: Melody): ReadMelody {
  const found = readMelody(melody);
  if (!found.ok) throw new Error(found.problems.map(({ message }) => message).join(" "));
  return found.value;
}

/** Its heard notes. */
export const notesOf = (melody: Melody): readonly HeardNote[] => read(melody).notes;

/** Divisions. */
export const at = (value: number): Divisions => quantity<Divisions>(value);

/** Players of a line-up. */
export function playersOf(lineUp: string): readonly Player[] {
  const found = lineUpById(lineUp);
  if (!found.ok) throw new Error(found.problem.message);
  return found.value.players;
}

/** Level curves. */
export function levelCurves(
  span: number,
  density: number,
  weight: number,
): PhraseQuestion["curves"] {
  return {
    span: [{ at: at(0), value: span }],
    density: [{ at: at(0), value: density }],
    weight: [{ at: at(0), value: weight }],
  };
}

/** A question with every choice automatic. */
export function questionOf(melody: Melody, changed: Partial<PhraseQuestion> = {}): PhraseQuestion {
  return {
    melody,
    players: playersOf("four-horn"),
    dynamics: [{ at: at(0), dynamic: "f" }],
    colour: "tensions",
    bassSounds: true,
    rules: allRules,
    strictLowIntervals: false,
    clusterSetting: false,
    homes: true,
    choices: {},
    curves: levelCurves(14, 3.5, 4),
    turns: [],
    breaths: false,
    locks: { notes: [], moments: [] },
    ...changed,
  };
}

/** A question that must be in order, worked out. */
export function phraseOf(question: PhraseQuestion): Phrase {
  const found = readPhrase(question);
  if (!found.ok) throw new Error(found.problems.map(({ message }) => message).join(" "));
  return found.value;
}

/** The full answer, and all whole answers on the way. */
export function solved(phrase: Phrase): {
  readonly answer: PhraseAnswer;
  readonly answers: readonly PhraseAnswer[];
} {
  const search = searchPhrase(phrase);
  const answers: PhraseAnswer[] = [];
  for (let step = search.next(); ; step = search.next()) {
    if (step.done) return { answer: step.value, answers };
    if (step.value.answer) answers.push(step.value.answer);
  }
}
