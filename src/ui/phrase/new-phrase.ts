import { quantity, type SoundingMidi } from "../../base/index.ts";
import type { Inquiry } from "../../explore/index.ts";
import { demoPhrase, texturePlan, type DemoRow, type PhraseQuestion } from "../../phrase/index.ts";
import {
  readChord,
  readPitch,
  withoutRepeats,
  type Divisions,
  type Melody,
  type MelodyNote,
} from "../../theory/index.ts";
import { session } from "../store.ts";
import { entry } from "./melody/entry-state.ts";
import { beginPhrase } from "./phrase-actions.ts";

/** Parts of a quarter that a new melody is counted in: halves, thirds and quarters of a beat. */
const division = 24;
const bars = 8;

/** Eight empty bars of four. */
function emptyMelody(): Melody {
  return {
    title: "New phrase",
    division,
    metre: { beats: 4, beatType: 4 },
    key: { tonic: { letter: "C", alteration: 0 }, mode: "major" },
    tempo: quantity<Melody["tempo"]>(140),
    style: "swing",
    pickup: quantity<Divisions>(0),
    length: quantity<Divisions>(bars * 4 * division),
    notes: [],
    changes: [],
    repeats: [],
  };
}

/**
 * A question about a melody, with the band and the rules of the one-chord page.
 * @param melody - the melody
 * @param inquiry - gives band, colour, rules and dynamic
 * @returns the question: every choice automatic, the texture building to a peak
 */
export function phraseOf(melody: Melody, inquiry: Inquiry): PhraseQuestion {
  return {
    melody,
    players: inquiry.players,
    dynamics: [{ at: quantity<Divisions>(0), dynamic: inquiry.dynamic }],
    colour: inquiry.colour,
    bassSounds: inquiry.bassSounds,
    rules: inquiry.rules,
    strictLowIntervals: inquiry.strictLowIntervals,
    clusterSetting: inquiry.clusterSetting,
    homes: inquiry.homes,
    choices: {},
    ...texturePlan("build", withoutRepeats(melody), inquiry.players),
    breaths: true,
    locks: { notes: [], moments: [] },
  };
}

/** Begins with one of the ready phrases. */
export function beginDemo(id: DemoRow["id"], title: string): void {
  beginPhrase(demoPhrase(id), `phrase ${title}`);
}

/** Begins with eight empty bars. */
export function beginEmpty(): void {
  entry.setState({ at: 0, chordAt: null });
  beginPhrase(phraseOf(emptyMelody(), session().inquiry), "new phrase");
}

/** Begins with a melody from a file. */
export function beginMelody(melody: Melody): void {
  const now = session();
  const { phrase } = now;
  const question = phraseOf(melody, now.inquiry);
  const like = phrase === null ? {} : bandOf(phrase.question);
  const { players } = { ...question, ...like };
  beginPhrase(
    { ...question, ...like, ...texturePlan("build", withoutRepeats(melody), players) },
    `phrase ${melody.title || "from a file"}`,
  );
}

/** What another melody leaves as it is. */
function bandOf(question: PhraseQuestion) {
  const { players, colour, bassSounds, rules } = question;
  const { strictLowIntervals, clusterSetting, homes, breaths } = question;
  return {
    players,
    colour,
    bassSounds,
    rules,
    strictLowIntervals,
    clusterSetting,
    homes,
    breaths,
  };
}

/** The chord and note of the one-chord page as a first bar; undefined while they cannot be read. */
export function firstBar(inquiry: Inquiry): Melody | undefined {
  const chord = readChord(inquiry.chordText);
  const pitch = readPitch(inquiry.melodyText);
  if (!chord.ok || !pitch.ok) return undefined;
  const melody = emptyMelody();
  const note: MelodyNote = {
    id: "n1",
    onset: quantity<Divisions>(0),
    duration: quantity<Divisions>(2 * division),
    pitch: pitch.value.spelled,
    isTied: false,
  };
  const change = { onset: quantity<Divisions>(0), text: chord.value.symbol };
  return { ...melody, notes: [note], changes: [change] };
}

/** Begins with the chord and note of the one-chord page. */
export function beginHere(): void {
  const { inquiry } = session();
  const melody = firstBar(inquiry);
  if (melody !== undefined) beginPhrase(phraseOf(melody, inquiry), "phrase from here");
}

/** Lowest and highest pitch a melody note can be given on the page, MIDI. */
export const melodyReach = Object.freeze({
  low: quantity<SoundingMidi>(40),
  high: quantity<SoundingMidi>(96),
});
