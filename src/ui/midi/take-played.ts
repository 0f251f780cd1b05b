import type { SoundingMidi } from "../../base/index.ts";
import type { PlayedEvent } from "../../playback/index.ts";
import { assignPitches, type Assignment } from "../../voicing/index.ts";
import { announce } from "../actions/announce.ts";
import { pickMelody } from "../actions/ask.ts";
import { take } from "../actions/steps.ts";
import { pitchesOf } from "../state/view-of.ts";
import { page, session } from "../store.ts";
import { counted, listed } from "../words/counts.ts";
import { plainName } from "../words/pitch-names.ts";
import { withSigns } from "../words/signs.ts";
import { midi } from "./midi-state.ts";

/** Fewer notes than this are no voicing. */
const fewestNotes = 3;

/**
 * Takes what is played at the keyboard: one note is the melody, three or more are a voicing.
 * @param event - what was played
 */
export function takePlayed(event: PlayedEvent): void {
  if (event.kind === "release") return;
  const { held } = event;
  const { taker } = midi.getState();
  if (taker !== null) {
    const pitch = held.at(-1);
    if (pitch === undefined) return;
    taker(pitch);
    return midi.setState({ played: `${nameOf(pitch)} is on the staff.` });
  }
  if (held.length >= fewestNotes) return takeChord(held);
  if (held.length === 1 && held[0] !== undefined) return takeMelody(held[0]);
  say("Two notes: play one for the melody, three or more for a voicing.");
}

function takeMelody(pitch: SoundingMidi): void {
  pickMelody(pitch);
  say(`${nameOf(pitch)} is the melody note now.`);
}

/** Gives the notes to the players, highest chair highest, as one step that can be taken back. */
function takeChord(held: readonly SoundingMidi[]): void {
  const { answer, view } = page.getState();
  const top = held.at(-1);
  if (answer === null || top === undefined)
    return say("Ask for a chord and a melody note first, then play.");
  const { players, lead } = answer.asked.question;
  const assignment = assignPitches(held, players, top);
  const { placements } = assignment;
  if (placements.length === 0) return say("None of the players reaches any of these notes.");
  const pitches = pitchesOf({ placements });
  const made = {
    by: "hand" as const,
    pitches,
    moved: Object.keys(pitches),
    from: view?.pitches ?? pitches,
    title: "as played",
  };
  take({ ...session(), made, step: "play a voicing" });
  say(wordsOn(held, assignment, lead));
}

function wordsOn(
  held: readonly SoundingMidi[],
  { placements, moved, leftOut, resting }: Assignment,
  lead: SoundingMidi,
): string {
  const top = held.at(-1) ?? lead;
  const players = counted(placements.length, "player");
  const names = (pitches: readonly SoundingMidi[]) => listed(pitches.map(nameOf));
  const lost = [
    ...leftOut,
    ...moved.flatMap(({ pitch, instead }) => (instead === undefined ? [pitch] : [])),
  ];
  const shifted = moved.flatMap(({ pitch, instead }) => (instead === undefined ? [] : [pitch]));
  return [
    `${names(held)} on the ladder, by ${players}.`,
    ...(shifted.length > 0 ? [`Nobody reaches ${names(shifted)}: taken in another octave.`] : []),
    ...(lost.length > 0 ? [`Nobody is left for ${names(lost)}.`] : []),
    ...(resting.length > 0 ? [`${listed(resting.map(({ name }) => name))} cannot join.`] : []),
    ...(top === lead
      ? []
      : [`The melody stays ${nameOf(lead)}; to change it, play one note alone.`]),
  ].join(" ");
}

function nameOf(pitch: SoundingMidi): string {
  const { answer } = page.getState();
  return withSigns(answer?.asked.nameOf(pitch).name ?? plainName(pitch));
}

function say(played: string): void {
  midi.setState({ played });
  announce(played);
}
