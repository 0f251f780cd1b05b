/**
 * Costs of the stack, whole numbers. Scale: 1 = just preferred, 3 = usually otherwise, 6 = needs a
 * reason, 10 and more = last resort. Figures are judgement unless a source is named.
 * Roles: R root, 3 third (or what a sus puts in its place), 5, 7 (or the sixth of a sixth chord),
 * T natural tension, A altered tension, X foreign.
 */
export type RoleCode = "R" | "3" | "5" | "7" | "T" | "A" | "X";
type ByRole = Readonly<Record<RoleCode, number>>;

/** S2: for each semitone a neighbouring pair lies under its low-interval limit. */
export const lowIntervalCost = {
  perSemitone: 3,
  source: "course text on low interval limits; figure: judgement",
};

/** S3: a whole tone directly under a lead longer than a quarter note; worse the higher it is. */
export const toneUnderLead = {
  base: 2,
  from: 72,
  semitonesPerStep: 3,
  source: "G. Lindsay, Jazz Arranging Techniques; figures: judgement",
};

/** S4: each further pitch of a pitch class already in the stack. */
export const octaveCopy: {
  readonly byRole: ByRole;
  readonly leadClass: number;
  readonly leadClassForeign: number;
  readonly slashThird: number;
  readonly source: string;
} = {
  byRole: { R: 2, "3": 1, "5": 1, "7": 1, T: 2, A: 2, X: 4 },
  leadClass: 0,
  leadClassForeign: 2,
  slashThird: 2,
  source:
    "C. Israels, Exploring Jazz Arranging, lesson 19 (a tutti copies everything, so small); figures: judgement",
};

/** S5: an inner note in the tenor zone. Thirds and sevenths belong there. */
export const tenorZone: {
  readonly low: number;
  readonly high: number;
  readonly byRole: ByRole;
  readonly source: string;
} = {
  low: 48,
  high: 61,
  byRole: { R: 2, "3": 0, "5": 1, "7": 0, T: 1, A: 1, X: 1 },
  source: "jazz arranging tutorial (3 and 7 right above the root); figures: judgement",
};

/** S6: a tension below the treble staff. */
export const lowTension = {
  below: 58,
  semitonesPerStep: 2,
  source: "jazz arranging tutorial (9, 11, 13 kept in the treble staff); figures: judgement",
};

/** S7: the root inside the chord, high up, when the melody is not the root. */
export const rootInside = { from: 62, cost: 1, source: "judgement" };

/** S8: what the lowest note is. */
export const bottomNote = {
  bass: 0,
  fifth: 2,
  guide: 3,
  rootUnderSlash: 3,
  tension: 9,
  highTension: 4,
  highFrom: 60,
  perSemitoneUnderLimit: 2,
  source: "C. Israels, lesson 15; course text on the assumed root; figures: judgement",
};

/** S9: a note two octaves and a semitone under the lead. */
export const doubleMinorNinth = { semitones: 25, cost: 2, source: "judgement" };
