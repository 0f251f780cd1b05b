import type { Dynamic } from "../../band/index.ts";
import { instrumentOf } from "../../band/index.ts";
import type { SoundEvent, SoundPlan } from "../../audio/index.ts";
import type { MidiNote, MidiPlayer } from "../../playback/index.ts";

/** How hard each dynamic is struck: even steps over most of MIDI's range. Judgement. */
const velocities: Readonly<Record<Dynamic, number>> = Object.freeze({
  ppp: 24,
  pp: 36,
  p: 50,
  mp: 64,
  mf: 78,
  f: 92,
  ff: 108,
  fff: 122,
});
/** Decibels that halve the velocity of a note. Judgement. */
const halvingDb = 12;

/** Notes that begin or end at one moment of a plan. */
export interface MidiMoment {
  /** From the start of the plan, ms. */
  readonly atMs: number;
  /** True when nothing that sounded before goes on. */
  readonly isFresh: boolean;
  /** What begins; with `isFresh` everything that sounds. */
  readonly notes: readonly MidiNote[];
}

/**
 * Whoever plays pitched notes in a plan, in order of appearance.
 * @param plan - what sounds when
 * @returns players with their General MIDI programmes, each named once
 */
export function midiPlayersOf(plan: SoundPlan): readonly MidiPlayer[] {
  const players = new Map<string, MidiPlayer>();
  for (const { playerId, sound } of plan.events)
    if (sound.kind === "pitched" && !players.has(playerId)) {
      const programme = instrumentOf(sound.instrument).midiProgram;
      players.set(playerId, { channelKey: playerId, programme });
    }
  return [...players.values()];
}

/**
 * A plan as a MIDI receiver hears it. What goes on is not struck again unless something ends at
 * the same moment.
 * @param plan - what sounds when; cymbals are left out
 * @returns moments in order, the last one silent
 */
export function midiMomentsOf(plan: SoundPlan): readonly MidiMoment[] {
  const spans = plan.events
    .filter(({ sound }) => sound.kind === "pitched")
    .map((event) => ({
      event,
      from: Math.round(1000 * event.onset),
      to: Math.round(1000 * (event.onset + event.duration)),
    }));
  const times = [...new Set(spans.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  return times.map((atMs) => {
    const isFresh = atMs === times[0] || spans.some(({ to }) => to === atMs);
    const sounding = spans.filter(({ from, to }) =>
      isFresh ? from <= atMs && atMs < to : from === atMs,
    );
    return { atMs, isFresh, notes: sounding.flatMap(({ event }) => noteOf(event)) };
  });
}

function noteOf({ playerId, sound, curve, trim }: SoundEvent): readonly MidiNote[] {
  if (sound.kind !== "pitched") return [];
  const struck = velocities[curve[0]?.dynamic ?? "mf"] * 2 ** (trim / halvingDb);
  const velocity = Math.min(127, Math.max(1, Math.round(struck)));
  return [{ channelKey: playerId, midi: sound.sounding, velocity }];
}
