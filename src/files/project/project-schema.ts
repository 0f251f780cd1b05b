import * as z from "zod/mini";
import {
  dynamics,
  instruments,
  MOST_PLAYERS,
  mutesOf,
  seatIds,
  sectionOrder,
} from "../../band/index.ts";
import { allRules } from "../../voicing/index.ts";

// The page forbids code made from text, so the checks are not compiled at run time either.
z.config({ jitless: true });

const muteIds = [...new Set(instruments.flatMap(({ id }) => mutesOf(id)))];
const oneOf = <T extends string>(values: readonly T[]) => z.enum(values as [T, ...T[]]);

const text = (most: number) => z.string().check(z.maxLength(most));
const whole = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most));
const list = <T extends z.ZodMiniType>(each: T, most: number) =>
  z.array(each).check(z.maxLength(most));
const index = whole(0, 10_000);
const midi = whole(0, 127);
const playerId = z.string().check(z.regex(/^[a-z]{1,12}\d{0,3}$/));

/** Most entries of a table; the undo history has a thousand steps either way. */
const MOST = 2_500;

const player = z.strictObject({
  seat: oneOf(seatIds),
  id: z.optional(playerId),
  level: z.optional(z.enum(["school", "semi-pro", "pro"])),
  mute: z.optional(oneOf(muteIds)),
  instrument: z.optional(oneOf(instruments.map(({ id }) => id))),
  range: z.optional(z.tuple([midi, midi])),
});

const pitches = z
  .record(playerId, midi)
  .check(z.refine((value) => Object.keys(value).length <= MOST_PLAYERS, "too many notes"));

const ruleIds = Object.keys(allRules) as (keyof typeof allRules)[];
const tones = z.record(
  z.string().check(z.regex(/^(\d|1[01])$/)),
  z.enum(["off", "on", "required"]),
);

const inquiry = z.strictObject({
  chord: text(200),
  melody: text(200),
  dynamic: oneOf(dynamics),
  band: text(200),
  lineUp: index,
  colour: z.enum(["plain", "tensions", "altered"]),
  tones: z.optional(tones),
  bassSounds: z.boolean(),
  rulesOff: z.optional(list(oneOf(ruleIds), ruleIds.length)),
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
  title: text(200),
});

const letter = z.string().check(z.regex(/^[A-Z]\d{0,3}$/));

const kept = z.strictObject({
  letter,
  name: text(200),
  note: z.optional(text(5_000)),
  pitches,
  inquiry: index,
});

const state = z.strictObject({
  inquiry: index,
  layer: z.enum(["free", "by-section", "crossed"]),
  sections: z.optional(list(oneOf(sectionOrder), sectionOrder.length)),
  place: z.tuple([whole(0, 127), whole(0, 64), whole(0, 64)]),
  made: z.optional(made),
  kept: list(index, 702),
  compared: list(letter, 8),
  step: text(200),
});

const settingName = z.string().check(z.regex(/^[a-z][A-Za-z-]{0,39}$/));
const settings = z
  .record(settingName, z.union([text(500), z.number(), z.boolean()]))
  .check(z.refine((value) => Object.keys(value).length <= 64, "too many settings"));

/** A project file of format 1. */
export const projectSchema = z.strictObject({
  format: z.literal(1),
  program: z.literal("hornweave"),
  model: whole(1, 1_000_000),
  name: text(200),
  lineUps: list(list(player, MOST_PLAYERS), MOST),
  inquiries: list(inquiry, MOST),
  kept: list(kept, MOST),
  states: list(state, MOST).check(z.minLength(1)),
  present: index,
  settings,
});

/** A project file of format 1, its form checked. */
export type ProjectFile = z.infer<typeof projectSchema>;
export type SavedInquiry = ProjectFile["inquiries"][number];
export type SavedState = ProjectFile["states"][number];
