import * as z from "zod/mini";
import { MOST_PLAYERS } from "../../band/index.ts";
import { allRules, type RuleId } from "../../voicing/index.ts";

// The page forbids code made from text, so the checks are not compiled at run time either.
z.config({ jitless: true });

/** One of a set of words. */
export const oneOf = <T extends string>(values: readonly T[]) => z.enum(values as [T, ...T[]]);

/** A text up to a length. */
export const text = (most: number) => z.string().check(z.maxLength(most));

/** A whole number within limits, both included. */
export const whole = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most));

/** A number within limits, both included. */
export const within = (least: number, most: number) => z.number().check(z.gte(least), z.lte(most));

/** A list up to a length. */
export const list = <T extends z.ZodMiniType>(each: T, most: number) =>
  z.array(each).check(z.maxLength(most));

/** Most rows of a table; the undo history has a thousand steps either way. */
export const MOST_ROWS = 5_000;
/** Most rows of the table of melody notes, shared between all steps. */
export const MOST_NOTE_ROWS = 20_000;

/** Place of a row in a table. */
export const index = whole(0, MOST_NOTE_ROWS);

/** MIDI note number. */
export const midi = whole(0, 127);

/** A name that no object has from birth, so that looking it up in a record finds what was put in. */
const ownName = (pattern: RegExp) =>
  z.string().check(
    z.regex(pattern),
    z.refine((name) => !(name in Object.prototype), "no name of ours"),
  );

/** "tpt1", "piano" */
export const playerId = ownName(/^[a-z]{1,12}\d{0,3}$/);

/** "n12", "n12~2+1" */
export const noteId = ownName(/^(?=.*\d)[A-Za-z][\w~+.-]{0,39}$/);

/** A record with so many entries at most. */
export const record = <K extends typeof playerId, V extends z.ZodMiniType>(
  key: K,
  value: V,
  most: number,
) =>
  z
    .record(key, value)
    .check(z.refine((entries) => Object.keys(entries).length <= most, "too many entries"));

/** Who sounds what. */
export const pitches = record(playerId, midi, MOST_PLAYERS);

const ruleIds = Object.keys(allRules) as RuleId[];

/** Rules that are switched off. */
export const rulesOff = z.optional(list(oneOf(ruleIds), ruleIds.length));
