import { quantity } from "../base/index.ts";
import type { Count, Db, Seconds, SoundingMidi } from "../base/index.ts";
import type { Chord, ChordTone } from "../theory/index.ts";
import type { Dynamic } from "../band/index.ts";
import { amplifiedDb } from "./amplified-table.ts";
import { dynamicAt, positionOf } from "./dynamic-steps.ts";
import type { CymbalId, SoundEvent } from "./sound-plan-types.ts";

/** Lowest key of the double bass, E1, and of the piano's chord, E3. */
const BASS_BOTTOM = 28;
const PIANO_BOTTOM = 52;
/** The players beside the horns stay this many dynamics under them. */
const STEPS_UNDER = 1;
/** Beats of the time-keeping pattern, in quarter notes, swung two to one. */
const RIDE_BEATS = Object.freeze([0, 1, 1 + 2 / 3, 2, 3, 3 + 2 / 3]);
const HAT_BEATS = Object.freeze([1, 3]);
const BAR_BEATS = 4;
const BEAT_SECONDS = 60 / 138;

/** Time and loudness of what accompanies. */
export interface AccompanimentOptions {
  readonly seconds: Seconds;
  readonly dynamic: Dynamic;
  readonly trim: Db;
}

/**
 * The bass player's note: the chord's bass in the lowest octave of the instrument.
 * @param chord - the chord; "no chord" has no bass
 * @param options - time and loudness
 * @returns one note or none
 */
export function bassEvents(chord: Chord, options: AccompanimentOptions): readonly SoundEvent[] {
  if (chord.family === "no-chord") return [];
  return [note("bass", "double-bass", placeAbove(chord.bassPitchClass, BASS_BOTTOM), options)];
}

/**
 * The pianist's chord: third (or what stands for it), seventh or sixth, and one tension the symbol
 * names, each once from E3 up. Common practice, no single source.
 * @param chord - the chord; "no chord" has none
 * @param options - time and loudness
 * @returns a note for each tone
 */
export function pianoEvents(chord: Chord, options: AccompanimentOptions): readonly SoundEvent[] {
  const softer = dynamicAt(positionOf(options.dynamic) - STEPS_UNDER);
  return shellOf(chord).map((tone) =>
    note("piano", "piano", placeAbove(tone.pitchClass, PIANO_BOTTOM), {
      ...options,
      dynamic: softer,
    }),
  );
}

/**
 * Ride cymbal and hi-hat keeping time from the first beat on.
 * @param options - time and loudness
 * @returns strokes that begin before the end
 */
export function drumEvents(options: AccompanimentOptions): readonly SoundEvent[] {
  return [...strokes("ride-cymbal", RIDE_BEATS, options), ...strokes("hi-hat", HAT_BEATS, options)];
}

function shellOf(chord: Chord): readonly ChordTone[] {
  const find = (...roles: readonly ChordTone["role"][]): ChordTone | undefined =>
    chord.tones.find(
      ({ role, kind }) => roles.includes(role) && kind !== "avoid" && kind !== "available",
    );
  return [
    find("third", "suspended-fourth", "suspended-second"),
    find("seventh", "sixth") ?? find("fifth"),
    find("ninth", "thirteenth", "eleventh"),
  ].filter((tone) => tone !== undefined);
}

function placeAbove(pitchClass: number, bottom: number): SoundingMidi {
  return quantity<SoundingMidi>(bottom + ((pitchClass - bottom + 120) % 12));
}

function note(
  playerId: "bass" | "piano",
  instrument: "piano" | "double-bass",
  sounding: SoundingMidi,
  { seconds, dynamic, trim }: AccompanimentOptions,
): SoundEvent {
  return {
    playerId,
    sound: { kind: "pitched", instrument, sounding, mute: "open" },
    onset: 0 as Seconds,
    duration: seconds,
    curve: [{ at: 0 as Seconds, dynamic }],
    trim: (trim + amplifiedDb[playerId]) as Db,
  };
}

function strokes(
  cymbal: CymbalId,
  beats: readonly Count[],
  { seconds, dynamic, trim }: AccompanimentOptions,
): readonly SoundEvent[] {
  const bars = Math.ceil(seconds / (BAR_BEATS * BEAT_SECONDS));
  return Array.from({ length: bars }, (_, bar) =>
    beats.map((beat) => (bar * BAR_BEATS + beat) * BEAT_SECONDS),
  )
    .flat()
    .filter((onset) => onset < seconds)
    .map((onset) => ({
      playerId: "drums",
      sound: { kind: "cymbal", cymbal },
      onset: onset as Seconds,
      duration: 0.1 as Seconds,
      curve: [{ at: 0 as Seconds, dynamic }],
      trim: (trim + amplifiedDb.drums) as Db,
    }));
}
