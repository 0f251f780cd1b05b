import * as z from "zod/mini";
import { dynamics, MOST_PLAYERS } from "../../band/index.ts";
import { index, list, midi, noteId, oneOf, pitches, playerId } from "./schema-parts.ts";
import { MOST_NOTE_ROWS, record, rulesOff, text, whole, within } from "./schema-parts.ts";

/** Most notes of one melody, tied ones counted apart. */
const MOST_NOTES = 2_000;
/** Most bars of one melody: what draws bars takes time for each, empty ones too. */
const MOST_BARS = 2_000;

const division = whole(1, 100_000);
const time = whole(0, 1_000_000_000);
const beatTypes = [1, 2, 4, 8, 16, 32] as const;

/** A written note; times in parts of a quarter note. */
export const savedNote = z.strictObject({
  id: noteId,
  at: time,
  for: time,
  letter: z.enum(["C", "D", "E", "F", "G", "A", "B"]),
  alteration: z.optional(whole(-2, 2)),
  octave: whole(-2, 12),
  tied: z.optional(z.literal(true)),
  tuplet: z.optional(z.tuple([whole(1, 64), whole(1, 64)])),
});

const bar = whole(0, MOST_BARS);
const repeat = z.strictObject({
  from: bar,
  to: bar,
  times: whole(2, 16),
  endings: z.optional(
    list(z.strictObject({ from: bar, to: bar, passes: list(whole(1, 16), 16) }), 16),
  ),
});

/** A melody with its changes; its notes by their rows. */
export const savedMelody = z
  .strictObject({
    title: text(500),
    division,
    metre: z.tuple([whole(1, 32), z.literal(beatTypes)]),
    tonic: z.enum(["C", "D", "E", "F", "G", "A", "B"]),
    tonicAlteration: z.optional(whole(-2, 2)),
    mode: z.enum(["major", "minor"]),
    tempo: within(1, 1_000),
    style: z.enum(["swing", "straight", "ballad", "latin"]),
    pickup: time,
    length: time,
    notes: list(index, MOST_NOTES),
    changes: list(z.tuple([time, text(200)]), MOST_NOTES),
    repeats: list(repeat, 200),
  })
  .check(
    z.refine((melody) => Number.isInteger(barOf(melody)), "no whole bar"),
    z.refine((melody) => melody.pickup < barOf(melody), "a pickup as long as a bar"),
    z.refine((melody) => melody.length / barOf(melody) <= MOST_BARS, "too many bars"),
  );

/** Length of a bar in parts of a quarter note. */
function barOf(melody: { readonly division: number; readonly metre: [number, number] }): number {
  return (melody.division * 4 * melody.metre[0]) / melody.metre[1];
}

const curve = list(z.tuple([time, within(0, 1_000)]), 2_000).check(z.minLength(1));

/** What is drawn over the bars. */
export const savedCurves = z.strictObject({ span: curve, density: curve, weight: curve });

const choice = z.strictObject({
  role: z.optional(z.enum(["target", "approach"])),
  technique: z.optional(z.enum(["chromatic", "diatonic", "parallel", "dominant", "diminished"])),
  texture: z.optional(z.enum(["harmony", "unison", "octaves"])),
  chordText: z.optional(text(200)),
  takesComing: z.optional(z.boolean()),
});

/** What was decided for single notes, by note. */
export const savedChoices = record(noteId, choice, MOST_NOTES);

/** What is held: notes of players, whole voicings. */
export const savedLocks = z.strictObject({
  notes: list(
    z.tuple([noteId, playerId, z.union([midi, z.literal("rest")])]),
    MOST_NOTES * MOST_PLAYERS,
  ),
  moments: list(z.tuple([noteId, pitches]), MOST_NOTES),
});

const mark = z.enum([
  "staccato",
  "tenuto",
  "accent",
  "marcato",
  "scoop",
  "plop",
  "doit",
  "fall",
] as const);

/** Marks set by hand, by note. */
export const savedMarks = record(noteId, list(mark, 8), MOST_NOTES);

/** A phrase being worked on; what steps share is named by its row. */
export const savedPhrase = z.strictObject({
  typed: index,
  melody: index,
  lineUp: index,
  curves: index,
  choices: z.optional(index),
  locks: z.optional(index),
  marks: z.optional(index),
  dynamics: list(z.tuple([time, oneOf(dynamics)]), MOST_NOTES),
  colour: z.enum(["plain", "tensions", "altered"]),
  bassSounds: z.boolean(),
  rulesOff,
  switches: z.optional(
    list(z.enum(["strictLowIntervals", "clusterSetting", "homesOff", "noBreaths"]), 4),
  ),
  turns: z.optional(
    list(z.strictObject({ who: playerId, from: time, to: time, plays: z.boolean() }), MOST_NOTES),
  ),
  lead: z.optional(playerId),
  alternative: whole(0, 1_000),
});

/** Tables that only phrases use. */
export const phraseTables = {
  texts: list(text(50_000), 5_000),
  notes: list(savedNote, MOST_NOTE_ROWS),
  melodies: list(savedMelody, 5_000),
  curves: list(savedCurves, 5_000),
  choices: list(savedChoices, 5_000),
  locks: list(savedLocks, 5_000),
  marks: list(savedMarks, 5_000),
  phrases: list(savedPhrase, 5_000),
};
