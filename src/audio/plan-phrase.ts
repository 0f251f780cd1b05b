import { quantity, type Count, type Db, type Seconds } from "../base/index.ts";
import { clockOf, dynamicAt } from "../phrase/index.ts";
import type { Phrase, PhrasePerformance, PlayedNote, PlayedRhythmNote } from "../phrase/index.ts";
import type { Divisions } from "../theory/index.ts";
import { amplifiedDb, carriedDb } from "./amplified-table.ts";
import { countIn } from "./count-in.ts";
import { markedCurve } from "./marked-curve.ts";
import { timelinePoints, type PhraseTimeline } from "./phrase-timeline.ts";
import { usualSeats } from "./seating.ts";
import type { SoundEvent, SoundPlan, StageSeat } from "./sound-plan-types.ts";

/** What of a phrase is heard, and how. */
export interface PhraseSoundOptions {
  /** First time heard, the start unless given. */
  readonly from?: Divisions;
  /** Where it ends, the end unless given. */
  readonly to?: Divisions;
  /** How often the stretch is played, once unless given. */
  readonly passes?: Count;
  /** Bars counted before it, none unless given. */
  readonly countInBars?: Count;
  /** Players who are left out: their ids, "bass", "piano", "drums". */
  readonly silentIds?: readonly string[];
  /** Places that differ from the usual ones. */
  readonly seats?: readonly StageSeat[];
  /** Seed of the players' small differences, 1 unless given. */
  readonly seed?: Count;
}

/** A phrase as sound, and where in the music it stands when. */
export interface PhraseSound {
  readonly plan: SoundPlan;
  readonly timeline: PhraseTimeline;
}

/** A piano's or bass's note lasts this long at least, or it is a click. */
const SHORTEST_SECONDS = 0.04;
/** What is left of a note that began before the stretch is played from this length on. */
const SHORTEST_REST_SECONDS = 0.12;
/** Times are kept to the millisecond: notes alike in all but the last bit are made once. */
const MS = 1000;

/**
 * Says what sounds when, to hear a phrase or a stretch of it: horns with their marks, bass, piano and
 * drums, counted in, as often as wanted.
 * @param phrase - time, dynamics, players
 * @param playing - how it is played
 * @param options - the stretch, passes, count-in, who is left out, seats
 * @returns the plan and its line of time; without events when nobody is left to be heard
 * @throws RangeError when the stretch is empty or the passes are fewer than one
 */
export function planPhrase(
  phrase: Phrase,
  playing: PhrasePerformance,
  options: PhraseSoundOptions = {},
): PhraseSound {
  const { melody } = phrase;
  const { from = quantity<Divisions>(0), to = melody.length, passes = 1 } = options;
  if (!(from < to)) throw new RangeError(`a stretch must end after it begins, got ${from}, ${to}`);
  if (!(passes >= 1)) throw new RangeError(`a phrase is played at least once, got ${passes}`);
  const clock = clockOf(melody, playing.feel);
  const points = timelinePoints(clock, { from, to, step: melody.division / 2 });
  const passSeconds = quantity<Seconds>(clock.rhythm(to) - clock.rhythm(from));
  const start = clock.rhythm(from);
  const end = to < melody.length || passes > 1 ? clock.rhythm(to) : Infinity;
  const counted = countIn(melody, from, options.countInBars ?? 0, dynamicAt(phrase.dynamics, from));
  const silent = new Set(options.silentIds);
  const once = eventsOf(phrase, playing)
    .filter(({ playerId }) => !silent.has(playerId))
    .flatMap((event) => within(event, start, end));
  const events = [
    ...counted.strokes,
    ...Array.from({ length: passes }, (_, pass) =>
      once.map((event) => shifted(event, counted.seconds + pass * passSeconds)),
    ).flat(),
  ].sort((a, b) => a.onset - b.onset);
  const timeline = { leadSeconds: counted.seconds, passSeconds, passes, points };
  return {
    plan: { events, seats: seatsFor(phrase, options, events), seed: options.seed ?? 1 },
    timeline,
  };
}

function eventsOf(phrase: Phrase, playing: PhrasePerformance): readonly SoundEvent[] {
  const players = new Map(phrase.players.map((player) => [player.id, player]));
  const horns = playing.played.flatMap((note) => {
    const player = players.get(note.playerId);
    return player ? [hornEvent(note, player)] : [];
  });
  return [...horns, ...playing.playedRhythm.map(rhythmEvent)];
}

function hornEvent(
  note: PlayedNote,
  { id, instrument, mute }: Phrase["players"][number],
): SoundEvent {
  const { sounding, onset, dynamic, marks } = note;
  const duration = toMs(note.duration);
  return {
    playerId: id,
    sound: { kind: "pitched", instrument, sounding, mute },
    onset,
    duration,
    curve: markedCurve(dynamic, marks, duration),
    trim: 0 as Db,
  };
}

function rhythmEvent({ part, sound, onset, duration, dynamic }: PlayedRhythmNote): SoundEvent {
  return {
    playerId: part,
    sound:
      sound.kind === "cymbal"
        ? sound
        : {
            kind: "pitched",
            instrument: part === "bass" ? "double-bass" : "piano",
            sounding: sound.sounding,
            mute: "open",
          },
    onset,
    duration: toMs(Math.max(SHORTEST_SECONDS, duration)),
    curve: [{ at: 0 as Seconds, dynamic }],
    trim: quantity<Db>(amplifiedDb[part] + carriedDb[part]),
  };
}

/** The part of an event that lies in the stretch, from the start of the stretch. */
function within(event: SoundEvent, start: number, end: number): readonly SoundEvent[] {
  const { onset, duration, sound } = event;
  const from = onset - start;
  if (onset >= end - 1e-6) return [];
  const last = Math.min(onset + duration, end) - start;
  if (from >= -1e-6)
    return [{ ...event, onset: quantity<Seconds>(Math.max(0, from)), duration: toMs(last - from) }];
  if (sound.kind === "cymbal" || last < SHORTEST_REST_SECONDS) return [];
  return [{ ...event, onset: quantity<Seconds>(0), duration: toMs(last) }];
}

function shifted(event: SoundEvent, by: number): SoundEvent {
  return { ...event, onset: quantity<Seconds>(event.onset + by) };
}

function toMs(seconds: number): Seconds {
  return quantity<Seconds>(Math.max(1, Math.round(seconds * MS)) / MS);
}

function seatsFor(
  phrase: Phrase,
  options: PhraseSoundOptions,
  events: readonly SoundEvent[],
): readonly StageSeat[] {
  const moved = new Map(options.seats?.map((seat) => [seat.playerId, seat]));
  const sounding = new Set(events.map(({ playerId }) => playerId));
  return usualSeats(phrase.players)
    .filter(({ playerId }) => sounding.has(playerId))
    .map((seat) => moved.get(seat.playerId) ?? seat);
}
