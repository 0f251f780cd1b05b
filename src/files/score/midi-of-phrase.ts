import type { Count, Seconds } from "../../base/index.ts";
import type { Dynamic } from "../../band/index.ts";
import { inScoreOrder } from "../../notation/index.ts";
import {
  dynamicAt,
  type Phrase,
  type PhrasePerformance,
  type PlayedRhythmNote,
  type PlayerPart,
  type RhythmPart,
} from "../../phrase/index.ts";
import { leadingEvents } from "../midi/leading-events.ts";
import { percussionKeys } from "../midi/percussion-table.ts";
import { midiBytes, type OutTrack, type TrackNote } from "../midi/track-bytes.ts";
import { velocityOf } from "../midi/velocity-table.ts";
import { ticksOfDivision } from "../midi/write-midi.ts";
import { midiChannels, PERCUSSION_CHANNEL } from "./midi-channels.ts";
import { programOf } from "./program-of.ts";
import { rhythmPlayer, scoreOfPhrase } from "./score-of-phrase.ts";

/** How a phrase goes into a MIDI file. */
export interface PhraseMidiOptions {
  /** Another title than the melody's. */
  readonly title?: string;
  /** Only these players; all unless given. */
  readonly playerIds?: readonly string[];
  /**
   * `played`, unless given: swung, articulated, a little behind the beat, as it is heard here.
   * `written`: even eighths at full length, for a program that swings by itself.
   */
  readonly timing?: "played" | "written";
  /** Who of the rhythm section has a track after the horns; nobody unless given. */
  readonly rhythm?: readonly RhythmPart[];
}

/** Order of the tracks. */
const rhythmOrder = ["piano", "bass", "drums"] as const;

const idsOf = ({ players }: Phrase): readonly string[] => players.map(({ id }) => id);

/** Times in ticks for each way of timing. */
interface Ticks {
  readonly perQuarter: Count;
  readonly ofDivisions: (at: Count) => Count;
  readonly ofSeconds: (at: Seconds | number) => Count;
}

/**
 * A voiced phrase as a Standard MIDI File: one track a player, tempo, metre, key and chord symbols
 * in the first.
 * @param phrase - the phrase
 * @param performance - from performPhrase
 * @param options - timing, rhythm section, which players
 * @returns the bytes of the file
 * @throws RangeError when no player is left
 * @source MIDI Association, Standard MIDI Files 1.0 (RP-001); General MIDI Level 1
 */
export function midiOfPhrase(
  phrase: Phrase,
  performance: PhrasePerformance,
  options: PhraseMidiOptions = {},
): Uint8Array {
  const { timing = "played", playerIds } = options;
  const rhythm = rhythmOrder.filter((part) => options.rhythm?.includes(part) ?? false);
  const pitched = rhythm.flatMap((part) =>
    part === "drums" ? [] : [{ part, player: rhythmPlayer(part, idsOf(phrase)) }],
  );
  const score = scoreOfPhrase(phrase, performance, {
    ...options,
    rhythm: pitched.map(({ part }) => part),
  });
  const scale = ticksOfDivision(score.division);
  const perQuarter = score.division * scale;
  const ticks: Ticks = {
    perQuarter,
    ofDivisions: (at) => at * scale,
    ofSeconds: (at) => Math.round((at * score.tempo * perQuarter) / 60),
  };
  const wanted = performance.parts.filter(({ player }) => playerIds?.includes(player.id) ?? true);
  const horns = inScoreOrder(wanted, ({ player }) => player.section);
  const channels = midiChannels([
    ...horns.map(({ player }) => programOf(player)),
    ...pitched.map(({ player }) => programOf(player)),
  ]);
  const tracks: OutTrack[] = horns.map((part, index) => ({
    name: part.player.name,
    channel: channels[index]!,
    program: programOf(part.player),
    notes:
      timing === "played"
        ? playedNotes(part.player.id, performance, ticks)
        : writtenNotes(part, phrase, performance, ticks),
  }));
  pitched.forEach(({ part, player }, index) => {
    const channel = channels[horns.length + index]!;
    const notes = rhythmNotes(part, performance, timing, ticks);
    tracks.push({ name: player.name, channel, program: programOf(player), notes });
  });
  if (rhythm.includes("drums"))
    tracks.push({
      name: "Drums",
      channel: PERCUSSION_CHANNEL,
      program: 1,
      notes: rhythmNotes("drums", performance, timing, ticks),
    });
  const end = ticks.ofDivisions(phrase.melody.length);
  return midiBytes(perQuarter, leadingEvents(score, scale), tracks, end);
}

function playedNotes(
  playerId: string,
  { played }: PhrasePerformance,
  { ofSeconds }: Ticks,
): readonly TrackNote[] {
  const own = played.filter((note) => note.playerId === playerId);
  return own.map(({ onset, duration, sounding, dynamic }) =>
    atLeastATick(ofSeconds(onset), ofSeconds(onset + duration), sounding, dynamic),
  );
}

/** Written times; as loud as it is played, accents included. */
function writtenNotes(
  { player, notes }: PlayerPart,
  { dynamics }: Phrase,
  { played }: PhrasePerformance,
  { ofDivisions }: Ticks,
): readonly TrackNote[] {
  const loudness = new Map(
    played
      .filter(({ playerId }) => playerId === player.id)
      .map(({ momentId, dynamic }) => [momentId, dynamic]),
  );
  return notes.map(({ onset, duration, sounding, momentId }) => {
    const dynamic = loudness.get(momentId) ?? dynamicAt(dynamics, onset);
    return atLeastATick(ofDivisions(onset), ofDivisions(onset + duration), sounding, dynamic);
  });
}

function rhythmNotes(
  part: RhythmPart,
  { rhythm, playedRhythm }: PhrasePerformance,
  timing: "played" | "written",
  { ofDivisions, ofSeconds }: Ticks,
): readonly TrackNote[] {
  const notes = rhythm.flatMap((note, index): TrackNote[] => {
    if (note.part !== part) return [];
    const { onset, duration, dynamic } = playedRhythm[index]!;
    const key = keyOf(playedRhythm[index]!);
    return timing === "played"
      ? [atLeastATick(ofSeconds(onset), ofSeconds(onset + duration), key, dynamic)]
      : [
          atLeastATick(
            ofDivisions(note.onset),
            ofDivisions(note.onset + note.duration),
            key,
            dynamic,
          ),
        ];
  });
  return notes.map((note) => cutBefore(note, notes));
}

/** A key that is struck again ends first. */
function cutBefore(note: TrackNote, all: readonly TrackNote[]): TrackNote {
  const again = all.find(({ key, onset }) => key === note.key && onset > note.onset);
  return again === undefined || again.onset >= note.end ? note : { ...note, end: again.onset };
}

const keyOf = ({ sound }: PlayedRhythmNote): Count =>
  sound.kind === "pitched" ? sound.sounding : percussionKeys[sound.cymbal];

function atLeastATick(onset: Count, end: Count, key: Count, dynamic: Dynamic): TrackNote {
  return { onset, end: Math.max(onset + 1, end), key, velocity: velocityOf[dynamic] };
}
