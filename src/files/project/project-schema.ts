import * as z from "zod/mini";
import { SEAT_LIMITS } from "../../audio/index.ts";
import {
  dynamics,
  instruments,
  MOST_PLAYERS,
  mutesOf,
  seatIds,
  sectionOrder,
} from "../../band/index.ts";
import { phraseTables } from "./phrase-schema.ts";
import { index, list, midi, MOST_ROWS, oneOf, pitches, playerId } from "./schema-parts.ts";
import { rulesOff, text, whole, within } from "./schema-parts.ts";

const muteIds = [...new Set(instruments.flatMap(({ id }) => mutesOf(id)))];

const player = z.strictObject({
  seat: oneOf(seatIds),
  id: z.optional(playerId),
  level: z.optional(z.enum(["school", "semi-pro", "pro"])),
  mute: z.optional(oneOf(muteIds)),
  instrument: z.optional(oneOf(instruments.map(({ id }) => id))),
  range: z.optional(z.tuple([midi, midi])),
});

const tones = z.record(
  z.string().check(z.regex(/^(\d|1[01])$/)),
  z.enum(["off", "on", "required"]),
);

const inquiry = z.strictObject({
  chord: text(2_000),
  melody: text(2_000),
  dynamic: oneOf(dynamics),
  band: text(200),
  lineUp: index,
  colour: z.enum(["plain", "tensions", "altered"]),
  tones: z.optional(tones),
  bassSounds: z.boolean(),
  rulesOff,
  switches: z.optional(
    list(z.enum(["strictLowIntervals", "clusterSetting", "shortNote", "homesOff"]), 4),
  ),
  locks: z.optional(
    list(
      z.strictObject({ player: playerId, at: z.union([midi, z.literal("rest")]) }),
      MOST_PLAYERS,
    ),
  ),
  lead: z.optional(playerId),
  octaveBelow: z.optional(playerId),
  octaveAbove: z.optional(playerId),
});

const made = z.strictObject({
  by: z.enum(["hand", "book", "next", "kept"]),
  pitches,
  moved: list(playerId, MOST_PLAYERS),
  from: pitches,
  title: text(2_000),
});

const letter = z.string().check(z.regex(/^[A-Z]\d{0,3}$/));

const kept = z.strictObject({
  letter,
  name: text(2_000),
  note: z.optional(text(20_000)),
  pitches,
  inquiry: index,
});

/** Chairs moved from their usual places: who, pan, metres from the listener. */
const seating = list(
  z.tuple([playerId, within(...SEAT_LIMITS.pan), within(...SEAT_LIMITS.distanceM)]),
  2 * MOST_PLAYERS,
);

const state = z.strictObject({
  inquiry: index,
  layer: z.enum(["free", "by-section", "crossed"]),
  sections: z.optional(list(oneOf(sectionOrder), sectionOrder.length)),
  place: z.tuple([whole(0, 127), whole(0, 64), whole(0, 64)]),
  made: z.optional(made),
  kept: list(index, MOST_ROWS),
  compared: list(letter, MOST_ROWS),
  seats: z.optional(index),
  phrase: z.optional(index),
  step: text(2_000),
});

const settingName = z.string().check(z.regex(/^[a-z][A-Za-z-]{0,39}$/));
const settings = z
  .record(settingName, z.union([text(500), z.number(), z.boolean()]))
  .check(z.refine((value) => Object.keys(value).length <= 64, "too many settings"));

/** A project file of the current format. */
export const projectSchema = z.strictObject({
  format: z.literal(2),
  program: z.literal("hornweave"),
  model: whole(1, 1_000_000),
  name: text(200),
  lineUps: list(list(player, MOST_PLAYERS), MOST_ROWS),
  inquiries: list(inquiry, MOST_ROWS),
  kept: list(kept, MOST_ROWS),
  seatings: list(seating, MOST_ROWS),
  ...phraseTables,
  states: list(state, MOST_ROWS).check(z.minLength(1)),
  present: index,
  settings,
});

/** A project file of the current format, its form checked. */
export type ProjectFile = z.infer<typeof projectSchema>;
export type SavedInquiry = ProjectFile["inquiries"][number];
export type SavedState = ProjectFile["states"][number];
